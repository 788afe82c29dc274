package domefold.screen;

import domefold.canvas.PointCm;
import domefold.canvas.Role;
import domefold.canvas.Silhouette;
import java.util.List;

/** Side views, all columns to one scale, nipple side to the right, her head up. */
final class SilhouetteCell {
    static final int ROWS = 9;

    private SilhouetteCell() {}

    /** A device's outline with the scale that all devices shown share. */
    static Cell of(List<PointCm> outline, List<PointCm> under, List<List<PointCm>> all, String caption, int width) {
        return new Cell(ROWS + 1, canvas -> {
            int columns = Math.min(canvas.columns(), 26);
            Silhouette drawing = Silhouette.fitting(columns, ROWS, canvas.glyphs(), all);
            drawing.draw(canvas, 0, 0, columns, ROWS, outline, under, true);
            canvas.textWithin(0, ROWS, canvas.columns(), caption, Role.FAINT);
        });
    }

    static List<PointCm> points(domefold.shell.Silhouette silhouette) {
        return silhouette.points().stream().map(point -> new PointCm(point.xCm(), point.yCm())).toList();
    }
}
