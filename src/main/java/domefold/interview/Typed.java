package domefold.interview;

import domefold.engine.TypedReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a surgeon types, split into pieces: {@code 12.5 12.8}, {@code 12,5 same}, {@code 125 mm 12.8}, {@code 300cc}.
 *
 * <p>A comma between two digits of a number that has no point is a decimal comma; any other comma separates. What a piece
 * is worth, {@link TypedReading} decides.
 */
final class Typed {
    private static final List<String> UNITS = List.of("cm", "mm", "m", "in", "inch", "inches", "\"", "kg", "g", "lb",
            "lbs", "ml", "cc", "l", "%", "percent", "year", "years", "y");

    private Typed() {}

    /**
     * One piece of an answer.
     *
     * @param word {@code same}, {@code skip} or empty for a number
     * @param value in the unit asked for, NaN for a word
     * @param text as typed
     */
    record Piece(String word, double value, String text) {
        boolean isSame() {
            return word.equals("same");
        }

        boolean isSkip() {
            return word.equals("skip");
        }

        /** True where a unit other than the one asked for was typed, so that the conversion is worth saying. */
        boolean converted(String unit) {
            String typedUnit = text.replaceAll("[-+\\d.,\\s]", "").toLowerCase(Locale.ROOT);
            return !typedUnit.isEmpty() && !typedUnit.equalsIgnoreCase(unit) && !List.of("cc", "ml", "percent", "y",
                    "year", "years").contains(typedUnit);
        }
    }

    /**
     * The pieces of an answer, in order.
     *
     * @param words what is asked, for the sentence of a refusal
     * @param questionId who asks
     * @param unit the unit asked for
     * @throws domefold.outcome.Refusal for a piece that is neither a number in a fitting unit nor a word of this grammar
     */
    static List<Piece> pieces(String answer, String words, String questionId, String unit) {
        List<Piece> pieces = new ArrayList<>();
        for (String token : tokens(answer)) {
            if (List.of("same", "=", "s").contains(token)) {
                pieces.add(new Piece("same", Double.NaN, token));
            } else if (List.of("skip", "-").contains(token)) {
                pieces.add(new Piece("skip", Double.NaN, token));
            } else {
                pieces.add(new Piece("", TypedReading.value(words, questionId, unit, token), token));
            }
        }
        return pieces;
    }

    private static List<String> tokens(String answer) {
        String spaced = answer.strip().toLowerCase(Locale.ROOT)
                .replaceAll("[;/|]", " ")
                .replaceAll(",(?=\\s|$)", " ")
                .replaceAll("(\\d\\.\\d+),", "$1 ");
        List<String> tokens = new ArrayList<>();
        for (String token : spaced.isBlank() ? new String[0] : spaced.strip().split("\\s+")) {
            int last = tokens.size() - 1;
            if (last >= 0 && UNITS.contains(token) && tokens.get(last).matches("[-+]?[\\d.,]+")) {
                tokens.set(last, tokens.get(last) + " " + token);
            } else {
                tokens.add(token);
            }
        }
        return tokens;
    }
}
