package domefold.advise;

import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import domefold.shell.Insertion;
import java.util.function.Function;
import java.util.function.Supplier;

/** A planner with everything at hand; what does not depend on the case is computed once. */
public final class Advisor implements Function<Case, Plan> {
    private final Supplier<Catalogue> list;
    private final Evidence evidence;
    private final PlanOptions options;
    private final Insertion.Fits fits;

    public Advisor(Catalogue catalogue, Evidence evidence, PlanOptions options) {
        this(() -> catalogue, evidence, options);
    }

    /** @param list gives the device list, the same each time; not asked before a plan needs it */
    public Advisor(Supplier<Catalogue> list, Evidence evidence, PlanOptions options) {
        this.list = list;
        this.evidence = evidence;
        this.options = options;
        this.fits = Insertion.Fits.of(evidence);
    }

    /** The whole plan of one case. */
    @Override
    public Plan apply(Case of) {
        return Planner.plan(of, list, evidence, options, new Extras(evidence, fits));
    }
}
