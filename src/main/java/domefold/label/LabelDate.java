package domefold.label;

import domefold.outcome.Refusal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;

/**
 * A date on a label.
 *
 * @param date the day; the last of the month where the label names no day
 * @param dayGiven false where the label names only the month
 */
public record LabelDate(LocalDate date, boolean dayGiven) {
    /** Two-digit years further than this from now belong to another century. Source: GS1 syntax dictionary (read). */
    private static final int FURTHEST_AHEAD_YEARS = 50;
    private static final int FURTHEST_BACK_YEARS = -49;

    /**
     * The full year of a two-digit one.
     * <pre>
     *   YY - nowYY ≥ 51 → the century before;   YY - nowYY ≤ -50 → the next one;   otherwise this one
     * </pre>
     */
    public static int fullYear(int twoDigits, int nowYear) {
        int century = nowYear / 100 * 100;
        int ahead = twoDigits - nowYear % 100;
        if (ahead > FURTHEST_AHEAD_YEARS) {
            return century - 100 + twoDigits;
        }
        return ahead < FURTHEST_BACK_YEARS ? century + 100 + twoDigits : century + twoDigits;
    }

    /**
     * Year, month and day; day 0 is "no day given" and read as the last of the month (that reading is from memory).
     *
     * @throws Refusal if there is no such day
     */
    static LabelDate of(int year, int month, int day, String where, String asPrinted) {
        try {
            return day == 0
                    ? new LabelDate(YearMonth.of(year, month).atEndOfMonth(), false)
                    : new LabelDate(LocalDate.of(year, month, day), true);
        } catch (DateTimeException impossible) {
            throw new Refusal("label-date", where, where + " reads " + asPrinted + ", and there is no such date");
        }
    }

    /** Year and day of the year. */
    static LabelDate ofYearDay(int year, int dayOfYear, String where, String asPrinted) {
        try {
            return new LabelDate(LocalDate.ofYearDay(year, dayOfYear), true);
        } catch (DateTimeException impossible) {
            throw new Refusal("label-date", where, where + " reads " + asPrinted + ", and there is no such date");
        }
    }
}
