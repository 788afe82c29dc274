package domefold.interview;

import domefold.device.Catalogue;
import domefold.engine.Gate;
import domefold.engine.ReadingCheck;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What questions may look at beside the dossier.
 *
 * @param evidence constants and tables in use
 * @param catalogue the device list in use
 * @param topics the topics of the decision checklist, id to words, in order
 * @param planner the engine
 * @param offeredCode a case code that Enter takes; blank offers none
 * @param options how a plan is computed
 */
public record Guide(
        Evidence evidence, Catalogue catalogue, Map<String, String> topics, Function<Case, Plan> planner,
        String offeredCode, PlanOptions options) {

    /** With the plan options that ship. */
    public Guide(Evidence evidence, Catalogue catalogue, Map<String, String> topics, Function<Case, Plan> planner,
            String offeredCode) {
        this(evidence, catalogue, topics, planner, offeredCode, PlanOptions.DEFAULT);
    }


    ReadingCheck check(Measure measure, double value) {
        return Gate.check(measure, value, evidence);
    }

    /** Where it comes from and how sure that is, which is not said twice where the source is the status itself. */
    public static String sourced(String source, Status status) {
        return "Source: " + source + (source.endsWith(status.words()) ? "." : " (" + status.words() + ").");
    }

    /** How that reading is taken, in sentences, with who says so. */
    List<String> howTaken(Measure measure) {
        for (Table.Row row : evidence.table("measurements").rows()) {
            if (row.text("id").equals(measure.evidenceId())) {
                String raters = row.text("repeatability_note");
                return Stream.of(
                        Words.sentence(row.text("definition")),
                        Words.sentence(row.text("how_taken")),
                        sourced(row.text("source"), Status.of(row.text("status"))),
                        raters.isBlank() ? "" : Words.sentence("between raters: " + raters)).filter(line -> !line.isEmpty()).toList();
            }
        }
        return List.of(Words.sentence(measure.words() + ", in " + measure.unit()));
    }
}
