package domefold.followup.course;

import domefold.followup.survival.Cohort;
import domefold.followup.survival.CohortSet;
import domefold.followup.survival.CurveValue;
import domefold.outcome.Band;
import java.util.List;
import java.util.Optional;

/**
 * Deflation of a saline device: seen at once, so no exams, no silent years, and the counts are those of the curve.
 *
 * @param deflatedPer100 women of 100 by the horizon, over comparable cohorts
 * @param beyondData true when a cohort's data end before the horizon
 */
public record DeflationCourse(int horizonYears, Band deflatedPer100, boolean beyondData, List<Cohort> cohorts) {
    public DeflationCourse {
        cohorts = List.copyOf(cohorts);
    }

    /** Empty where no comparable cohort fixes a curve. */
    public static Optional<DeflationCourse> of(CohortSet deflation, int horizonYears) {
        List<Cohort> cohorts = deflation.cohorts();
        List<CurveValue> values = cohorts.stream().map(cohort -> cohort.fit().orElseThrow().at(horizonYears)).toList();
        if (values.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DeflationCourse(horizonYears,
                new Band(100 * values.stream().mapToDouble(CurveValue::cumulative).min().orElseThrow(),
                        100 * values.stream().mapToDouble(CurveValue::cumulative).max().orElseThrow()),
                values.stream().anyMatch(CurveValue::beyondData), cohorts));
    }
}
