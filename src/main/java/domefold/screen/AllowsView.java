package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.device.Fill;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** "What this allows so far", beside the conversation: rulers per side, and how many devices still fit. */
final class AllowsView {
    /** Rows the narrow form takes where it can. */
    static final int COMPACT_ROWS = 8;
    /** Rows for a line each side and the count of devices. */
    static final int FEWEST_ROWS = 3;
    private static final int RULER_ROWS = 3;
    private static final int MOST_CAUTION_ROWS = 2;
    private static final int FULL_ROWS = 19;
    private static final int LABEL = 7;
    private static final int NARROW = 60;
    private static final String FOLD = "fold ";

    private AllowsView() {}

    static void draw(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen) {
        Optional<Plan> plan = screen.interview().plan();
        if (plan.isEmpty()) {
            how(canvas, column, row, width, height, screen);
            return;
        }
        if (height < FULL_ROWS) {
            compact(canvas, column, row, width, height, screen, plan.get());
        } else {
            full(canvas, column, row, width, height, screen, plan.get());
        }
    }

    /** Before anything can be computed: how the reading in question is taken. */
    private static void how(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen) {
        List<String> lines = new ArrayList<>();
        screen.interview().current().ifPresent(question -> question.help(screen.interview().guide())
                .forEach(text -> lines.addAll(canvas.wrap(text, width))));
        List<String> later = canvas.wrap("What the tissues allow appears here once the age and both base widths are read.", width);
        int room = Math.max(0, height - 4);
        int shown = Math.min(room, lines.size());
        for (int i = 0; i < shown; i++) {
            boolean more = i == room - 1 && lines.size() > room;
            canvas.textWithin(column, row + i, width, more ? "… ? shows the rest" : lines.get(i), Role.FAINT);
        }
        int at = row + (shown == 0 ? 0 : shown + 1);
        for (int i = 0; i < later.size() && at < row + height; i++) {
            canvas.text(column, at++, later.get(i), Role.FAINT);
        }
    }

    /**
     * A line a side and the count of devices always; where rows are left first a caution, then the rulers, then what the line of a
     * side has no room for.
     */
    private static void compact(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen, Plan plan) {
        int left = height - FEWEST_ROWS;
        int cautions = notes(plan).isEmpty() || left < 1 ? 0 : 1;
        boolean rulers = left - cautions >= RULER_ROWS;
        left -= cautions + (rulers ? RULER_ROWS : 0);
        int words = width < NARROW ? LABEL - 1 : LABEL;
        int longer = 0;
        for (Side side : Side.values()) {
            longer += parts(canvas, plan.side(side), width - words).size() - 1;
        }
        boolean whole = longer <= left;
        int at = row;
        for (Side side : Side.values()) {
            canvas.text(column, at, side.toString(), Role.BODY);
            List<String> parts = parts(canvas, plan.side(side), width - words);
            for (String part : whole ? parts : parts.subList(0, 1)) {
                canvas.textWithin(column + words, at++, width - words, part, Role.BODY);
            }
            if (rulers) {
                widthRuler(canvas, column, at++, width, screen, plan, side);
            }
        }
        if (rulers) {
            SideRuler.WIDTH_CM.scale(canvas, column + LABEL, at++, width - LABEL, 2, "cm");
        }
        String devices = devices(plan);
        canvas.textWithin(column, at, width, canvas.width(devices) <= width ? devices : devices.split(";")[0], Role.LABEL);
        caution(canvas, column, at + 1, width, Math.min(MOST_CAUTION_ROWS, row + height - at - 1), plan);
    }

