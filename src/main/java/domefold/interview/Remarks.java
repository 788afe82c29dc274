package domefold.interview;

import domefold.engine.SecondReading;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Reading;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the program says at once about an answer, beyond its gate. */
final class Remarks {
    private Remarks() {}

    /** Left longer than possible cannot be taken: stretched nipple to fold below resting, in either order typed. */
    static void refuseContradictions(Measure measure, Case patientCase) {
        if (measure != Measure.NIPPLE_TO_FOLD && measure != Measure.NIPPLE_TO_FOLD_STRETCHED) {
            return;
        }
        for (Side side : Side.values()) {
            OptionalDouble rest = patientCase.side(side).readings().value(Measure.NIPPLE_TO_FOLD);
            OptionalDouble stretched = patientCase.side(side).readings().value(Measure.NIPPLE_TO_FOLD_STRETCHED);
            if (rest.isPresent() && stretched.isPresent() && stretched.getAsDouble() < rest.getAsDouble()) {
                throw new Refusal("stretched-below-rest", measure.field(), side + ": nipple to fold stretched "
                        + Figures.cm(stretched.getAsDouble()) + " cm is shorter than at rest "
                        + Figures.cm(rest.getAsDouble()) + " cm; read both again, or type them the other way round");
            }
        }
    }

    static List<Note> onPatient(Measure measure, Case patientCase, Guide guide) {
        List<Note> remarks = new ArrayList<>();
        remarks.addAll(Checks.onPatient(measure, patientCase, guide));
        return remarks;
    }

    static List<Note> onSides(Measure measure, Case patientCase, Guide guide) {
        List<Note> remarks = new ArrayList<>(Checks.onSides(measure, patientCase, guide));
        for (Side side : Side.values()) {
            Optional<Reading> reading = patientCase.side(side).readings().get(measure);
            reading.flatMap(r -> SecondReading.advise(measure, r, guide.evidence().constants()))
                    .ifPresent(note -> remarks.add(new Note(note.code(), side + ": " + note.text()
                            + "; `go " + measure.words() + "`, then `again LEFT RIGHT`")));
        }
        return remarks;
    }

    static List<Note> onHistory(Map<HealthQuestion, Boolean> history) {
        List<Note> remarks = new ArrayList<>();
        for (HealthQuestion question : List.of(HealthQuestion.PREGNANT_OR_NURSING, HealthQuestion.ACTIVE_INFECTION,
                HealthQuestion.UNTREATED_BREAST_DISEASE)) {
            if (history.getOrDefault(question, false)) {
                remarks.add(new Note("contraindication", question.words()
                        + ": surgery is not planned while this stands; the working is still shown"));
            }
        }
        return remarks;
    }

    static List<Note> onPtosis(Case patientCase) {
        List<Note> remarks = new ArrayList<>();
        for (Side side : Side.values()) {
            Breast breast = patientCase.side(side);
            if (breast.ptosis().isPresent() && breast.ptosis().get().compareTo(Ptosis.GRADE_II) >= 0) {
                remarks.add(new Note("lift-to-discuss", side + ": ptosis grade " + breast.ptosis().get().key()
                        + ", a lift is to be discussed; this program plans none"));
            }
        }
        return remarks;
    }
}
