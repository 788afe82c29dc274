package domefold.canvas;

import java.util.List;

/**
 * Outlines in centimetres at equal scale in both directions, over a base line, with a length to measure them by. Only
 * draws: the points come from whoever computed the shape.
 *
 * @param cmPerDot side of a dot; outlines that are to be compared share it
 * @param lowestXCm left edge of the drawing
 * @param lowestYCm its lower edge
 */
public record Silhouette(double cmPerDot, double lowestXCm, double lowestYCm) {

    /** The largest drawing in which all outlines fit into that many cells; the origin is always in it. */
    public static Silhouette fitting(int columns, int rows, Glyphs glyphs, List<List<PointCm>> outlines) {
        double lowX = 0;
        double highX = 0;
        double lowY = 0;
        double highY = 0;
        for (List<PointCm> outline : outlines) {
            for (PointCm point : outline) {
                if (point.isFinite()) {
                    lowX = Math.min(lowX, point.xCm());
                    highX = Math.max(highX, point.xCm());
                    lowY = Math.min(lowY, point.yCm());
                    highY = Math.max(highY, point.yCm());
                }
            }
        }
        Dots dots = new Dots(columns, rows, glyphs);
        double perDot = Math.max((highX - lowX) / Math.max(1, dots.across() - 1),
                (highY - lowY) / Math.max(1, dots.down() - 1));
        return new Silhouette(perDot > 0 ? perDot : 1, lowX, lowY);
    }

    /**
     * Draws an outline and, with gaps, another one ({@code List.of()} for none); the base line is where {@code xCm} is 0
     * for a side view, where {@code yCm} is 0 for one from above.
     */
    public void draw(Canvas canvas, int column, int row, int columns, int rows, List<PointCm> outline,
            List<PointCm> other, boolean sideView) {
        Dots base = new Dots(columns, rows, canvas.glyphs());
        if (sideView) {
            base.line(x(0), 0, x(0), base.down() - 1, false);
        } else {
            base.line(0, y(base, 0), base.across() - 1, y(base, 0), false);
        }
        base.draw(canvas, column, row, Role.FAINT, Role.FAINT);
        Dots dots = new Dots(columns, rows, canvas.glyphs());
        trace(dots, other, true);
        trace(dots, outline, false);
        dots.draw(canvas, column, row, Role.DRAWING, Role.DRAWING_OTHER);
    }

    /** A length of whole centimetres drawn at this scale with its number, for example {@code ├───┤ 2 cm}. */
    public void drawLength(Canvas canvas, int column, int row, int lengthCm) {
        int perCell = canvas.glyphs().unicode() ? 2 : 1;
        int cells = (int) Math.round(lengthCm / cmPerDot / perCell);
        if (cells < 2 || cells > canvas.columns()) {
            return;
        }
        Glyphs glyphs = canvas.glyphs();
        canvas.fill(column, row, cells, glyphs.horizontal(), Role.FAINT);
        canvas.put(column, row, glyphs.teeLeft(), Role.FAINT);
        canvas.put(column + cells - 1, row, glyphs.teeRight(), Role.FAINT);
        canvas.text(column + cells + 1, row, lengthCm + " cm", Role.FAINT);
    }

    private void trace(Dots dots, List<PointCm> outline, boolean other) {
        PointCm before = null;
        for (PointCm point : outline) {
            if (!point.isFinite()) {
                before = null;
                continue;
            }
            PointCm from = before == null ? point : before;
            dots.line(x(from.xCm()), y(dots, from.yCm()), x(point.xCm()), y(dots, point.yCm()), other);
            before = point;
        }
    }

    private int x(double xCm) {
        return (int) Math.round((xCm - lowestXCm) / cmPerDot);
    }

    private int y(Dots dots, double yCm) {
        return dots.down() - 1 - (int) Math.round((yCm - lowestYCm) / cmPerDot);
    }
}