    private static void full(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen, Plan plan) {
        canvas.text(column, row, "What this allows so far", Role.TITLE);
        int at = row + 2;
        for (Side side : Side.values()) {
            SideLimits limits = plan.side(side);
            canvas.text(column, at, side.toString(), Role.LABEL);
            canvas.textWithin(column + LABEL, at, width - LABEL, sentence(limits), Role.BODY);
            canvas.text(column, at + 1, "width", Role.FAINT);
            widthRuler(canvas, column, at + 1, width, screen, plan, side);
            SideRuler.WIDTH_CM.scale(canvas, column + LABEL, at + 2, width - LABEL, 2, "cm");
            canvas.text(column, at + 3, "volume", Role.FAINT);
            volumeRuler(canvas, column, at + 3, width, screen, limits);
            SideRuler.VOLUME_ML.scale(canvas, column + LABEL, at + 4, width - LABEL, 100, "mL");
            canvas.text(column, at + 5, "fold", Role.FAINT);
            canvas.textWithin(column + LABEL, at + 5, width - LABEL, FoldWords.of(limits, screen.interview().dossier().patientCase(), side), Role.BODY);
            at += 7;
        }
        canvas.textWithin(column, at, width, devices(plan), Role.LABEL);
        for (String line : legend(canvas, width)) {
            canvas.textWithin(column, ++at, width, line, Role.FAINT);
        }
        at++;
        caution(canvas, column, at + 1, width, row + height - at - 1, plan);
    }

    /** What the signs of the rulers mean, on one line or on two. */
    static List<String> legend(Canvas canvas, int width) {
        String marks = canvas.glyphs().teeLeft() + " " + canvas.glyphs().teeRight() + " base width   " + canvas.glyphs().full()
                + " ceiling, volume   " + canvas.glyphs().tick() + " widths that fit   " + canvas.glyphs().marker() + " wish";
        String bands = canvas.glyphs().shade() + " their bands   < > beyond the ruler";
        String both = marks + "   " + bands;
        return canvas.width(both) <= width ? List.of(both) : List.of(marks, bands);
    }

    static void widthRuler(Canvas canvas, int column, int row, int width, ConsultScreen screen, Plan plan, Side side) {
        SideLimits limits = plan.side(side);
        SideRuler ruler = SideRuler.WIDTH_CM;
        int from = column + LABEL;
        int cells = width - LABEL;
        ruler.ground(canvas, from, row, cells);
        double baseCm = screen.interview().dossier().patientCase().side(side).readings().value(Measure.BASE_WIDTH).orElse(0);
        ruler.span(canvas, from, row, cells, ruler.from(), baseCm, Role.DRAWING);
        ruler.ticks(canvas, from, row, cells, fittingWidths(plan, side), Role.DRAWING_OTHER);
        ruler.band(canvas, from, row, cells, around(limits.widthCeilingCm(), limits.widthCeilingSdCm()), Role.DRAWING_OTHER);
        ruler.mark(canvas, from, row, cells, limits.widthCeilingCm(), canvas.glyphs().full(), Role.DRAWING_OTHER);
    }

    static void volumeRuler(Canvas canvas, int column, int row, int width, ConsultScreen screen, SideLimits limits) {
        SideRuler ruler = SideRuler.VOLUME_ML;
        int from = column + LABEL;
        int cells = width - LABEL;
        ruler.ground(canvas, from, row, cells);
        ruler.band(canvas, from, row, cells, limits.volumeBandMl(), Role.DRAWING_OTHER);
        ruler.mark(canvas, from, row, cells, limits.startingVolumeMl(), canvas.glyphs().full(), Role.DRAWING_OTHER);
        ruler.mark(canvas, from, row, cells, screen.interview().dossier().patientCase().wishes().sizeWishMl(),
                canvas.glyphs().marker(), Role.QUESTION);
    }

    private static Optional<Band> around(OptionalDouble value, OptionalDouble sd) {
        return value.isPresent() && sd.isPresent()
                ? Optional.of(new Band(value.getAsDouble() - sd.getAsDouble(), value.getAsDouble() + sd.getAsDouble()))
                : Optional.empty();
    }

    private static List<Double> fittingWidths(Plan plan, Side side) {
        return plan.candidates().stream().filter(c -> c.side(side).verdict() == Verdict.FITS)
                .map(c -> c.device().widthCm()).toList();
    }

    /** Ceiling, volume and pocket in one line, the fold having one of its own. */
    private static String sentence(SideLimits limits) {
        List<String> parts = said(limits);
        parts.removeIf(part -> part.startsWith(FOLD));
        return parts.isEmpty() ? "nothing yet" : String.join("  ", parts);
    }

