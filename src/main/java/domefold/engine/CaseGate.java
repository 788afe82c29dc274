package domefold.engine;

import domefold.evidence.Evidence;
import domefold.outcome.Note;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;

/**
 * The gate of a whole case, for readers of files: the first reading that can't be taken refuses it, by its field path.
 * Height and weight exchanged are seen first, because each alone looks like another slip.
 */
public final class CaseGate {
    private CaseGate() {}

    /**
     * Passes or refuses a case.
     *
     * @throws Refusal for the first reading outside its gate, else the first contradiction between readings
     */
    public static void check(Case of, Evidence evidence) {
        CrossChecks.bodyMass(of.patient(), evidence)
                .filter(finding -> finding.note().code().equals("height-weight-exchanged")).ifPresent(CaseGate::refuse);
        readings("patient", of.patient(), evidence);
        readings("chest", of.chest(), evidence);
        for (Side side : Side.values()) {
            readings(side.key(), of.side(side).readings(), evidence);
        }
        for (Finding finding : CrossChecks.of(of, evidence)) {
            if (finding.refuse()) {
                refuse(finding);
            }
        }
    }

    private static void refuse(Finding finding) {
        throw new Refusal(finding.note().code(), finding.where(), finding.note().text());
    }

    private static void readings(String where, Readings readings, Evidence evidence) {
        readings.byMeasure().forEach((measure, reading) -> refuse(where, measure, reading.value(), evidence));
    }

    private static void refuse(String where, Measure measure, double value, Evidence evidence) {
        ReadingCheck check = Gate.check(measure, value, evidence);
        if (check.refused()) {
            Note note = check.note().orElseThrow();
            String path = where + "." + measure.field();
            String lead = measure.of() == Measure.Of.SIDE ? where + " " : "";
            throw new Refusal(note.code(), path, lead + note.text());
        }
    }
}
