package domefold.followup.course;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import java.util.List;

/**
 * How often a test finds what is there and passes what is not, per implant.
 *
 * @param sensitivity share of ruptured implants that give an alarm, 0 to 1
 * @param specificity share of intact implants that give none, 0 to 1
 */
public record TestAccuracy(double sensitivity, double specificity, String source, Status status) {
    public TestAccuracy {
        if (!(sensitivity >= 0 && sensitivity <= 1 && specificity >= 0 && specificity <= 1)) {
            throw new IllegalArgumentException("sensitivity and specificity lie between 0 and 1");
        }
    }

    /** Ultrasound as the constants in use say. */
    public static TestAccuracy ultrasound(Constants constants) {
        return of(constants.get("FU-US-SENSITIVITY"), constants.get("FU-US-SPECIFICITY"));
    }

    /** MRI as the constants in use say. */
    public static TestAccuracy mri(Constants constants) {
        return of(constants.get("FU-MRI-SENSITIVITY"), constants.get("FU-MRI-SPECIFICITY"));
    }

    private static TestAccuracy of(Constant sensitivity, Constant specificity) {
        Status weaker = sensitivity.status() == Status.SURGEON ? Status.SURGEON : specificity.status();
        return new TestAccuracy(sensitivity.value() / 100, specificity.value() / 100, sensitivity.source(), weaker);
    }

    /** Every published pair for that test and gel rupture, to show how far they lie apart. */
    public static List<TestAccuracy> published(Evidence evidence, String test) {
        return evidence.table("diagnostics").rows().stream()
                .filter(row -> row.text("test").equals(test) && row.text("use").startsWith("gel rupture")
                        && row.number("sensitivity").isPresent() && row.number("specificity").isPresent())
                .map(row -> new TestAccuracy(row.number("sensitivity").getAsDouble() / 100,
                        row.number("specificity").getAsDouble() / 100, row.text("source"), Status.of(row.text("status"))))
                .toList();
    }

    /** From the four counts of a comparison with the truth. */
    public static TestAccuracy ofCounts(int truePositive, int falseNegative, int falsePositive, int trueNegative,
            String source, Status status) {
        return new TestAccuracy((double) truePositive / (truePositive + falseNegative),
                (double) trueNegative / (trueNegative + falsePositive), source, status);
    }

    /** Share of alarms that are ruptures, at a prevalence of rupture. */
    public double positivePredictive(double prevalence) {
        double hit = sensitivity * prevalence;
        return hit / (hit + (1 - specificity) * (1 - prevalence));
    }

    /** Share of passes that are intact, at a prevalence of rupture. */
    public double negativePredictive(double prevalence) {
        double pass = specificity * (1 - prevalence);
        return pass / (pass + (1 - sensitivity) * prevalence);
    }

    /** Probability after a result of likelihood ratio LR: odds times LR. */
    public static double posterior(double prior, double likelihoodRatio) {
        double odds = prior / (1 - prior) * likelihoodRatio;
        return odds / (1 + odds);
    }
}
