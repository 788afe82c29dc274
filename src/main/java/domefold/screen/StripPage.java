package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * A long page of {@link Strip}s, of which the glass shows a window; all columns scroll together.
 *
 * @param each cells of one device's column
 */
record StripPage(List<Strip> strips, int width, int each) {
    static final int GAP = 2;

    StripPage {
        strips = List.copyOf(strips);
    }

    int height() {
        return strips.stream().mapToInt(Strip::height).sum();
    }

    int lastOffset(int height) {
        return Math.max(0, height() - height);
    }

    /** The rows at which parts begin. */
    List<Integer> partRows() {
        List<Integer> rows = new ArrayList<>();
        int at = 0;
        for (Strip strip : strips) {
            if (strip.beginsPart()) {
                rows.add(at);
            }
            at += strip.height();
        }
        return rows;
    }

    /** The part a row belongs to, up to the first comma of its title. */
    String partAt(int row) {
        String title = "";
        int at = 0;
        for (Strip strip : strips) {
            if (at > row) {
                break;
            }
            title = strip.beginsPart() ? strip.part() : title;
            at += strip.height();
        }
        return title.split(",")[0];
    }

    /** The whole page as lines, for tests and for reading it once. */
    String picture(Glyphs glyphs) {
        Canvas canvas = new Canvas(width, height(), glyphs);
        draw(canvas, 0, 0, height(), 0);
        return canvas.picture();
    }

    /** Draws the rows from {@code offset} on. */
    void draw(Canvas canvas, int column, int row, int height, int offset) {
        int from = Math.min(offset, lastOffset(height));
        Canvas window = new Canvas(width, Math.max(0, height), canvas.glyphs());
        int at = -from;
        for (Strip strip : strips) {
            if (at + strip.height() > 0 && at < height) {
                draw(window, at, strip);
            }
            at += strip.height();
        }
        canvas.draw(column, row, window);
    }

    private void draw(Canvas window, int top, Strip strip) {
        int at = top;
        if (strip.beginsPart()) {
            rule(window, at++, strip.part());
        }
        for (String line : strip.heading()) {
            window.textWithin(0, at++, width, line, strip.role());
        }
        for (int i = 0; i < strip.cells().size(); i++) {
            Canvas entry = new Canvas(strip.whole() ? width : each, strip.cells().get(i).height(), window.glyphs());
            strip.cells().get(i).painter().accept(entry);
            window.draw(i * (each + GAP), at, entry);
        }
    }

    private void rule(Canvas window, int row, String title) {
        Glyphs glyphs = window.glyphs();
        int at = window.text(0, row, title, Role.TITLE) + 1;
        window.fill(at, row, width - at, glyphs.horizontal(), Role.FAINT);
    }
}
