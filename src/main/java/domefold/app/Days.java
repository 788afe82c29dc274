package domefold.app;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;

/** Days and months as typed. */
final class Days {
    private Days() {}

    static LocalDate day(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException wrong) {
            throw new WrongUsage("'" + typed + "' is no day; write it as 2026-03-20");
        }
    }

    static YearMonth month(String typed) {
        try {
            return YearMonth.parse(typed);
        } catch (DateTimeParseException wrong) {
            throw new WrongUsage("'" + typed + "' is no month; write year and month as 2031-03");
        }
    }
}
