package domefold.app;

import domefold.advise.Advisor;
import domefold.device.Catalogue;
import domefold.engine.CaseGate;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.plan.PlanOptions;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.Homes;
import domefold.store.Settings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Supplier;

/**
 * What a command or a face works with.
 *
 * @param evidence the tables that ship, with the surgeon's own constants in their place
 * @param list gives the device list in use, the same each time; not asked before somebody needs it
 * @param homes where records and settings live
 * @param options how a plan is computed
 * @param settings the surgeon's own values and defaults
 */
public record Workbench(Console console, Evidence evidence, Supplier<Catalogue> list, Homes homes, PlanOptions options,
        Settings settings) {

    /** The device list in use. */
    public Catalogue catalogue() {
        return list.get();
    }

    /**
     * A case file, held against the gates.
     *
     * @throws domefold.outcome.Refusal if it is not a whole and plausible case
     */
    public Case readCase(Path file) throws IOException {
        return held(CaseFile.open(file));
    }

    /** A case file that was opened before, held against the gates. */
    Case held(CaseFile.Opened opened) {
        return opened.heldAgainst(CaseRules.of(evidence, any -> CaseGate.check(any, evidence)));
    }

    /** The planner over this list and this evidence. */
    public Advisor advisor() {
        return new Advisor(list, evidence, options);
    }
}
