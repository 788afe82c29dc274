package domefold.interview;

import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;

/** When there is enough for the engine to say something. */
final class Ready {
    private Ready() {}

    /** A plan needs the age and both base widths. */
    static boolean forPlan(Case patientCase) {
        for (Side side : Side.values()) {
            if (!patientCase.side(side).readings().has(Measure.BASE_WIDTH)) {
                return false;
            }
        }
        return patientCase.patient().has(Measure.AGE);
    }
}