    /** Ceiling, volume, fold and pocket in lines of that width, no part of it broken. */
    static List<String> parts(Canvas canvas, SideLimits limits, int width) {
        List<String> lines = new ArrayList<>();
        for (String part : said(limits)) {
            int last = lines.size() - 1;
            if (last >= 0 && canvas.width(lines.get(last) + "  " + part) <= width) {
                lines.set(last, lines.get(last) + "  " + part);
            } else {
                lines.add(part);
            }
        }
        return lines.isEmpty() ? List.of("nothing yet") : lines;
    }

    private static List<String> said(SideLimits limits) {
        List<String> parts = new ArrayList<>();
        if (limits.widthCeilingCm().isPresent()) {
            parts.add("ceiling " + (limits.widthCeilingSdCm().isPresent()
                    ? Numbers.cmWithin(limits.widthCeilingCm().getAsDouble(), limits.widthCeilingSdCm().getAsDouble())
                    : Numbers.cm(limits.widthCeilingCm().getAsDouble())));
        }
        if (limits.startingVolumeMl().isPresent()) {
            parts.add(Numbers.ml(limits.startingVolumeMl().getAsDouble())
                    + limits.volumeBandMl().map(band -> " (" + Numbers.range(band, 0) + ")").orElse(""));
        } else {
            limits.volumeBandMl().ifPresent(band -> parts.add("about " + Numbers.ml(band)));
        }
        if (limits.foldTargetCm().isPresent()) {
            parts.add(FOLD + Numbers.cm(limits.foldTargetCm().getAsDouble()));
        }
        limits.pocket().ifPresent(pocket -> parts.add(pocket.key()));
        return parts;
    }

    static String devices(Plan plan) {
        long gel = count(plan, Fill.GEL);
        long saline = count(plan, Fill.SALINE);
        return "fit both sides: gel " + gel + ", saline " + saline + " of "
                + Numbers.count(plan.candidates().size(), "device", "devices") + (plan.side(Side.LEFT).incomplete().isEmpty()
                && plan.side(Side.RIGHT).incomplete().isEmpty() ? "" : "; readings missing");
    }

    private static long count(Plan plan, Fill fill) {
        return plan.candidates().stream().filter(c -> c.device().fill() == fill)
                .filter(c -> c.left().verdict() == Verdict.FITS && c.right().verdict() == Verdict.FITS).count();
    }

    /** What stands against an operation first, then what each side's limits come with, then the rest. */
    private static List<Note> notes(Plan plan) {
        List<Note> notes = new ArrayList<>(plan.blocked());
        for (Side side : Side.values()) {
            plan.side(side).notes().forEach(note -> notes.add(new Note(note.code(), side + ": " + note.text())));
        }
        plan.notes().stream().filter(note -> !note.code().equals("invented-catalogue")).forEach(notes::add);
        return notes;
    }

    /** At most one caution in sight, with a count of the others. */
    private static void caution(Canvas canvas, int column, int row, int width, int rows, Plan plan) {
        List<Note> notes = notes(plan);
        if (notes.isEmpty() || rows < 1) {
            return;
        }
        String more = notes.size() > 1 ? (notes.size() - 1) + " more in Limits" : "";
        Role role = plan.blocked().isEmpty() ? Role.CAUTION : Role.REFUSED;
        List<String> lines = Wrapped.text(canvas, "! " + notes.get(0).text(), width);
        int shown = Math.min(rows, lines.size());
        int beside = more.isEmpty() ? 0 : canvas.width(more) + 4;
        boolean below = shown < rows && canvas.width(lines.get(shown - 1)) + beside > width;
        for (int i = 0; i < shown; i++) {
            boolean last = i == shown - 1;
            boolean cut = last && shown < lines.size();
            int room = last && !below ? width - beside : width;
            String text = cut ? TextWidth.cut(lines.get(i) + " ", Math.min(room, canvas.width(lines.get(i)) + 1), canvas.glyphs().ellipsis())
                    : TextWidth.cut(lines.get(i), room, canvas.glyphs().ellipsis());
            int end = canvas.text(column, row + i, text, role);
            if (last && !more.isEmpty()) {
                canvas.text(below ? column + 2 : end + 2, below ? row + i + 1 : row + i, "(" + more + ")", Role.FAINT);
            }
        }
    }
}
