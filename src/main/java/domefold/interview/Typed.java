package domefold.interview;

import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a surgeon types, as numbers: {@code 12.5 12.8}, {@code 12,5 same}, {@code 125 mm}, {@code 300cc}.
 *
 * <p>A decimal comma is a comma between two digits in a number that has no point; any other comma separates. A unit
 * typed is converted and said; a unit not typed is the question's own. Nothing is guessed.
 */
final class Typed {
    private static final Pattern PIECE =
            Pattern.compile("(?<number>[-+]?\\d+(?:[.,]\\d+)?|[-+]?[.,]\\d+)(?<unit>[a-z%\"'°]*)");

    private Typed() {}

    /**
     * One piece of an answer.
     *
     * @param word {@code same}, {@code skip} or empty for a number
     * @param value in the unit asked for, NaN for a word
     * @param text as typed
     * @param converted true where a typed unit was converted
     */
    record Piece(String word, double value, String text, boolean converted) {
        boolean isSame() {
            return word.equals("same");
        }

        boolean isSkip() {
            return word.equals("skip");
        }
    }

    /**
     * The pieces of an answer, in order.
     *
     * @param unit the unit asked for
     * @throws Refusal for a piece that is neither a number nor a word of this grammar, or an unfitting unit
     */
    static List<Piece> pieces(String answer, String unit) {
        List<Piece> pieces = new ArrayList<>();
        for (String token : tokens(answer)) {
            if (List.of("same", "=", "s").contains(token)) {
                pieces.add(new Piece("same", Double.NaN, token, false));
            } else if (List.of("skip", "-", "none").contains(token)) {
                pieces.add(new Piece("skip", Double.NaN, token, false));
            } else if (!pieces.isEmpty() && isUnit(token) && pieces.get(pieces.size() - 1).word().isEmpty()) {
                Piece last = pieces.remove(pieces.size() - 1);
                pieces.add(number(last.text() + " " + token, last.value(), token, unit));
            } else {
                Matcher match = PIECE.matcher(token);
                if (!match.matches()) {
                    throw new Refusal("not-a-number", "answer",
                            "'" + token + "' is not a number; a value in " + unit + " is expected");
                }
                double value = Double.parseDouble(match.group("number").replace(',', '.'));
                pieces.add(number(token, value, match.group("unit"), unit));
            }
        }
        return pieces;
    }

    private static List<String> tokens(String answer) {
        String spaced = answer.strip().toLowerCase(Locale.ROOT)
                .replaceAll("[;/|]", " ")
                .replaceAll(",(?=\\s|$)", " ")
                .replaceAll("(\\d\\.\\d+),", "$1 ");
        return spaced.isBlank() ? List.of() : List.of(spaced.strip().split("\\s+"));
    }

    private static Piece number(String text, double value, String typedUnit, String unit) {
        if (typedUnit.isEmpty()) {
            return new Piece("", value, text, false);
        }
        OptionalDouble factor = factor(typedUnit, unit);
        if (factor.isEmpty()) {
            throw new Refusal("wrong-unit", "answer",
                    "'" + text + "' is in " + typedUnit + " where " + unit + " is expected");
        }
        return new Piece("", value * factor.getAsDouble(), text, factor.getAsDouble() != 1);
    }

    private static boolean isUnit(String token) {
        return token.matches("cm|mm|in|inch|inches|\"|m|kg|kilo|lb|lbs|ml|cc|%|percent|years?|y|yrs?");
    }

    private static OptionalDouble factor(String typed, String unit) {
        switch (unit + "<" + typed) {
            case "cm<cm": case "kg<kg": case "kg<kilo": case "mL<ml": case "mL<cc": case "%<%": case "%<percent":
            case "years<y": case "years<year": case "years<years": case "years<yr": case "years<yrs":
                return OptionalDouble.of(1);
            case "cm<mm":
                return OptionalDouble.of(0.1);
            case "cm<m":
                return OptionalDouble.of(100);
            case "cm<in": case "cm<inch": case "cm<inches": case "cm<\"":
                return OptionalDouble.of(2.54);
            case "kg<lb": case "kg<lbs":
                return OptionalDouble.of(0.45359237);
            default:
                return OptionalDouble.empty();
        }
    }
}
