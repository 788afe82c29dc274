package domefold.practice.exercise;

import domefold.engine.TypedReading;
import domefold.outcome.Figures;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * What was typed for the two sides: {@code 11.5 11.8}, {@code 11.5 same}, {@code gel 300 / gel 330}, {@code left 11.5}.
 */
final class Pair {
    private static final String SAME = "same";

    private Pair() {}

    /**
     * The typed text of each side named.
     *
     * @param words true where one side's text may be several words; the sides are then parted by a stroke, and a text
     *     without one is for both
     */
    static Map<Side, String> of(String typed, String where, boolean words) {
        String line = typed.strip().toLowerCase(Locale.ROOT).replaceAll("(\\d)\\s+(cm|mm|ml|cc|in)\\b", "$1$2")
                .replaceAll("[,;](?=\\s)", "");
        for (Side side : Side.values()) {
            if (line.startsWith(side.key() + " ")) {
                return Map.of(side, line.substring(side.key().length()).strip());
            }
        }
        List<String> parts = List.of(line.contains("/") ? line.split("\\s*/\\s*") : sides(line, words));
        if (parts.size() != 2 || parts.get(0).isBlank() || parts.get(0).equals(SAME)) {
            throw new Refusal("two-sides", where, words ? "one for both sides, or LEFT / RIGHT with a stroke between"
                    : "two values are expected, LEFT then RIGHT; `same` repeats the left, `left ...` changes one side");
        }
        Map<Side, String> sides = new EnumMap<>(Side.class);
        sides.put(Side.LEFT, parts.get(0));
        sides.put(Side.RIGHT, parts.get(1).equals(SAME) ? parts.get(0) : parts.get(1));
        return sides;
    }

    private static String[] sides(String line, boolean words) {
        if (!words) {
            return line.split("\\s+");
        }
        return new String[] {line.endsWith(" " + SAME) ? line.substring(0, line.length() - SAME.length()).strip() : line, SAME};
    }

    /** A number on each side, in that unit and within sense. */
    static Function<String, Double> number(String words, String where, String unit, double low, double high) {
        return text -> within(TypedReading.value(words, where, unit, text), words, where, unit, low, high);
    }

    static double within(double value, String words, String where, String unit, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new Refusal("no-sense", where, words + " is between " + Figures.of(low, 0, 1) + " and "
                    + Figures.of(high, 0, 1) + " " + unit);
        }
        return value;
    }

    /** The one whose word begins with what was typed. */
    static <T> T pick(String typed, String where, List<T> all, Function<T, String> word) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<T> exact = all.stream().filter(one -> word.apply(one).equalsIgnoreCase(wanted)).toList();
        List<T> found = !exact.isEmpty() || wanted.isEmpty() ? exact : all.stream()
                .filter(one -> word.apply(one).toLowerCase(Locale.ROOT).startsWith(wanted)).toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new Refusal(found.isEmpty() ? "unknown-word" : "ambiguous-word", where, "'" + typed.strip() + "' "
                + (found.isEmpty() ? "is none of: " : "could be more than one of: ")
                + String.join(", ", (found.isEmpty() ? all : found).stream().map(word).toList()));
    }
}
