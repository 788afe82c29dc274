package domefold.followup.course;

import domefold.followup.schedule.ExamPlan;
import domefold.followup.survival.Cohort;
import domefold.followup.survival.CohortSet;
import domefold.followup.survival.PointFit;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Silent rupture of a gel device as a range over comparable cohorts and over both readings of the schedule.
 *
 * @param horizonYears the year the counts run to
 * @param beyondData true when a cohort's data end before that year: then shown hatched, never as a bare figure
 * @param runs one per cohort and reading
 */
public record GelCourse(int horizonYears, boolean beyondData, List<Run> runs) {

    /** One cohort under one reading of the schedule. */
    public record Run(Cohort cohort, PointFit fit, List<Integer> examYears, LifeCourse course) {}

    public GelCourse {
        runs = List.copyOf(runs);
    }

    /** The course up to a year within the plan's horizon; empty where no comparable cohort fixes a curve. */
    public static Optional<GelCourse> of(CohortSet rupture, ExamPlan plan, Watch watch, int horizonYears) {
        List<Run> runs = new ArrayList<>();
        for (Cohort cohort : rupture.cohorts()) {
            PointFit fit = cohort.fit().orElseThrow();
            for (List<Integer> years : readings(plan, horizonYears)) {
                runs.add(new Run(cohort, fit, years, LifeCourse.of(fit.curve(), years, watch, horizonYears)));
            }
        }
        boolean beyond = runs.stream().anyMatch(run -> run.fit().lastTime() < horizonYears);
        return runs.isEmpty() ? Optional.empty() : Optional.of(new GelCourse(horizonYears, beyond, runs));
    }

    private static List<List<Integer>> readings(ExamPlan plan, int horizonYears) {
        List<Integer> densest = plan.densestYears().stream().filter(year -> year <= horizonYears).toList();
        List<Integer> sparsest = plan.sparsestYears().stream().filter(year -> year <= horizonYears).toList();
        return densest.equals(sparsest) ? List.of(densest) : List.of(densest, sparsest);
    }

    /** Lowest and highest of one count over the runs. */
    public Band over(ToDoubleFunction<LifeCourse> count) {
        return new Band(runs.stream().mapToDouble(run -> count.applyAsDouble(run.course())).min().orElseThrow(),
                runs.stream().mapToDouble(run -> count.applyAsDouble(run.course())).max().orElseThrow());
    }

    /** Lowest and highest mean time from rupture to detection; empty where no run finds any. */
    public Optional<Band> yearsToDetection() {
        List<Double> means = runs.stream().flatMap(run -> run.course().yearsToDetection().stream().boxed()).toList();
        return means.isEmpty() ? Optional.empty()
                : Optional.of(new Band(means.stream().min(Double::compare).orElseThrow(),
                        means.stream().max(Double::compare).orElseThrow()));
    }
}
