package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.practice.exercise.Page;
import java.util.ArrayList;
import java.util.List;

/** What frames every practice screen: that the patient is invented, the case's number, the page. */
final class PracticeChrome {
    private static final String BANNER = "PRACTICE: this patient is invented";

    private static final int WITH_NAME = 76;

    private PracticeChrome() {}

    static void draw(Canvas canvas, PracticeDesk desk, String which) {
        int at = canvas.columns() < WITH_NAME ? -2 : canvas.text(1, 0, "Domefold", Role.TITLE);
        canvas.textWithin(at + 3, 0, canvas.columns() - at - BANNER.length() - 6, which, Role.LABEL);
        canvas.textRight(canvas.columns() - 1, 0, BANNER, Role.BANNER);
        canvas.fill(0, 2, canvas.columns(), canvas.glyphs().horizontal(), Role.FAINT);
        canvas.textWithin(1, canvas.rows() - Chrome.BOTTOM, canvas.columns() - 2, desk.desk().list().sentence(canvas.columns() - 2),
                desk.desk().guide().catalogue().invented() ? Role.BANNER : Role.FAINT);
    }

    static void pages(Canvas canvas, Page shown) {
        int gap = canvas.columns() >= 100 ? 3 : 1;
        int at = 1;
        for (Page page : Page.values()) {
            boolean here = page == shown;
            canvas.text(at, 1, here ? String.valueOf(canvas.glyphs().pointer()) : " ", Role.LABEL);
            at = canvas.text(at + 1, 1, page.title(), here ? Role.SELECTED : page.compareTo(shown) < 0 ? Role.BODY : Role.FAINT) + gap;
        }
    }

    /** Lines broken to that width, in their roles. */
    static List<OverlayView.Line> wrapped(List<OverlayView.Line> lines, int width) {
        List<OverlayView.Line> out = new ArrayList<>();
        for (OverlayView.Line line : lines) {
            TextWidth.wrap(line.text(), width - line.indent()).forEach(part ->
                    out.add(new OverlayView.Line(line.indent(), part, line.role())));
        }
        return out;
    }

    /** Draws lines from the row given, scrolled; says which rows are in sight where not all are. Returns the row after. */
    static int lines(Canvas canvas, int column, int row, int width, int height, List<OverlayView.Line> text, Scrolled scroll) {
        List<OverlayView.Line> lines = wrapped(text, width);
        boolean all = lines.size() <= height;
        int room = all ? height : height - 1;
        int from = scroll.row(lines.size() - room);
        int shown = Math.min(room, lines.size() - from);
        for (int i = 0; i < shown; i++) {
            OverlayView.Line line = lines.get(from + i);
            canvas.textWithin(column + line.indent(), row + i, width - line.indent(), line.text(), line.role());
        }
        if (!all) {
            canvas.textRight(column + width, row + room, "rows " + (from + 1) + "–" + (from + shown) + " of " + lines.size()
                    + ", PgUp PgDn", Role.FAINT);
        }
        return row + shown;
    }
}
