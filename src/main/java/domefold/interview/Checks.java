package domefold.interview;

import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Measure;
import java.util.List;

/** Cross-checks that the engine knows, as remarks of the interview. */
final class Checks {
    private Checks() {}

    static List<Note> onPatient(Measure measure, Case patientCase, Guide guide) {
        return List.of();
    }

    static List<Note> onSides(Measure measure, Case patientCase, Guide guide) {
        return List.of();
    }
}
