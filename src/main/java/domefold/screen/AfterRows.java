package domefold.screen;

import domefold.canvas.Columns;
import domefold.canvas.Role;
import domefold.engine.BustGain;
import domefold.engine.CupBand;
import domefold.evidence.Constants;
import domefold.interview.Interview;
import domefold.outcome.Numbers;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.shell.BreastAfter;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The breast after: bands and trends with their honesty, never a promise. */
final class AfterRows {
    private AfterRows() {}

    static List<Columns.Row> of(Interview interview, List<Candidate> shown, int width) {
        Constants constants = interview.guide().evidence().constants();
        Case patientCase = interview.dossier().patientCase();
        List<Columns.Row> rows = new ArrayList<>();
        rows.add(Cell.row("after", shown, c -> Cell.text(
                "group figures do not foretell one woman's result", Role.FAINT, width)));
        rows.add(Cell.row("  width", shown, c -> Cell.texts(widths(patientCase, c, constants), Role.BODY, width)));
        rows.add(Cell.row("  upper pole", shown, c -> Cell.text(upper(c), Role.BODY, width)));
        rows.add(Cell.row("  bust", shown, c -> Cell.text(bust(c, constants), Role.BODY, width)));
        rows.add(Cell.row("  cups", shown, c -> Cell.text(
                CupBand.of(c.device().nominalMl(), constants).words(), Role.BODY, width)));
        return rows;
    }

    private static List<String> widths(Case patientCase, Candidate candidate, Constants constants) {
        List<String> lines = new ArrayList<>();
        for (Side side : Side.values()) {
            Readings r = patientCase.side(side).readings();
            OptionalDouble medial = r.value(Measure.MEDIAL_PINCH);
            OptionalDouble lateral = r.value(Measure.LATERAL_PINCH);
            if (medial.isPresent() && lateral.isPresent() && r.has(Measure.BASE_WIDTH)) {
                double pinch = medial.getAsDouble() + lateral.getAsDouble();
                lines.add(side + " " + Numbers.cm(BreastAfter.widthAfterCm(r.value(Measure.BASE_WIDTH).getAsDouble(),
                        candidate.device().widthCm(), pinch, constants)));
            }
        }
        return lines.isEmpty() ? List.of("needs the edge pinches") : lines;
    }

    private static String upper(Candidate candidate) {
        return candidate.left().upperPolePercent().map(band -> "LEFT " + Numbers.range(band, 0) + " % above the nipple; "
                + "45 % was preferred in surveys, about 62 % in satisfied women, measured differently")
                .orElse("needs the breast volume and the edge pinches");
    }

    private static String bust(Candidate candidate, Constants constants) {
        OptionalDouble gain = BustGain.cm(candidate.device().nominalMl(), constants);
        return gain.isPresent() ? "about " + Numbers.cm(gain.getAsDouble()) + " more around, same device on both sides"
                : Numbers.ml(candidate.device().nominalMl()) + " is outside the 150 to 450 mL of the published line";
    }
}
