package domefold.practice;

import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The kinds of asymmetry that follow from the readings, by the limits of what an examiner is taken to see. */
final class Seen {
    /** Differences of readings on the grid of tenths are compared with this much slack for the binary sum. */
    private static final double SLACK = 1e-9;

    private Seen() {}

    static List<Sighting> of(Person person, Constants constants) {
        double cm = constants.value("PRA-SEEN-CM") - SLACK;
        List<Sighting> seen = new ArrayList<>();
        double level = person.difference(Measure.STERNAL_NOTCH_TO_NIPPLE);
        double midline = person.difference(Measure.NIPPLE_TO_MIDLINE);
        double nipple = Math.abs(level) >= cm ? level : midline;
        add(seen, Kind.NIPPLE_POSITION, nipple, cm);
        add(seen, Kind.VOLUME, person.difference(Measure.BREAST_VOLUME), constants.value("ASY-10") - SLACK);
        add(seen, Kind.FOLD_POSITION, level + person.difference(Measure.NIPPLE_TO_FOLD), cm);
        add(seen, Kind.AREOLA, person.difference(Measure.AREOLA), cm);
        boolean left = ptotic(person, Side.LEFT);
        boolean right = ptotic(person, Side.RIGHT);
        if (left || right) {
            seen.add(new Sighting(Kind.PTOSIS,
                    left && right ? Optional.empty() : Optional.of(left ? Side.LEFT : Side.RIGHT)));
        }
        return seen;
    }

    static boolean ptotic(Person person, Side side) {
        return person.side(side).ptosis().filter(grade -> grade.compareTo(Ptosis.GRADE_I) >= 0).isPresent();
    }

    private static void add(List<Sighting> seen, Kind kind, double leftLessRight, double limit) {
        if (Math.abs(leftLessRight) >= limit) {
            seen.add(new Sighting(kind, Optional.of(leftLessRight > 0 ? Side.LEFT : Side.RIGHT)));
        }
    }
}
