package domefold.followup.schedule;

import domefold.device.Fill;
import java.time.LocalDate;
import java.util.List;

/**
 * What one schedule asks of a woman without symptoms who owns one fill, up to a horizon.
 *
 * <p>Exam years count from the operation, the first exam included, no exam past the horizon, no replacement in between.
 *
 * @param stated false where the schedule gives no exam years for this fill: the lists are then empty because nothing is
 *     stated, or because nothing is asked, and the text says which
 * @param densestYears earliest first exam, shortest interval
 * @param sparsestYears latest first exam, longest interval
 * @param text the rule in a sentence
 */
public record ExamPlan(
        Schedule schedule,
        Fill fill,
        int horizonYears,
        boolean stated,
        List<Integer> densestYears,
        List<Integer> sparsestYears,
        String text) {
    /** How a year becomes a date; printed beside dates. */
    public static final String DATE_RULE = "Every date is counted in whole years from the first one: the same day of the "
            + "same month, and 28 February for 29 February in a year that has none.";

    public static final String RESTART_RULE = "Counted without replacement; that the years start again after an exchange "
            + "is our own assumption.";

    public ExamPlan {
        densestYears = List.copyOf(densestYears);
        sparsestYears = List.copyOf(sparsestYears);
    }

    /** The exams a schedule asks of a woman with that fill up to the horizon. */
    public static ExamPlan of(Schedule schedule, Fill fill, int horizonYears) {
        if (horizonYears < 0) {
            throw new IllegalArgumentException("a horizon is 0 years or more, got " + horizonYears);
        }
        boolean stated = schedule.covers(fill) && schedule.statesExams();
        return new ExamPlan(schedule, fill, horizonYears, stated,
                stated ? schedule.densestYears(horizonYears) : List.of(),
                stated ? schedule.sparsestYears(horizonYears) : List.of(),
                ScheduleWords.rule(schedule, fill, horizonYears));
    }

    public List<LocalDate> densestFrom(LocalDate operation) {
        return densestYears.stream().map(year -> date(operation, year)).toList();
    }

    public List<LocalDate> sparsestFrom(LocalDate operation) {
        return sparsestYears.stream().map(year -> date(operation, year)).toList();
    }

    /** Fewest exams over the readings of the schedule. */
    public int examsLow() {
        return Math.min(densestYears.size(), sparsestYears.size());
    }

    public int examsHigh() {
        return Math.max(densestYears.size(), sparsestYears.size());
    }

    /** The day {@code years} years after the operation, by {@link #DATE_RULE}. */
    public static LocalDate date(LocalDate operation, int years) {
        return operation.plusYears(years);
    }
}
