package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.Scroll;
import domefold.canvas.TextWidth;
import domefold.outcome.Figures;
import domefold.outcome.Working;
import domefold.practice.Decision;
import domefold.practice.Mark;
import domefold.practice.Marking;
import domefold.practice.Standing;
import domefold.practice.exercise.WarningWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The marking: every decision in a list, missed flags first, and the one in focus in full. */
final class MarkingView {
    static final List<String> HELP = List.of(
            "Up and Down choose a decision; below or beside it stand her limits with your choice on the same ruler, the number"
                    + " that decided it, what an error of reading would have done, and the working with its sources.",
            "Inside: within the limits. Defensible: a view that can be held, with three quarters of the credit. Outside: none."
                    + " Not marked: the engine has no limit to hold it against. A missed flag weighs most; the weights are this"
                    + " program's own proposal, not published.",
            "next: another case.  devices, limits: the consult's own screens on this patient.  drill: find wrong readings."
                    + "  progress: your history.");
    private static final int WIDE = 110;
    private static final int DECISION = 25;
    private static final int SIDE = 7;
    private static final int STANDING = 15;
    private static final int POINTS = 11;
    private static final int RULERS_FROM = 8;
    private static final int NARROWEST_SAID = 9;

    private MarkingView() {}

    /** Missed flags and a missed block first, heaviest first; then what cost points, dearest first; then the rest. */
    static List<Mark> order(Marking marking) {
        List<Mark> order = new ArrayList<>(marking.marks());
        order.sort(Comparator.comparing((Mark mark) -> missed(mark) ? 0 : mark.points() < mark.weight() ? 1 : 2)
                .thenComparingDouble(mark -> mark.points() - mark.weight()));
        return order;
    }

    private static boolean missed(Mark mark) {
        return mark.standing() == Standing.OUTSIDE && (mark.decision() == Decision.PROCEED || flag(mark) && mark.said().equals("not named"));
    }

    private static boolean flag(Mark mark) {
        return mark.decision() == Decision.WARNING;
    }

    static void draw(Canvas canvas, int row, int height, PracticeScreen screen) {
        Marking marking = screen.exercise().marking().orElseThrow();
        List<Mark> order = order(marking);
        total(canvas, row, screen, marking);
        Mark chosen = order.get(Math.min(screen.cursor(), order.size() - 1));
        int body = height - 4;
        if (canvas.columns() >= WIDE) {
            int left = canvas.columns() * 11 / 20;
            list(canvas, 1, row + 2, left - 2, body, order, screen.cursor());
            for (int i = 0; i < body; i++) {
                canvas.put(left, row + 2 + i, canvas.glyphs().vertical(), Role.FAINT);
            }
            detail(canvas, left + 2, row + 2, canvas.columns() - left - 3, body, screen, chosen);
        } else {
            int above = Math.min(order.size() + 1, body * 2 / 5);
            list(canvas, 1, row + 1, canvas.columns() - 2, above, order, screen.cursor());
            canvas.fill(1, row + 1 + above, canvas.columns() - 2, canvas.glyphs().horizontal(), Role.FAINT);
            detail(canvas, 1, row + 2 + above, canvas.columns() - 2, height - above - 4, screen, chosen);
        }
        screen.entry().draw(canvas, 1, row + height - 1, canvas.columns() - 2);
        if (!screen.said().isEmpty()) {
            canvas.textWithin(1, row + height - 2, canvas.columns() - 2, screen.said().get(0), screen.saidRole());
        }
    }

    private static void total(Canvas canvas, int row, PracticeScreen screen, Marking marking) {
        long missed = marking.marks().stream().filter(MarkingView::missed).count();
        int at = canvas.text(1, row, points(marking.points()) + " of " + points(marking.outOf()) + " points, "
                + Math.round(marking.percent()) + " %", Role.TITLE);
        at = canvas.text(at + 3, row, missed == 0 ? "no flag missed" : missed == 1 ? "1 flag missed" : missed + " flags missed",
                missed == 0 ? Role.FITS : Role.OUTSIDE);
        String taken = screen.exercise().readings().size() + " of " + screen.exercise().there();
        canvas.textWithin(at + 3, row, canvas.columns() - at - 4, canvas.width(taken + " readings taken") <= canvas.columns() - at - 4
                ? taken + " readings taken" : taken + " read", Role.FAINT);
    }

    private static String points(double value) {
        return Figures.of(value, 0, 2);
    }

