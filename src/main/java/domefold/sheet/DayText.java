package domefold.sheet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;

/** Days as people read them without mixing up day and month. */
public final class DayText {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private DayText() {}

    /** For example {@code 04-Mar-2026}. */
    public static String of(LocalDate day) {
        return String.format(Locale.ROOT, "%02d-%s-%04d", day.getDayOfMonth(), MONTHS.get(day.getMonthValue() - 1),
                day.getYear());
    }

    /** Both spellings, for example {@code 04-Mar-2026 (2026-03-04)}. */
    public static String both(LocalDate day) {
        return of(day) + " (" + day + ")";
    }

    /** To the minute, in universal time, for example {@code 04-Mar-2026 09:12 UTC}. */
    public static String of(Instant moment) {
        var time = moment.atOffset(ZoneOffset.UTC);
        return of(time.toLocalDate()) + String.format(Locale.ROOT, " %02d:%02d UTC", time.getHour(), time.getMinute());
    }
}
