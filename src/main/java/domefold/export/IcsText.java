package domefold.export;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Lines of an iCalendar file: escaped, folded, ended with CR LF. Source: RFC 5545, 3.1 and 3.3.11 (read).
 */
final class IcsText {
    /** Longest line without its end, in octets of UTF-8, a leading blank included. */
    static final int LONGEST_OCTETS = 75;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);

    private final StringBuilder out = new StringBuilder();

    /** A line whose value needs no escaping: a keyword, a number, a date. */
    IcsText line(String name, String value) {
        fold(name + ":" + value);
        return this;
    }

    /** A line whose value is text. */
    IcsText text(String name, String value) {
        fold(name + ":" + escaped(value));
        return this;
    }

    IcsText day(String name, LocalDate day) {
        return line(name + ";VALUE=DATE", day.format(DAY));
    }

    IcsText moment(String name, Instant moment) {
        return line(name, moment.atOffset(ZoneOffset.UTC).format(MOMENT));
    }

    /** Backslash, semicolon and comma escaped, a line break as {@code \n}; a colon stays; other controls are dropped. */
    static String escaped(String text) {
        return text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replaceAll("\\R", "\\\\n")
                .replaceAll("[\\p{Cntrl}&&[^\t]]", "");
    }

    private void fold(String whole) {
        int octets = 0;
        int at = 0;
        while (at < whole.length()) {
            int next = whole.offsetByCodePoints(at, 1);
            String character = whole.substring(at, next);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LONGEST_OCTETS) {
                out.append("\r\n ");
                octets = 1;
            }
            out.append(character);
            octets += size;
            at = next;
        }
        out.append("\r\n");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
