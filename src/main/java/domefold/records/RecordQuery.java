package domefold.records;

import domefold.device.Fill;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A question to the list: every part of it must hold. Parts are words, days ({@code 2026-03-04}, {@code 2026-03},
 * {@code 2026}, or two of them with {@code ..} between), {@code case:}, {@code device:}, {@code fill:} and {@code status:}.
 */
public final class RecordQuery {
    private static final String DAY = "[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?";
    private static final List<String> KEYS = List.of("case", "device", "fill", "status");

    private final List<Predicate<RecordHeader>> parts = new ArrayList<>();
    private final List<String> said = new ArrayList<>();

    private RecordQuery() {}

    /**
     * The question in that text.
     *
     * @throws Refusal for a key or a date that cannot be meant
     */
    public static RecordQuery of(String text) {
        RecordQuery query = new RecordQuery();
        for (String part : parts(text)) {
            query.add(part);
        }
        return query;
    }

    /** The question in a text that is still being typed: what cannot be read yet is looked for as words. */
    public static RecordQuery typed(String text) {
        RecordQuery query = new RecordQuery();
        for (String part : parts(text)) {
            try {
                query.add(part);
            } catch (Refusal unfinished) {
                query.words(part);
            }
        }
        return query;
    }

    /** Whether a record answers to it. */
    public boolean matches(RecordHeader header) {
        for (Predicate<RecordHeader> part : parts) {
            if (!part.test(header)) {
                return false;
            }
        }
        return true;
    }

    /** What is searched for, in words, for an empty answer. */
    public String inWords() {
        return said.isEmpty() ? "every record" : String.join(", ", said);
    }

    private static List<String> parts(String text) {
        String trimmed = text.strip();
        return trimmed.isEmpty() ? List.of() : List.of(trimmed.split("\\s+"));
    }

    private void add(String part) {
        int colon = part.indexOf(':');
        if (colon > 0) {
            keyed(part.substring(0, colon).toLowerCase(Locale.ROOT), part.substring(colon + 1), part);
        } else if (part.matches(DAY) || part.matches("(" + DAY + ")?\\.\\.(" + DAY + ")?") && part.length() > 2) {
            days(part);
        } else if (part.matches("[0-9]{1,2}[/.][0-9]{1,2}[/.][0-9]{2,4}")) {
            throw new Refusal("query-date", part, "'" + part + "' may be read in two ways; write the day as 2026-03-04");
        } else {
            words(part);
        }
    }

    private void keyed(String key, String value, String part) {
        if (value.isEmpty()) {
            throw new Refusal("query-value", part, "say what to look for after '" + part + "'");
        }
        String lower = value.toLowerCase(Locale.ROOT);
        switch (key) {
            case "case":
                put("case " + value, header -> header.id().toLowerCase(Locale.ROOT).startsWith(lower));
                break;
            case "device":
                put("device " + value, header -> onEitherSide(header, line ->
                        line.deviceId().toLowerCase(Locale.ROOT).startsWith(lower)
                                || line.line().toLowerCase(Locale.ROOT).contains(lower)));
                break;
            case "fill":
                Fill fill = fill(lower, part);
                put("fill " + fill.key(), header -> onEitherSide(header, line -> line.fill() == fill));
                break;
            case "status":
                String spaced = lower.replace('-', ' ');
                put("status " + spaced, header -> header.stands().equals(spaced) || header.status().words().equals(spaced)
                        || header.happened().stream().anyMatch(one -> one.kind().key().equals(spaced)));
                break;
            default:
                throw new Refusal("query-key", part, "there is no '" + key + ":' to look under; there are "
                        + String.join(":, ", KEYS) + ":");
        }
    }

    private static Fill fill(String lower, String part) {
        for (Fill fill : Fill.values()) {
            if (fill.key().equals(lower)) {
                return fill;
            }
        }
        throw new Refusal("query-fill", part, "a fill is saline or gel, not '" + lower + "'");
    }

    private static boolean onEitherSide(RecordHeader header, Predicate<RecordHeader.SideLine> holds) {
        for (Side side : Side.values()) {
            Optional<RecordHeader.SideLine> line = header.side(side);
            if (line.isPresent() && holds.test(line.get())) {
                return true;
            }
        }
        return false;
    }

    private void days(String part) {
        int dots = part.indexOf("..");
        LocalDate from = dots == 0 ? LocalDate.MIN : first(dots < 0 ? part : part.substring(0, dots), part);
        LocalDate to = dots >= 0 && dots + 2 == part.length() ? LocalDate.MAX
                : last(dots < 0 ? part : part.substring(dots + 2), part);
        if (to.isBefore(from)) {
            throw new Refusal("query-range", part, "the range " + part + " ends before it begins");
        }
        put("days " + part, header -> !header.day().isBefore(from) && !header.day().isAfter(to));
    }

    private static LocalDate first(String text, String part) {
        try {
            return text.length() == 4 ? LocalDate.of(Integer.parseInt(text), 1, 1)
                    : text.length() == 7 ? YearMonth.parse(text).atDay(1) : LocalDate.parse(text);
        } catch (DateTimeException impossible) {
            throw noSuchDay(part);
        }
    }

    private static LocalDate last(String text, String part) {
        try {
            return text.length() == 4 ? LocalDate.of(Integer.parseInt(text), 12, 31)
                    : text.length() == 7 ? YearMonth.parse(text).atEndOfMonth() : LocalDate.parse(text);
        } catch (DateTimeException impossible) {
            throw noSuchDay(part);
        }
    }

    private static Refusal noSuchDay(String part) {
        return new Refusal("query-date", part, "there is no such day as " + part + "; write it as 2026-03-04");
    }

    private void words(String part) {
        String lower = part.toLowerCase(Locale.ROOT);
        put("'" + part + "'", header -> header.words().contains(lower));
    }

    private void put(String words, Predicate<RecordHeader> part) {
        said.add(words);
        parts.add(part);
    }
}
