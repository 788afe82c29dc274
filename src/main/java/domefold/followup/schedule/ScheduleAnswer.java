package domefold.followup.schedule;

import domefold.device.Fill;
import domefold.evidence.Status;
import java.time.LocalDate;
import java.util.List;

/**
 * The dates a schedule asks for: the answer {@code domefold-schedule/1}.
 *
 * @param text the rule in a sentence; says why the lists are empty when they are
 * @param symptom what to do about a new symptom
 * @param dateRule how a year becomes a date
 */
public record ScheduleAnswer(
        String id,
        String source,
        Status status,
        boolean superseded,
        List<LocalDate> densest,
        List<LocalDate> sparsest,
        String text,
        String symptom,
        String dateRule) {
    public ScheduleAnswer {
        densest = List.copyOf(densest);
        sparsest = List.copyOf(sparsest);
    }

    /**
     * The exam dates from an operation on {@code from} over {@code years} years.
     *
     * @throws domefold.outcome.Refusal if there is no schedule of that id
     */
    public static ScheduleAnswer of(Schedules schedules, String id, Fill fill, LocalDate from, int years) {
        Schedule schedule = schedules.get(id, "schedule");
        ExamPlan plan = ExamPlan.of(schedule, fill, years);
        return new ScheduleAnswer(schedule.id(), schedule.source(), schedule.status(), schedule.superseded(),
                plan.densestFrom(from), plan.sparsestFrom(from), plan.text(), ScheduleWords.symptom(schedule, fill),
                ExamPlan.DATE_RULE + " " + ExamPlan.RESTART_RULE);
    }
}
