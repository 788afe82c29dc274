package domefold.practice;

import domefold.engine.BodyMass;
import domefold.engine.Gate;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Whether a drawn woman could exist: every reading and the body mass index inside the gates that refuse, stretched not
 * below resting, both bases and the gap inside the front of the chest, the bust above the chest perimeter, each nipple
 * above its own base.
 */
final class Body {
    private static final double PER_CENT = 100;
    private final Map<Measure, Gate> gates = new EnumMap<>(Measure.class);
    private final BodyMass bodyMass;
    private final double frontShare;

    Body(Evidence evidence) {
        for (Measure measure : Measure.values()) {
            gates.put(measure, Gate.of(measure, evidence));
        }
        bodyMass = BodyMass.of(evidence);
        frontShare = evidence.constants().value("CHECK-CHEST-SHARE") / PER_CENT;
    }

    static double bmi(Person person) {
        return BodyMass.index(person.value(Measure.HEIGHT), person.value(Measure.WEIGHT));
    }

    boolean possible(Person person) {
        return bodyMass.possible().includes(bmi(person)) && all(person, Gate::possible) && shape(person);
    }

    /** Possible, and no single reading that would be asked again; the body mass index may be. */
    boolean usualReadings(Person person) {
        return possible(person) && all(person, Gate::usual);
    }

    /** Possible, and nothing that would be asked again. */
    boolean usual(Person person) {
        return usualReadings(person) && bodyMass.usual().includes(bmi(person));
    }

    private boolean all(Person person, Function<Gate, Band> band) {
        return inside(person.patient(), band) && inside(person.chest(), band)
                && inside(person.left().readings(), band) && inside(person.right().readings(), band);
    }

    private boolean inside(Readings readings, Function<Gate, Band> band) {
        for (Measure measure : readings.byMeasure().keySet()) {
            OptionalDouble value = readings.value(measure);
            if (!band.apply(gates.get(measure)).includes(value.orElseThrow())) {
                return false;
            }
        }
        return true;
    }

    private boolean shape(Person person) {
        double gap = person.value(Measure.INTERMAMMARY);
        double across = person.value(Side.LEFT, Measure.BASE_WIDTH) + person.value(Side.RIGHT, Measure.BASE_WIDTH) + gap;
        if (across > frontShare * person.value(Measure.THORACIC_PERIMETER)
                || person.value(Measure.BUST) <= person.value(Measure.THORACIC_PERIMETER)) {
            return false;
        }
        for (Side side : Side.values()) {
            double midline = person.value(side, Measure.NIPPLE_TO_MIDLINE);
            if (person.value(side, Measure.NIPPLE_TO_FOLD_STRETCHED) < person.value(side, Measure.NIPPLE_TO_FOLD)
                    || midline <= gap / 2 || midline >= gap / 2 + person.value(side, Measure.BASE_WIDTH)) {
                return false;
            }
        }
        return true;
    }
}
