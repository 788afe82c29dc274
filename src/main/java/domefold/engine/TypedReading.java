package domefold.engine;

import domefold.outcome.Refusal;
import domefold.patient.Measure;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One reading as typed: a number with a full stop or a comma, and a unit or none. A unit that is named is obeyed; a bare
 * number is in the measure's own unit, and {@link Gate} then says whether it looks like a slip.
 */
public final class TypedReading {
    private static final Pattern ENTRY = Pattern.compile("([+-]?\\d{1,7}(?:[.,]\\d{1,6})?|[.,]\\d{1,6})\\s*([a-z%\"]*)");
    private static final Map<String, Double> CM = Map.of("cm", 1.0, "mm", 0.1, "m", 100.0, "in", 2.54, "inch", 2.54,
            "inches", 2.54, "\"", 2.54);
    private static final Map<String, Double> KG = Map.of("kg", 1.0, "lb", 0.45359237, "lbs", 0.45359237, "g", 0.001);
    private static final Map<String, Double> ML = Map.of("ml", 1.0, "cc", 1.0, "l", 1000.0);
    private static final Map<String, Double> PERCENT = Map.of("%", 1.0, "percent", 1.0);
    private static final Map<String, Double> YEARS = Map.of("years", 1.0, "year", 1.0, "y", 1.0);

    private TypedReading() {}

    /**
     * The value in the measure's own unit.
     *
     * @throws Refusal if the text is no number, or its unit is none of the measure's
     */
    public static double value(Measure measure, String text) {
        return value(measure.words(), measure.field(), measure.unit(), text);
    }

    /**
     * The value in that unit, for a number that is no reading.
     *
     * @param words what the number is, for the sentence of a refusal
     * @param where field or question it was typed for
     * @throws Refusal if the text is no number, or its unit is another kind's
     */
    public static double value(String words, String where, String wantedUnit, String text) {
        Matcher entry = ENTRY.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!entry.matches()) {
            throw new Refusal("not-a-number", where, "'" + text.strip() + "' is no number; " + words
                    + " is a number in " + wantedUnit + ", for example " + example(wantedUnit));
        }
        double number = Double.parseDouble(entry.group(1).replace(',', '.'));
        String unit = entry.group(2);
        if (unit.isEmpty()) {
            return number;
        }
        Double factor = units(wantedUnit).get(unit);
        if (factor == null) {
            throw new Refusal("wrong-unit", where, "'" + unit + "' is no unit of " + words
                    + ", which is read in " + wantedUnit);
        }
        return convert(number, unit, factor);
    }

    /** Millimetres are divided by ten, so that 124 mm and 12.4 cm are the same number to the last bit. */
    private static double convert(double number, String unit, double factor) {
        return unit.equals("mm") ? number / 10 : number * factor;
    }

    private static Map<String, Double> units(String wantedUnit) {
        return switch (wantedUnit) {
            case "cm" -> CM;
            case "kg" -> KG;
            case "mL" -> ML;
            case "%" -> PERCENT;
            default -> YEARS;
        };
    }

    private static String example(String wantedUnit) {
        return switch (wantedUnit) {
            case "cm" -> "12.5";
            case "kg" -> "58";
            case "mL" -> "300";
            case "%" -> "50";
            default -> "31";
        };
    }
}
