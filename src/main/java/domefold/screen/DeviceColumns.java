package domefold.screen;

import domefold.canvas.Columns;
import domefold.canvas.PointCm;
import domefold.canvas.Role;
import domefold.device.Device;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.SideFit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The rows of the side-by-side: what is said of each pinned device, in one fixed order. */
final class DeviceColumns {
    private DeviceColumns() {}

    static Columns of(List<Candidate> shown, int first, int width, boolean pictureFirst) {
        List<Columns.Heading> names = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            names.add(new Columns.Heading((first + i + 1) + "  " + shown.get(i).device().id(), Role.TITLE));
        }
        List<List<PointCm>> outlines = shown.stream().map(c -> SilhouetteCell.listed(c.device())).toList();
        List<Columns.Row> rows = new ArrayList<>();
        Columns.Row picture = Cell.row("side view", shown, c -> SilhouetteCell.of(SilhouetteCell.listed(c.device()), outlines,
                SilhouetteCell.caption(c.device()), width));
        if (pictureFirst) {
            rows.add(picture);
        }
        rows.add(Cell.row("device", shown, c -> Cell.text(name(c.device()), Role.BODY, width)));
        rows.add(Cell.row("volume", shown, c -> Cell.text(Numbers.ml(c.device().nominalMl())
                + c.device().labelFillMl().map(band -> ", label fill " + Numbers.ml(band)).orElse(""), Role.BODY, width)));
        rows.add(Cell.row("width", shown, c -> Cell.text(Numbers.cm(c.device().widthCm())
                + (c.device().heightCm() == c.device().widthCm() ? ", round" : ", height " + Numbers.cm(c.device().heightCm())), Role.BODY, width)));
        rows.add(blank());
        for (Side side : Side.values()) {
            rows.addAll(side(shown, side, width));
            rows.add(blank());
        }
        if (!pictureFirst) {
            rows.add(picture);
        }
        rows.add(Cell.row("opening", shown, c -> OpeningCell.of(c, width)));
        rows.add(Cell.row("exams", shown, c -> ExamsCell.of(c, width)));
        rows.add(Cell.row("ripple", shown, c -> Cell.text(
                c.ripple().map(Candidate.Ripple::text).orElse("no rank: the upper pinch is missing"), Role.BODY, width)));
        rows.add(Cell.row("outcomes", shown, c -> Cell.texts(outcomes(c), Role.BODY, width)));
        rows.add(blank());
        for (Side side : Side.values()) {
            rows.add(Cell.row("why " + side, shown, c -> Cell.texts(reasons(c.side(side)), Role.BODY, width)));
            rows.add(Cell.row("  to change", shown, c -> Cell.texts(changes(c.side(side)), Role.FAINT, width)));
            rows.add(blank());
        }
        return new Columns(names, rows);
    }

    private static Columns.Row blank() {
        return new Columns.Row("", 1, List.of());
    }

    static String name(Device device) {
        return device.fill().key() + ", " + device.profile().key() + ", " + device.surface().key() + " (" + device.line() + ")";
    }

    private static List<Columns.Row> side(List<Candidate> shown, Side side, int width) {
        List<Columns.Row> rows = new ArrayList<>();
        rows.add(Cell.row(side.toString(), shown, c -> Cell.text(
                c.side(side).verdict().key() + sureness(c.side(side)), DevicesView.roleOf(c.side(side).verdict()), width)));
        rows.add(Cell.row("  to ceiling", shown, c -> MarginCell.width(c.side(side))));
        rows.add(Cell.row("  in the band", shown, c -> MarginCell.volume(c.side(side))));
        rows.add(Cell.row("  fold", shown, c -> Cell.text(fold(c.side(side)), Role.BODY, width)));
        rows.add(Cell.row("  forward", shown, c -> Cell.text(
                c.side(side).projectionGainCm().map(band -> Numbers.cm(band) + " may be gained").orElse("not estimated"), Role.BODY, width)));
        return rows;
    }

    private static String sureness(SideFit fit) {
        if (fit.stability().isEmpty()) {
            return "";
        }
        return "; within limits in " + Numbers.percent(fit.stability().getAsDouble()) + " of reading errors"
                + fit.decidingReading().map(m -> ", " + m.words() + " decides").orElse("");
    }

    private static String fold(SideFit fit) {
        if (fit.foldTargetCm().isEmpty()) {
            return "no target: a reading is missing";
        }
        String target = "target " + Numbers.cm(fit.foldTargetCm().getAsDouble());
        return fit.foldLoweringCm().isEmpty() ? target
                : target + ", lower " + Numbers.cm(fit.foldLoweringCm().getAsDouble());
    }

    private static List<String> outcomes(Candidate candidate) {
        List<String> lines = new ArrayList<>();
        candidate.followUp().ifPresent(f -> f.outcomes().forEach(o -> lines.add(o.outcome() + ": "
                + Numbers.per100(o.per100Low()) + "–" + Numbers.per100(o.per100High()) + " of 100 "
                + (o.unit().equals("patient") ? "women" : o.unit() + "s") + " by year " + o.year()
                + " (" + keys(o.cohorts()) + ")")));
        return lines.isEmpty() ? List.of("nothing published for it here") : lines;
    }

    /** Cohort keys alone; their size, kind and source stand in the working. */
    private static String keys(List<String> cohorts) {
        return cohorts.stream().map(cohort -> cohort.split(",")[0]).distinct().collect(Collectors.joining(", "));
    }

    private static List<String> reasons(SideFit fit) {
        List<String> lines = new ArrayList<>();
        fit.reasons().forEach(note -> lines.add("! " + sentence(note)));
        fit.notes().forEach(note -> lines.add(sentence(note)));
        return lines.isEmpty() ? List.of("nothing stands against it") : lines;
    }

    private static List<String> changes(SideFit fit) {
        return fit.wouldChange().isEmpty() ? List.of("–") : fit.wouldChange().stream().map(DeviceColumns::sentence).toList();
    }

    private static String sentence(Note note) {
        return note.text();
    }
}
