package domefold.followup.course;

import domefold.device.Device;
import domefold.evidence.Evidence;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.shown.Comparability;
import domefold.followup.shown.OutcomeRow;
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
    public static Optional<GelCourse> of(Device device, ExamPlan plan, Watch watch, int horizonYears, Evidence evidence) {
        List<Run> runs = new ArrayList<>();
        for (Cohort cohort : cohorts(device, evidence, "rupture").cohorts()) {
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

    /** Cohorts of women comparable to a first operation with that device that fix a curve, per woman. */
    static CohortSet cohorts(Device device, Evidence evidence, String outcome) {
        List<OutcomeRow> comparable = OutcomeRow.all(evidence).stream().filter(row -> row.outcome().equals(outcome)
                && row.unit().equals("patient") && Comparability.whyNot(row, device).isEmpty()).toList();
        return new CohortSet(Cohort.of(comparable).stream().filter(cohort -> cohort.fit().isPresent()).toList());
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
