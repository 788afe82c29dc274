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
        Matcher entry = ENTRY.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!entry.matches()) {
            throw new Refusal("not-a-number", measure.field(), "'" + text.strip() + "' is no number; " + measure.words()
                    + " is a number in " + measure.unit() + ", for example " + example(measure));
        }
        double number = Double.parseDouble(entry.group(1).replace(',', '.'));
        String unit = entry.group(2);
        if (unit.isEmpty()) {
            return number;
        }
        Double factor = units(measure).get(unit);
        if (factor == null) {
            throw new Refusal("wrong-unit", measure.field(), "'" + unit + "' is no unit of " + measure.words()
                    + ", which is read in " + measure.unit());
        }
        return convert(number, unit, factor);
    }

    /** Millimetres are divided by ten, so that 124 mm and 12.4 cm are the same number to the last bit. */
    private static double convert(double number, String unit, double factor) {
        return unit.equals("mm") ? number / 10 : number * factor;
    }

    private static Map<String, Double> units(Measure measure) {
        return switch (measure.unit()) {
            case "cm" -> CM;
            case "kg" -> KG;
            case "mL" -> ML;
            case "%" -> PERCENT;
            default -> YEARS;
        };
    }

    private static String example(Measure measure) {
        return switch (measure.unit()) {
            case "cm" -> "12.5";
            case "kg" -> "58";
            case "mL" -> "300";
            case "%" -> "50";
            default -> "31";
        };
    }
}
