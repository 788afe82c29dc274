package domefold.interview;

import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.patient.Measure;
import java.util.Locale;
import java.util.OptionalDouble;

/** Small matters of wording. */
final class Words {
    private Words() {}

    /** The text with a capital at the front and a full stop at the end; empty stays empty. */
    static String sentence(String text) {
        String trimmed = text.strip();
        if (trimmed.isEmpty()) {
            return "";
        }
        String capital = trimmed.substring(0, 1).toUpperCase(Locale.ROOT) + trimmed.substring(1);
        return capital.endsWith(".") || capital.endsWith("?") ? capital : capital + ".";
    }

    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** The value with its unit as it is printed for that measure. */
    static String value(Measure measure, double value) {
        return switch (measure.unit()) {
            case "mL" -> Numbers.ml(value);
            default -> Figures.of(value, measure.unit().equals("cm") ? 1 : 0, 2) + " " + measure.unit();
        };
    }

    static String value(Measure measure, OptionalDouble value) {
        return value.isPresent() ? value(measure, value.getAsDouble()) : "not taken";
    }
}
