package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import java.util.ArrayList;
import java.util.List;

/** The last row: what the keys do now. The most useful come first; what does not fit is left out whole, F1 last. */
public final class HintLine {
    private static final int LEFT_EDGE = 1;
    private static final int BETWEEN = 3;

    private HintLine() {}

    /** Draws the hints on the last row of the canvas. */
    public static void draw(Canvas canvas, List<Screen.Hint> hints) {
        int row = canvas.rows() - 1;
        canvas.fill(0, row, canvas.columns(), ' ', Role.FAINT);
        int column = LEFT_EDGE;
        for (Screen.Hint hint : fitting(canvas, hints)) {
            column = canvas.text(column, row, hint.key(), Role.LABEL);
            column = canvas.text(column + 1, row, hint.meaning(), Role.FAINT) + BETWEEN;
        }
    }

    /** From the first as many as there is room for; the way to all keys is the last to be left out. */
    private static List<Screen.Hint> fitting(Canvas canvas, List<Screen.Hint> hints) {
        List<Screen.Hint> kept = new ArrayList<>(hints);
        while (!kept.isEmpty() && width(canvas, kept) > canvas.columns() - 2 * LEFT_EDGE) {
            int last = kept.size() - 1;
            kept.remove(last > 0 && kept.get(last).key().equals("F1") ? last - 1 : last);
        }
        return kept;
    }

    private static int width(Canvas canvas, List<Screen.Hint> hints) {
        return hints.stream().mapToInt(hint -> canvas.width(hint.key()) + 1 + canvas.width(hint.meaning()) + BETWEEN).sum() - BETWEEN;
    }
}