    private static void list(Canvas canvas, int column, int row, int width, int height, List<Mark> order, int cursor) {
        int said = width - DECISION - SIDE - STANDING - POINTS;
        canvas.text(column, row, "  " + TextWidth.padRight("decision", DECISION - 2) + TextWidth.padRight("side", SIDE)
                + TextWidth.padRight(said < NARROWEST_SAID ? "" : "yours", said) + TextWidth.padRight("stands", STANDING) + TextWidth.padLeft("points", POINTS), Role.LABEL);
        int room = height - 1;
        int from = Scroll.toShow(Math.max(0, cursor - room / 2), cursor, room, order.size());
        for (int i = 0; i < room && from + i < order.size(); i++) {
            line(canvas, column, row + 1 + i, width, said, order.get(from + i), from + i == cursor);
        }
    }

    /** A flag's words take the cells of the side it has none of, and those of what was said where they need them: its standing tells it. */
    private static void line(Canvas canvas, int column, int row, int width, int said, Mark mark, boolean focused) {
        Role role = focused ? Role.SELECTED : Role.BODY;
        canvas.fill(column, row, width, ' ', role);
        canvas.text(column, row, focused ? String.valueOf(canvas.glyphs().pointer()) : " ", role);
        String name = flag(mark) ? WarningWords.of(mark.code().orElse("")) : mark.decision().words();
        boolean wide = mark.side().isEmpty() && canvas.width(name) > DECISION + SIDE - 3;
        canvas.textWithin(column + 2, row, (mark.side().isPresent() ? DECISION : DECISION + SIDE + (wide ? said : 0)) - 3, name, role);
        canvas.text(column + DECISION, row, mark.side().map(Enum::name).orElse(""), role);
        if (said >= NARROWEST_SAID && !wide) {
            canvas.textWithin(column + DECISION + SIDE, row, said - 1, mark.decision() == Decision.DEVICE ? DeviceCode.within(mark.said(), said - 1) : mark.said(), role);
        }
        canvas.text(column + DECISION + SIDE + said, row, stands(mark), focused ? role : roleOf(mark.standing()));
        canvas.textRight(column + width, row, mark.weight() == 0 ? canvas.glyphs().dash() + ""
                : points(mark.points()) + " of " + points(mark.weight()), focused ? role : Role.FAINT);
    }

    private static String stands(Mark mark) {
        if (!flag(mark) || mark.standing() == Standing.UNMARKED) {
            return mark.standing() == Standing.INSIDE ? "inside" : mark.standing().words();
        }
        return mark.standing() == Standing.INSIDE ? "named" : mark.said().equals("named") ? "without ground" : "missed";
    }

    static Role roleOf(Standing standing) {
        return switch (standing) {
            case INSIDE -> Role.FITS;
            case DEFENSIBLE -> Role.TIGHT;
            case OUTSIDE -> Role.OUTSIDE;
            case UNMARKED -> Role.FAINT;
        };
    }

    private static void detail(Canvas canvas, int column, int row, int width, int height, PracticeScreen screen, Mark mark) {
        int at = height < RULERS_FROM ? row : MarkRulers.draw(canvas, column, row, width, screen.exercise(), mark);
        List<OverlayView.Line> lines = new ArrayList<>();
        if (flag(mark)) {
            lines.add(new OverlayView.Line(0, WarningWords.of(mark.code().orElse("")) + ": " + stands(mark), roleOf(mark.standing())));
        } else if (at == row) {
            lines.add(new OverlayView.Line(0, mark.decision().words() + mark.side().map(side -> " " + side).orElse("") + ": "
                    + mark.said() + ", " + stands(mark), roleOf(mark.standing())));
        }
        lines.add(new OverlayView.Line(0, "Decided by: " + mark.decidedBy(), Role.BODY));
        if (!mark.readingError().isBlank()) {
            lines.add(new OverlayView.Line(0, "Reading error: " + mark.readingError(), Role.BODY));
        }
        mark.bothHeld().ifPresent(text -> lines.add(new OverlayView.Line(0, text, Role.CAUTION)));
        for (Working working : mark.working()) {
            lines.add(new OverlayView.Line(0, "Working: " + working.quantity() + ", " + working.expression()
                    + (Double.isFinite(working.value()) ? " = " + Figures.of(working.value(), 0, 2) + " " + working.unit() : ""), Role.BODY));
            lines.add(new OverlayView.Line(2, working.source() + " [" + working.status().words() + "]", Role.FAINT));
        }
        PracticeChrome.lines(canvas, column, at, width, height - (at - row), lines, screen.scroll());
    }
}
