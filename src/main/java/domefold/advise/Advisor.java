package domefold.advise;

import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import domefold.shell.Insertion;
import java.util.function.Function;

/** A planner with everything at hand; what does not depend on the case is computed once. */
public final class Advisor implements Function<Case, Plan> {
    private final Catalogue catalogue;
    private final Evidence evidence;
    private final PlanOptions options;
    private final Insertion.Fits fits;

    public Advisor(Catalogue catalogue, Evidence evidence, PlanOptions options) {
        this.catalogue = catalogue;
        this.evidence = evidence;
        this.options = options;
        this.fits = Insertion.Fits.of(evidence);
    }

    /** The whole plan of one case. */
    @Override
    public Plan apply(Case of) {
        return Planner.plan(of, catalogue, evidence, options, new Extras(evidence, fits));
    }
}
