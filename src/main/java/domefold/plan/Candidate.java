package domefold.plan;

import domefold.device.Device;
import domefold.patient.Route;
import domefold.patient.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One device with everything said about it.
 *
 * @param incision opening it needs, empty where nothing is published for it
 * @param followUp exams under the chosen schedule, empty where none is chosen
 * @param ripple ripple index for ranking, empty where cover or shell is unknown
 */
public record Candidate(
        Device device,
        SideFit left,
        SideFit right,
        Optional<Incision> incision,
        Optional<FollowUp> followUp,
        Optional<Ripple> ripple) {

    public SideFit side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /**
     * The opening.
     *
     * @param typicalCm empty where only a range is known
     * @param device {@code hand} or {@code funnel}
     * @param basis which rows or model it rests on, with status
     */
    public record Incision(
            double lowCm, OptionalDouble typicalCm, double highCm, Route route, String device, String basis) {}

    /**
     * Imaging to the horizon.
     *
     * @param schedule schedule id
     * @param examsLow fewest exams the schedule asks for
     * @param examsHigh most exams the schedule asks for
     * @param sparsestYears exam years, latest first exam and longest interval
     * @param densestYears exam years, earliest first exam and shortest interval
     * @param text the rule in a sentence, for schedules that state no interval
     * @param outcomes published outcomes over comparable cohorts
     */
    public record FollowUp(
            String schedule,
            int examsLow,
            int examsHigh,
            List<Integer> sparsestYears,
            List<Integer> densestYears,
            int horizonYears,
            String text,
            List<Outcome> outcomes) {
        public FollowUp {
            sparsestYears = List.copyOf(sparsestYears);
            densestYears = List.copyOf(densestYears);
            outcomes = List.copyOf(outcomes);
        }
    }

    /**
     * A published outcome by a stated year, per 100, as a range over comparable cohorts.
     *
     * @param unit {@code patient} or {@code implant}; the two are never mixed
     */
    public record Outcome(
            String outcome, int year, double per100Low, double per100High, String unit, List<String> cohorts) {
        public Outcome {
            cohorts = List.copyOf(cohorts);
        }
    }

    /** Ripple index, 0 to 1, for ranking only, with words that say so. */
    public record Ripple(double index, String text) {}
}
