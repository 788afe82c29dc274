package domefold.practice;

import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Reading;
import java.util.Map;

/**
 * The two vertical readings that are taken where a breast is ptotic, on the side of the published line
 * of PTO-09 ({@code vsd = slope vbd + offset}) that the grade calls for: grade I below it, II and III above.
 */
final class Droop {
    private static final double NEAREST_CM = 0.2;

    private Droop() {}

    static void read(Map<Measure, Reading> taken, Ptosis grade, Constants constants, Dice dice) {
        double base = new Spread(constants.value("PRA-VERTICAL-BASE-MEAN"), constants.value("PRA-VERTICAL-BASE-SD"))
                .normal(dice.normal());
        Reading baseRead = Ticks.tenths(base);
        double apart = NEAREST_CM + dice.exponential(1);
        double surface = constants.value("PTO-09-SLOPE") * baseRead.value()
                + constants.value("PTO-09-OFFSET") + (grade == Ptosis.GRADE_I ? -apart : apart);
        taken.put(Measure.VERTICAL_BASE, baseRead);
        taken.put(Measure.VERTICAL_SURFACE, Ticks.tenths(Math.max(baseRead.value(), surface)));
    }
}
