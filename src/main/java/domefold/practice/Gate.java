package domefold.practice;

import domefold.evidence.Evidence;
import domefold.evidence.Table;
import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiPredicate;

/**
 * Whether a drawn woman could exist: every reading inside its refusal gates ({@code measurements.csv}), stretched not
 * below resting, both bases and the gap between them inside the front half of the chest, the nipple above its own
 * base, the body mass index inside its gates.
 */
final class Gate {
    private static final double FRONT_HALF = 0.5;
    private final Map<Measure, Limits> limits = new EnumMap<>(Measure.class);
    private final Limits bmi;

    Gate(Evidence evidence) {
        for (Measure measure : Measure.values()) {
            if (measure != Measure.AGE) {
                Table.Row row = rowOrNull(evidence, measure.evidenceId());
                if (row != null) {
                    limits.put(measure, new Limits(row));
                }
            }
        }
        bmi = new Limits(Published.measurement(evidence, "bmi"));
    }

    private static Table.Row rowOrNull(Evidence evidence, String id) {
        for (Table.Row row : evidence.table("measurements").rows()) {
            if (row.text("id").equals(id)) {
                return row;
            }
        }
        return null;
    }

    /** The two gates of one measure; an absent one lets everything through. */
    static final class Limits {
        private final double[] at = new double[4];

        Limits(Table.Row row) {
            at[0] = orElse(row.number("refuse_low"), Double.NEGATIVE_INFINITY);
            at[1] = orElse(row.number("query_low"), Double.NEGATIVE_INFINITY);
            at[2] = orElse(row.number("query_high"), Double.POSITIVE_INFINITY);
            at[3] = orElse(row.number("refuse_high"), Double.POSITIVE_INFINITY);
        }

        private static double orElse(OptionalDouble value, double other) {
            return value.isPresent() ? value.getAsDouble() : other;
        }

        boolean accepts(double value) {
            return at[0] <= value && value <= at[3];
        }

        boolean usual(double value) {
            return at[1] <= value && value <= at[2];
        }

        double lowest() {
            return at[0];
        }

        double highest() {
            return at[3];
        }
    }

    Limits limits(Measure measure) {
        return limits.get(measure);
    }

    Limits bmiLimits() {
        return bmi;
    }

    static double bmi(double weightKg, double heightCm) {
        double metres = heightCm / 100;
        return weightKg / (metres * metres);
    }

    boolean possible(Person person) {
        return all(person, Limits::accepts) && shape(person);
    }

    /** Possible, and nothing that would be asked again. */
    boolean usual(Person person) {
        return all(person, Limits::usual) && shape(person);
    }

    private boolean all(Person person, BiPredicate<Limits, Double> test) {
        if (!test.test(bmi, bmi(person.value(Measure.WEIGHT), person.value(Measure.HEIGHT)))) {
            return false;
        }
        for (Map.Entry<Measure, Limits> entry : limits.entrySet()) {
            Measure measure = entry.getKey();
            Limits gate = entry.getValue();
            boolean inside = switch (measure.of()) {
                case PATIENT -> test(person.patient().value(measure), gate, test);
                case CHEST -> test(person.chest().value(measure), gate, test);
                case SIDE -> test(person.left().readings().value(measure), gate, test)
                        && test(person.right().readings().value(measure), gate, test);
            };
            if (!inside) {
                return false;
            }
        }
        return true;
    }

    private static boolean test(OptionalDouble value, Limits gate, BiPredicate<Limits, Double> test) {
        return value.isEmpty() || test.test(gate, value.getAsDouble());
    }

    private static boolean shape(Person person) {
        double gap = person.value(Measure.INTERMAMMARY);
        double across = person.value(Side.LEFT, Measure.BASE_WIDTH) + person.value(Side.RIGHT, Measure.BASE_WIDTH) + gap;
        if (across > FRONT_HALF * person.value(Measure.THORACIC_PERIMETER)
                || person.value(Measure.BUST) <= person.value(Measure.THORACIC_PERIMETER)) {
            return false;
        }
        for (Side side : Side.values()) {
            double midline = person.value(side, Measure.NIPPLE_TO_MIDLINE);
            if (person.value(side, Measure.NIPPLE_TO_FOLD_STRETCHED) < person.value(side, Measure.NIPPLE_TO_FOLD)
                    || midline <= gap / 2 || midline >= gap / 2 + person.value(side, Measure.BASE_WIDTH)
                    || person.value(side, Measure.BREAST_VOLUME) <= 0) {
                return false;
            }
        }
        return true;
    }
}
