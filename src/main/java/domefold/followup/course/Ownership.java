package domefold.followup.course;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.ScheduleWords;
import domefold.followup.shown.Exchange;
import domefold.followup.shown.RareHarm;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.RiskFigure;
import domefold.followup.survival.Cohort;
import domefold.followup.survival.CohortSet;
import domefold.followup.survival.CurveValue;
import domefold.followup.survival.PointFit;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The years of owning one device: exams, failure, outcomes, cost.
 *
 * @param plan exams under the schedule up to the horizon
 * @param watch how exams are done and how well
 * @param symptom what a new symptom asks for
 * @param outcomes published outcomes by the year shown
 * @param byYearShown silent rupture up to the year devices are compared at; empty for saline
 * @param asAttended the same at the published real-world attendance, to stand beside it
 * @param accuracySpread how far published accuracies of the test move it
 * @param byHorizon the same up to the horizon, mostly beyond the data
 * @param deflation deflation up to the year shown; empty for gel
 * @param curves failure curve per comparable cohort, one value a year up to the horizon
 * @param cost empty without a price list: then only the counts are shown
 */
public record Ownership(
        Device device,
        ExamPlan plan,
        Watch watch,
        String symptom,
        List<RiskFigure> outcomes,
        Optional<GelCourse> byYearShown,
        Optional<GelCourse> asAttended,
        Optional<AccuracySpread> accuracySpread,
        Optional<GelCourse> byHorizon,
        Optional<DeflationCourse> deflation,
        List<FailureCurve> curves,
        List<RareHarm> rareHarms,
        List<Exchange> exchange,
        Optional<Cost> cost) {

    /** One cohort's failure by year; values past its data are marked. */
    public record FailureCurve(String study, boolean unverified, List<CurveValue> years) {
        public FailureCurve {
            years = List.copyOf(years);
        }
    }

    public static Ownership of(Device device, Schedule schedule, int horizonYears, int yearShown, Watch watch,
            Optional<PriceList> prices, Evidence evidence) {
        ExamPlan plan = ExamPlan.of(schedule, device.fill(), horizonYears);
        boolean gel = device.fill() == Fill.GEL;
        int shown = Math.min(yearShown, horizonYears);
        List<OutcomeRow> table = OutcomeRow.all(evidence);
        List<RiskFigure> outcomes = RiskFigure.of(device, yearShown, table);
        CohortSet failure = CohortSet.comparable(device, gel ? "rupture" : "deflation", table);
        CohortSet rupture = gel ? failure : new CohortSet(List.of());
        Optional<GelCourse> course = GelCourse.of(rupture, plan, watch, shown);
        Watch attended = watch.withAdherence(evidence.constants().value("FU-ADHERENCE-SEEN"));
        return new Ownership(device, plan, watch, ScheduleWords.symptom(schedule, device.fill()), outcomes,
                course, GelCourse.of(rupture, plan, attended, shown),
                AccuracySpread.of(rupture, plan, watch, shown, evidence), GelCourse.of(rupture, plan, watch, horizonYears),
                gel ? Optional.empty() : DeflationCourse.of(failure, shown), curves(failure, horizonYears),
                RareHarm.forDevice(device.surface(), device.fill(), evidence), Exchange.of(device.fill(), evidence),
                prices.map(list -> Cost.of(list, plan, watch.strategy(), course, reoperation(outcomes))));
    }

    private static Optional<Band> reoperation(List<RiskFigure> outcomes) {
        return outcomes.stream().filter(figure -> figure.outcome().equals("reoperation") && figure.unit().equals("patient"))
                .map(RiskFigure::per100).findFirst();
    }

    private static List<FailureCurve> curves(CohortSet failure, int horizonYears) {
        List<FailureCurve> curves = new ArrayList<>();
        for (Cohort cohort : failure.cohorts()) {
            PointFit fit = cohort.fit().orElseThrow();
            curves.add(new FailureCurve(cohort.study(), cohort.unverified(),
                    IntStream.rangeClosed(1, horizonYears).mapToObj(fit::at).toList()));
        }
        return curves;
    }
}
