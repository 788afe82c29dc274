package domefold.canvas;

import java.util.List;

/**
 * Curves over years: how many of a hundred by then. The second curve is drawn with gaps; beyond the data the ground is
 * hatched.
 *
 * @param years width of the plot
 * @param per100 height of the plot
 * @param dataYears last year with data behind it
 */
public record Plot(double years, double per100, double dataYears) {
    private static final int LEFT = 4;

    /** One corner of a curve. */
    public record Point(double year, double per100) {}

    /** Draws axes and up to two curves ({@code List.of()} for none) into that area, numbers of the axes included. */
    public void draw(Canvas canvas, int column, int row, int width, int height, List<Point> curve, List<Point> other) {
        int columns = width - LEFT;
        int rows = height - 2;
        if (columns < 1 || rows < 1 || !(years > 0) || !(per100 > 0)) {
            return;
        }
        hatch(canvas, column + LEFT, row, columns, rows);
        Dots dots = new Dots(columns, rows, canvas.glyphs());
        trace(dots, other, true);
        trace(dots, curve, false);
        dots.draw(canvas, column + LEFT, row, Role.DRAWING, Role.DRAWING_OTHER);
        axes(canvas, column, row, columns, rows);
    }

    private void hatch(Canvas canvas, int column, int row, int columns, int rows) {
        for (int x = 0; x < columns; x++) {
            if ((x + 0.5) / columns * years > dataYears) {
                for (int y = 0; y < rows; y++) {
                    canvas.put(column + x, row + y, canvas.glyphs().shade(), Role.FAINT);
                }
            }
        }
    }

    private void axes(Canvas canvas, int column, int row, int columns, int rows) {
        Glyphs glyphs = canvas.glyphs();
        for (int y = 0; y < rows; y++) {
            canvas.put(column + LEFT - 1, row + y, glyphs.vertical(), Role.FAINT);
        }
        canvas.put(column + LEFT - 1, row + rows, glyphs.unicode() ? '└' : '+', Role.FAINT);
        canvas.fill(column + LEFT, row + rows, columns, glyphs.horizontal(), Role.FAINT);
        canvas.textRight(column + LEFT - 1, row, whole(per100), Role.FAINT);
        canvas.textRight(column + LEFT - 1, row + rows - 1, "0", Role.FAINT);
        canvas.text(column + LEFT, row + rows + 1, "0", Role.FAINT);
        canvas.textRight(column + LEFT + columns, row + rows + 1, whole(years) + (Math.round(years) == 1 ? " year" : " years"), Role.FAINT);
    }

    private static String whole(double value) {
        return Long.toString(Math.round(value));
    }

    private void trace(Dots dots, List<Point> curve, boolean secondCurve) {
        Point before = null;
        for (Point point : curve) {
            if (!Double.isFinite(point.year()) || !Double.isFinite(point.per100())) {
                before = null;
                continue;
            }
            Point from = before == null ? point : before;
            dots.line(x(dots, from), y(dots, from), x(dots, point), y(dots, point), secondCurve);
            before = point;
        }
    }

    private int x(Dots dots, Point point) {
        return (int) Math.round(point.year() / years * (dots.across() - 1));
    }

    private int y(Dots dots, Point point) {
        return dots.down() - 1 - (int) Math.round(point.per100() / per100 * (dots.down() - 1));
    }
}
