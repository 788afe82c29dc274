package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import java.util.List;

/** The last row: what the keys do now. The most useful come first; what does not fit is left out whole. */
public final class HintLine {
    private static final int LEFT_EDGE = 1;
    private static final int BETWEEN = 3;

    private HintLine() {}

    /** Draws the hints on the last row of the canvas. */
    public static void draw(Canvas canvas, List<Screen.Hint> hints) {
        int row = canvas.rows() - 1;
        canvas.fill(0, row, canvas.columns(), ' ', Role.FAINT);
        int column = LEFT_EDGE;
        for (Screen.Hint hint : hints) {
            int width = canvas.width(hint.key()) + 1 + canvas.width(hint.meaning());
            if (column + width > canvas.columns() - LEFT_EDGE) {
                return;
            }
            column = canvas.text(column, row, hint.key(), Role.LABEL);
            column = canvas.text(column + 1, row, hint.meaning(), Role.FAINT) + BETWEEN;
        }
    }
}
