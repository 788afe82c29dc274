package domefold.followup.course;

import domefold.evidence.Evidence;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.survival.CohortSet;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How far the course moves when every published accuracy of the test is taken in turn, memory ones included.
 *
 * @param pairs ways of combining the published accuracies
 * @param operations those that find a rupture and those that find the implant intact
 * @param yearsToDetection empty where no run finds any
 */
public record AccuracySpread(int pairs, Band exams, Band falseAlarms, Band confirmations, Band found, Band operations,
        Band needlessOperations, Band silentAtHorizon, Optional<Band> yearsToDetection) {

    /** Empty where no cohort fixes a curve. */
    static Optional<AccuracySpread> of(CohortSet rupture, ExamPlan plan, Watch watch, int horizonYears, Evidence evidence) {
        List<GelCourse> courses = new ArrayList<>();
        for (Watch one : published(watch, evidence)) {
            GelCourse.of(rupture, plan, one, horizonYears).ifPresent(courses::add);
        }
        return courses.isEmpty() ? Optional.empty() : Optional.of(new AccuracySpread(courses.size(),
                over(courses, LifeCourse::exams), over(courses, LifeCourse::falseAlarms),
                over(courses, LifeCourse::confirmations), over(courses, LifeCourse::found),
                over(courses, LifeCourse::operations), over(courses, LifeCourse::needlessOperations),
                over(courses, LifeCourse::silentAtHorizon), yearsToDetection(courses)));
    }

    private static Optional<Band> yearsToDetection(List<GelCourse> courses) {
        List<Band> means = courses.stream().flatMap(course -> course.yearsToDetection().stream()).toList();
        return means.isEmpty() ? Optional.empty() : Optional.of(new Band(
                means.stream().mapToDouble(Band::low).min().orElseThrow(),
                means.stream().mapToDouble(Band::high).max().orElseThrow()));
    }

    private static List<Watch> published(Watch watch, Evidence evidence) {
        List<TestAccuracy> ultrasounds = watch.strategy() == Strategy.MRI ? List.of(watch.ultrasound())
                : TestAccuracy.published(evidence, "ultrasound");
        List<TestAccuracy> mris = watch.strategy() == Strategy.ULTRASOUND ? List.of(watch.mri())
                : TestAccuracy.published(evidence, "MRI");
        List<Watch> watches = new ArrayList<>();
        for (TestAccuracy ultrasound : ultrasounds) {
            for (TestAccuracy mri : mris) {
                watches.add(new Watch(watch.strategy(), ultrasound, mri, watch.adherence(), watch.implants()));
            }
        }
        return watches;
    }

    private static Band over(List<GelCourse> courses, ToDoubleFunction<LifeCourse> count) {
        return new Band(courses.stream().mapToDouble(course -> course.over(count).low()).min().orElseThrow(),
                courses.stream().mapToDouble(course -> course.over(count).high()).max().orElseThrow());
    }
}
