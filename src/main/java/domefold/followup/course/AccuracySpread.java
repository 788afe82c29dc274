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
 */
public record AccuracySpread(int pairs, Band found, Band silentAtHorizon, Band falseAlarms, Band needlessOperations) {

    /** Empty where no cohort fixes a curve. */
    static Optional<AccuracySpread> of(CohortSet rupture, ExamPlan plan, Watch watch, int horizonYears, Evidence evidence) {
        List<GelCourse> courses = new ArrayList<>();
        for (Watch one : published(watch, evidence)) {
            GelCourse.of(rupture, plan, one, horizonYears).ifPresent(courses::add);
        }
        return courses.isEmpty() ? Optional.empty() : Optional.of(new AccuracySpread(courses.size(),
                over(courses, LifeCourse::found), over(courses, LifeCourse::silentAtHorizon),
                over(courses, LifeCourse::falseAlarms), over(courses, LifeCourse::needlessOperations)));
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
