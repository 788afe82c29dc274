package domefold.screen;

import domefold.canvas.Columns;
import domefold.canvas.PointCm;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.choose.ByWishes;
import domefold.choose.TradeOff;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.SideFit;
import domefold.shell.Firmness;
import domefold.shell.RippleRank;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rows of the side-by-side: what is said of each pinned device, in one fixed order. */
final class DeviceColumns {
    private static final int NUMBER_CELLS = 3;

    private final ConsultScreen screen;
    private final List<Candidate> shown;
    private final int first;
    private final int width;
    private final Map<String, Turned> turned = new HashMap<>();

    DeviceColumns(ConsultScreen screen, List<Candidate> shown, int first, int width) {
        this.screen = screen;
        this.shown = shown;
        this.first = first;
        this.width = width;
        shown.forEach(c -> turned.put(c.device().id(), Turned.of(c.device(), screen.devices().fillMl(c.device().id()), screen.interview())));
    }

    private Turned turned(Candidate candidate) {
        return turned.get(candidate.device().id());
    }

    Columns of(boolean pictureFirst) {
        List<Columns.Heading> names = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            names.add(new Columns.Heading((first + i + 1) + "  "
                    + DeviceCode.within(shown.get(i).device().id(), width - NUMBER_CELLS), Role.TITLE));
        }
        List<Columns.Row> rows = new ArrayList<>();
        if (pictureFirst) {
            rows.add(picture());
        }
        rows.add(row("device", c -> Cell.text(name(c.device()) + codeIfCut(c.device()), Role.BODY, width)));
        rows.add(row("fill", c -> Cell.text(turned(c).words(), Role.BODY, width)));
        if (turned.values().stream().anyMatch(t -> !t.notes().isEmpty())) {
            rows.add(row("", c -> Cell.texts(turned(c).notes().stream().map(Note::text).toList(), Role.CAUTION, width)));
        }
        rows.add(row("width", c -> Cell.text(widthWords(c), Role.BODY, width)));
        rows.add(blank());
        for (Side side : Side.values()) {
            rows.addAll(side(side));
            rows.add(blank());
        }
        if (!pictureFirst) {
            rows.add(picture());
        }
        rows.add(row("opening", c -> OpeningCell.of(c, width)));
        rows.add(row("exams", c -> ExamsCell.of(c, width)));
        rows.add(row("ripple", c -> Cell.texts(ripple(turned(c)), Role.BODY, width)));
        rows.add(row("firmness", c -> Cell.text(turned(c).firmness().map(Firmness::text)
                .orElse(c.device().fill() == Fill.GEL ? "gel: not computed; the model is for liquid" : "not computed"), Role.BODY, width)));
        rows.add(row("outcomes", c -> Cell.texts(outcomes(c), Role.BODY, width)));
        rows.add(blank());
        if (shown.size() > 1) {
            rows.add(row("trade-off", c -> Cell.text(tradeOff(c), Role.BODY, width)));
            rows.add(blank());
        }
        for (Side side : Side.values()) {
            rows.add(row("why " + side, c -> Cell.texts(reasons(c.side(side)), Role.BODY, width)));
            rows.add(row("  to change", c -> Cell.texts(changes(c.side(side)), Role.FAINT, width)));
            rows.add(blank());
        }
        rows.addAll(AfterRows.of(screen.interview(), shown, width));
        return new Columns(names, rows);
    }

    private Columns.Row row(String name, Function<Candidate, Cell> cell) {
        return Cell.row(name, shown, cell);
    }

    private Columns.Row picture() {
        List<List<PointCm>> outlines = shown.stream().map(c -> turned(c).outline()).toList();
        List<PointCm> under = screen.devices().overlaid() ? outlines.get(0) : List.of();
        return row("side view", c -> SilhouetteCell.of(turned(c).outline(),
                under == turned(c).outline() ? List.of() : under, outlines,
                "base " + Numbers.cm(turned(c).widthCm()) + ", forward " + Numbers.cm(forward(turned(c).outline())), width));
    }

    private static double forward(List<PointCm> outline) {
        return outline.stream().mapToDouble(PointCm::xCm).max().orElse(0);
    }

    private static List<String> ripple(Turned turned) {
        List<String> lines = new ArrayList<>();
        lines.add(turned.ripple().map(RippleRank::text).orElse("no rank: the upper pinch is missing"));
        turned.ripple().ifPresent(rank -> rank.notes().forEach(note -> lines.add("! " + note.text())));
        return lines;
    }

    private String widthWords(Candidate candidate) {
        Device device = candidate.device();
        double now = turned(candidate).widthCm();
        String listed = Numbers.cm(device.widthCm()) + (device.heightCm() == device.widthCm() ? ", round" : ", height " + Numbers.cm(device.heightCm()));
        if (Double.isNaN(now)) {
            return listed + "; this fill is beyond what the shell can hold";
        }
        return Math.abs(now - device.widthCm()) < 0.05 ? listed : Numbers.cm(now) + " at this fill, listed " + listed;
    }

    private String tradeOff(Candidate candidate) {
        Candidate other = candidate == shown.get(0) ? shown.get(1) : shown.get(0);
        ByWishes chosen = screen.interview().byWishes();
        return TradeOff.between(chosen.rows().get(candidate.device().id()), chosen.rows().get(other.device().id()),
                screen.interview().guide().evidence().constants()).sentence();
    }

    private static Columns.Row blank() {
        return new Columns.Row("", 1, List.of());
    }

    /** The code in full where the heading has no room for it. */
    private String codeIfCut(Device device) {
        return NUMBER_CELLS + TextWidth.of(device.id()) > width ? "; " + device.id() : "";
    }

    static String name(Device device) {
        return device.fill().key() + ", " + device.profile().key() + ", " + device.surface().key() + " (" + device.line() + ")";
    }

    private List<Columns.Row> side(Side side) {
        List<Columns.Row> rows = new ArrayList<>();
        rows.add(row(side.toString(), c -> Cell.text(
                c.side(side).verdict().key() + sureness(c.side(side), side), DevicesView.roleOf(c.side(side).verdict()), width)));
        rows.add(row("  to ceiling", c -> MarginCell.width(c.side(side), turned(c).widthCm() - c.device().widthCm())));
        rows.add(row("  in the band", c -> MarginCell.volume(c.side(side))));
        rows.add(row("  fold", c -> Cell.text(fold(c.side(side)), Role.BODY, width)));
        rows.add(row("  forward", c -> Cell.text(
                c.side(side).projectionGainCm().map(band -> Numbers.cm(band) + " may be gained").orElse("not estimated"), Role.BODY, width)));
        return rows;
    }

    private String sureness(SideFit fit, Side side) {
        if (fit.stability().isEmpty()) {
            return "";
        }
        boolean whole = screen.interview().plan().orElseThrow().side(side).incomplete().isEmpty();
        return "; within limits in " + Numbers.percent(fit.stability().getAsDouble())
                + (whole ? " of reading errors" : " of the errors of what was read")
                + fit.decidingReading().map(m -> ", " + m.words() + " decides").orElse("");
    }

    private static String fold(SideFit fit) {
        if (fit.foldTargetCm().isEmpty()) {
            return "no target: a reading is missing";
        }
        String target = "target " + Numbers.cm(fit.foldTargetCm().getAsDouble());
        return fit.foldLoweringCm().isEmpty() ? target + "; the stretched reading is missing"
                : target + ", lower " + Numbers.cm(fit.foldLoweringCm().getAsDouble());
    }

    private static List<String> outcomes(Candidate candidate) {
        List<String> lines = new ArrayList<>();
        candidate.followUp().ifPresent(f -> f.outcomes().forEach(o -> lines.add(o.outcome() + ": "
                + range(o.per100Low(), o.per100High()) + " of 100 "
                + (o.unit().equals("patient") ? "women" : o.unit() + "s") + " by year " + o.year()
                + " (" + keys(o.cohorts()) + ")")));
        return lines.isEmpty() ? List.of("nothing published for it here") : lines;
    }

    private static String range(double low, double high) {
        String from = Numbers.per100(low);
        String to = Numbers.per100(high);
        return from.equals(to) ? from : from + "–" + to;
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
