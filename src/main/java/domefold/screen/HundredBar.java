package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;

/** A share of a hundred as a bar: solid to the lowest figure, shaded to the highest, the rest dotted. */
final class HundredBar {
    private HundredBar() {}

    static void draw(Canvas canvas, int column, int row, int width, double low, double high, Role role) {
        int sure = cells(low, width);
        int perhaps = Math.max(sure, cells(high, width));
        for (int i = 0; i < width; i++) {
            char glyph = i < sure ? canvas.glyphs().full() : i < perhaps ? canvas.glyphs().shade() : canvas.glyphs().dot();
            canvas.put(column + i, row, glyph, i < perhaps ? role : Role.FAINT);
        }
    }

    /** At least one cell for anything above nothing. */
    private static int cells(double per100, int width) {
        return per100 <= 0 ? 0 : Math.max(1, (int) Math.min(width, Math.round(per100 / 100 * width)));
    }
}
