package domefold.interview;

import domefold.engine.CrossChecks;
import domefold.engine.Finding;
import domefold.engine.SecondReading;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
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

/** What the program says at once about an answer, beyond its gate. */
final class Remarks {
    private Remarks() {}

    /**
     * What the readings, held against each other, say after this answer and did not say before it.
     *
     * @throws Refusal where they contradict each other
     */
    static List<Note> newFindings(String questionId, Case before, Case after, Guide guide) {
        List<Finding> known = CrossChecks.of(before, guide.evidence());
        List<Note> remarks = new ArrayList<>();
        for (Finding finding : CrossChecks.of(after, guide.evidence())) {
            if (known.contains(finding)) {
                continue;
            }
            if (finding.refuse()) {
                throw new Refusal(finding.note().code(), questionId, finding.note().text());
            }
            remarks.add(finding.note());
        }
        return remarks;
    }

    /** A request to read again where the reading error may carry it across a threshold, both sides in one sentence. */
    static List<Note> secondReadings(Measure measure, Case patientCase, Guide guide) {
        List<String> sides = new ArrayList<>();
        String code = "";
        for (Side side : Side.values()) {
            Optional<Reading> reading = patientCase.side(side).readings().get(measure);
            Optional<Note> advice = reading.flatMap(r -> SecondReading.advise(measure, r, guide.evidence().constants()));
            if (advice.isPresent()) {
                code = advice.get().code();
                double chance = SecondReading.chanceAcross(measure, reading.orElseThrow(), guide.evidence().constants());
                sides.add(side + " " + Words.value(measure, reading.orElseThrow().value()) + " (" + Numbers.percent(chance) + ")");
            }
        }
        return sides.isEmpty() ? List.of() : List.of(new Note(code, "a second time would help: " + String.join(", ", sides)
                + " may lie across a threshold of the plan; `again LEFT RIGHT` averages both"));
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
