package domefold.screen;

import domefold.canvas.Hundred;
import domefold.canvas.Role;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.followup.shown.Framing;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.OutcomeWords;
import domefold.followup.shown.RiskFigure;
import domefold.followup.shown.RiskTable;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Published outcomes side by side: a hundred signs each, both framings, each cohort with its interval and status. */
final class RiskStrips {
    private RiskStrips() {}

    static void write(StripBuilder page, Owning owning) {
        RiskTable risks = owning.risks();
        page.part("Outcomes by year " + risks.year() + ", of " + RiskTable.DENOMINATOR + " women after a first operation");
        page.say("Full signs: in the lowest figure too; half signs: only in the higher ones; dots: the others; a bar is the same"
                + " hundred. A range over cohorts is no interval of any of them. Cohorts are told apart by fill and surface:"
                + " devices alike in both have the same figures.", Role.FAINT);
        page.blank();
        rows(page, risks, "patient");
        if (risks.rows().stream().anyMatch(row -> row.unit().equals("implant"))) {
            page.part("Counted per implant, by year " + risks.year() + ", of " + RiskTable.DENOMINATOR + " implants");
            page.say("Never put in one range with figures that count women.", Role.FAINT);
            page.blank();
            rows(page, risks, "implant");
        }
    }

    private static void rows(StripBuilder page, RiskTable risks, String unit) {
        for (RiskTable.Row row : risks.rows()) {
            if (row.unit().equals(unit)) {
                page.across(heading(risks, row), risks.devices(), device -> cell(page, row, device, risks));
                if (row.outcome().equals("contracture_III_IV") && unit.equals("patient")) {
                    page.say("No ranking of fills or surfaces by contracture: published figures disagree, see below.", Role.FAINT);
                    page.blank();
                }
            }
        }
    }

    static String heading(RiskTable risks, RiskTable.Row row) {
        return OutcomeWords.of(row.outcome()) + " by year " + risks.year() + ", of " + RiskTable.DENOMINATOR + " "
                + (row.unit().equals("patient") ? "women" : "implants");
    }

    private static Cell cell(StripBuilder page, RiskTable.Row row, Device device, RiskTable risks) {
        Optional<RiskFigure> known = row.cells().get(risks.devices().indexOf(device));
        if (known.isEmpty()) {
            return page.text(missing(row.outcome(), device.fill()), Role.FAINT);
        }
        RiskFigure figure = known.get();
        List<Cell> cells = new ArrayList<>();
        if (OutcomeWords.FIRST.contains(figure.outcome())) {
            cells.add(page.drawing(Hundred.SMALL_ROWS, canvas -> Hundred.drawSmall(canvas, 0, 0,
                    Framing.people(figure.per100().low()), Framing.people(figure.per100().high()), Role.DRAWING)));
        } else {
            cells.add(page.drawing(1, canvas -> HundredBar.draw(canvas, 0, 0, Hundred.SMALL_WIDTH,
                    figure.per100().low(), figure.per100().high(), Role.DRAWING)));
        }
        cells.add(page.text(Framing.both(figure.per100()), Role.BODY));
        cells.add(page.text(span(figure), Role.FAINT));
        figure.rows().forEach(point -> cells.add(page.text(cohort(point), point.status().isMemory() ? Role.CAUTION : Role.FAINT)));
        return StripBuilder.stack(cells);
    }

    private static String missing(String outcome, Fill fill) {
        if (outcome.equals("rupture") && fill == Fill.SALINE) {
            return "does not apply: a saline device deflates";
        }
        return outcome.equals("deflation") && fill == Fill.GEL ? "does not apply: a gel device ruptures"
                : "not known: nothing comparable is published for a device like this";
    }

    private static String span(RiskFigure figure) {
        String kind = figure.rows().size() == 1 ? "one cohort" : "range over " + figure.rows().size() + " cohorts";
        return kind + (figure.mixesSurfaces() ? ", smooth and textured together" : "");
    }

    /** For example "GEL-A 36.1 (95 % interval 31.6–40.9), read in the source". */
    static String cohort(OutcomeRow row) {
        String interval = row.intervalPercent().map(band -> " (" + (row.hasConfidenceInterval() ? "95 % interval " : "range ")
                + Numbers.range(band, 1) + ")").orElse(", no interval printed");
        return row.study() + " " + Figures.of(row.percent().orElseThrow(), 0, 1) + interval + ", " + row.status().words();
    }
}
