package domefold.screen;

import domefold.canvas.Role;
import domefold.device.Device;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rows of the side-by-side: what is said of each pinned device, in one fixed order. */
final class DeviceColumns {
    private DeviceColumns() {}

    static List<SideBySide.Row> rows(ConsultScreen screen, Plan plan, List<Candidate> shown, int first, int width) {
        List<SideBySide.Row> rows = new ArrayList<>();
        List<Candidate> all = shown;
        rows.add(SideBySide.row("", all, c -> SideBySide.Cell.text((first + all.indexOf(c) + 1) + "  " + c.device().id(), Role.TITLE, width)));
        rows.add(SideBySide.row("device", all, c -> SideBySide.Cell.text(name(c.device()), Role.BODY, width)));
        rows.add(SideBySide.row("volume", all, c -> SideBySide.Cell.text(Numbers.ml(c.device().nominalMl())
                + c.device().labelFillMl().map(band -> ", label " + Numbers.ml(band)).orElse(""), Role.BODY, width)));
        rows.add(SideBySide.row("width", all, c -> SideBySide.Cell.text(Numbers.cm(c.device().widthCm())
                + (c.device().heightCm() == c.device().widthCm() ? ", round" : ", height " + Numbers.cm(c.device().heightCm())), Role.BODY, width)));
        rows.add(SideBySide.row("projection", all, c -> SideBySide.Cell.text(Numbers.cm(c.device().projectionCm()), Role.BODY, width)));
        rows.add(blank(all));
        for (Side side : Side.values()) {
            rows.addAll(side(plan, all, side, width));
            rows.add(blank(all));
        }
        rows.add(SideBySide.row("opening", all, c -> OpeningCell.of(c, width)));
        rows.add(SideBySide.row("exams", all, c -> SideBySide.Cell.text(exams(c, screen), Role.BODY, width)));
        rows.add(SideBySide.row("ripple", all, c -> SideBySide.Cell.text(
                c.ripple().map(Candidate.Ripple::text).orElse("no ripple rank: cover not read"), Role.BODY, width)));
        if (all.stream().anyMatch(c -> c.followUp().isPresent())) {
            rows.add(SideBySide.row("by year 10", all, c -> SideBySide.Cell.texts(outcomes(c), Role.BODY, width)));
        }
        rows.add(blank(all));
        for (Side side : Side.values()) {
            rows.add(SideBySide.row("why " + side, all, c -> SideBySide.Cell.texts(reasons(c.side(side)), Role.BODY, width)));
            rows.add(blank(all));
            rows.add(SideBySide.row("to change it", all, c -> SideBySide.Cell.texts(changes(c.side(side)), Role.FAINT, width)));
            rows.add(blank(all));
        }
        return rows;
    }

    private static SideBySide.Row blank(List<Candidate> all) {
        return SideBySide.row("", all, c -> SideBySide.blank());
    }

    static String name(Device device) {
        return device.line() + ", " + device.fill().key() + ", " + device.surface().key() + ", " + device.profile().key();
    }

    private static List<SideBySide.Row> side(Plan plan, List<Candidate> all, Side side, int width) {
        List<SideBySide.Row> rows = new ArrayList<>();
        rows.add(SideBySide.row(side.toString(), all, c -> SideBySide.Cell.text(
                c.side(side).verdict().key() + sureness(c.side(side)), DevicesView.roleOf(c.side(side).verdict()), width)));
        rows.add(SideBySide.row("  width", all, c -> MarginCell.width(c.side(side), width)));
        rows.add(SideBySide.row("  volume", all, c -> MarginCell.volume(c.side(side), width)));
        rows.add(SideBySide.row("  fold", all, c -> SideBySide.Cell.text(fold(c.side(side)), Role.BODY, width)));
        rows.add(SideBySide.row("  forward", all, c -> SideBySide.Cell.text(
                c.side(side).projectionGainCm().map(band -> Numbers.cm(band) + " may be gained").orElse("not estimated"), Role.BODY, width)));
        return rows;
    }

    private static String sureness(SideFit fit) {
        if (fit.stability().isEmpty()) {
            return "";
        }
        String stays = "; not outside in " + Numbers.percent(fit.stability().getAsDouble()) + " of reading errors";
        return stays + fit.decidingReading().map(m -> ", most by " + m.words()).orElse("");
    }

    private static String fold(SideFit fit) {
        if (fit.foldTargetCm().isEmpty()) {
            return "no target: a reading is missing";
        }
        String target = "target " + Numbers.cm(fit.foldTargetCm().getAsDouble());
        return fit.foldLoweringCm().isEmpty() ? target
                : target + ", lower " + Numbers.cm(fit.foldLoweringCm().getAsDouble());
    }

    private static String exams(Candidate candidate, ConsultScreen screen) {
        Optional<Candidate.FollowUp> followUp = candidate.followUp();
        if (followUp.isEmpty()) {
            return "no schedule chosen: `go imaging schedule`";
        }
        Candidate.FollowUp f = followUp.get();
        if (!f.text().isBlank() && f.examsHigh() == 0) {
            return f.text();
        }
        String count = f.examsLow() == f.examsHigh() ? String.valueOf(f.examsLow()) : f.examsLow() + "–" + f.examsHigh();
        return count + " to year " + f.horizonYears() + " (" + f.schedule() + ")\nyears " + years(f.densestYears())
                + "\nor " + years(f.sparsestYears());
    }

    private static String years(List<Integer> years) {
        return years.isEmpty() ? "none" : years.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static List<String> outcomes(Candidate candidate) {
        List<String> lines = new ArrayList<>();
        candidate.followUp().ifPresent(f -> f.outcomes().forEach(o -> lines.add(o.outcome() + ": "
                + Numbers.per100(o.per100Low()) + "–" + Numbers.per100(o.per100High()) + " of 100 "
                + (o.unit().equals("patient") ? "women" : o.unit() + "s") + " by year " + o.year()
                + " (" + String.join(", ", o.cohorts()) + ")")));
        return lines.isEmpty() ? List.of("nothing published for it here") : lines;
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
