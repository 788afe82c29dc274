package domefold.practice;

import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Side;

/** Sorts drawn women into levels. */
final class Level {
    private final Constants constants;
    private final Body body;

    Level(Constants constants, Body body) {
        this.constants = constants;
        this.body = body;
    }

    /** Breasts of a size whose owner would ask for augmentation. */
    boolean asks(Person person) {
        return person.mean(Measure.BREAST_VOLUME) <= constants.value("PRA-ASKS-UP-TO-ML");
    }

    /** Nothing that calls for more than the ordinary. */
    boolean ordinary(Person person) {
        return !trapped(person) && !difficult(person) && body.usual(person)
                && person.history().values().stream().noneMatch(answer -> answer);
    }

    /** Asymmetric, thinly covered or tight. */
    boolean difficult(Person person) {
        if (Math.abs(person.difference(Measure.BREAST_VOLUME)) > constants.value("ASY-12")
                || apart(person, Measure.BASE_WIDTH) || apart(person, Measure.NIPPLE_TO_FOLD)) {
            return true;
        }
        for (Side side : Side.values()) {
            if (person.value(side, Measure.UPPER_PINCH) < constants.value("PRA-THIN-COVER")
                    || person.value(side, Measure.SKIN_STRETCH) < constants.value("ADJ-01-LIMIT")) {
                return true;
            }
        }
        return false;
    }

    /** What level 3 plants, met by chance. */
    boolean trapped(Person person) {
        for (Side side : Side.values()) {
            if (wantsLift(person, side)
                    || person.value(side, Measure.BASE_WIDTH) < constants.value("CON-01")
                    || person.value(side, Measure.NIPPLE_TO_FOLD_STRETCHED) < constants.value("CON-02")) {
                return true;
            }
        }
        return person.value(Measure.AGE) < constants.value("LIM-02");
    }

    /** Grade II or III, or grade I with a long lower pole (PTO-08). */
    private boolean wantsLift(Person person, Side side) {
        Ptosis grade = person.side(side).ptosis().orElse(Ptosis.NONE);
        return grade.compareTo(Ptosis.GRADE_II) >= 0 || grade == Ptosis.GRADE_I
                && person.value(side, Measure.NIPPLE_TO_FOLD_STRETCHED) > constants.value("PTO-08");
    }

    private boolean apart(Person person, Measure measure) {
        return Math.abs(person.difference(measure)) >= constants.value("PRA-ASYMMETRIC-CM") - 1e-9;
    }
}
