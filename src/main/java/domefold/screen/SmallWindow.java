package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import java.util.List;

/** The smallest window a screen can be drawn in, and the sentence shown in a smaller one. */
public final class SmallWindow {
    public static final int FEWEST_COLUMNS = 60;
    public static final int FEWEST_ROWS = 18;

    private SmallWindow() {}

    public static boolean isTooSmall(int columns, int rows) {
        return columns < FEWEST_COLUMNS || rows < FEWEST_ROWS;
    }

    public static String sentence(int columns, int rows) {
        return "The window is " + columns + " x " + rows + "; Domefold needs at least " + FEWEST_COLUMNS + " x "
                + FEWEST_ROWS + ".";
    }

    /** Draws the sentence, in as many lines as it needs. */
    public static void draw(Canvas canvas) {
        List<String> lines = TextWidth.wrap(sentence(canvas.columns(), canvas.rows()), canvas.columns());
        int top = Math.max(0, (canvas.rows() - lines.size()) / 2);
        for (int i = 0; i < lines.size(); i++) {
            canvas.text(0, top + i, lines.get(i), Role.CAUTION);
        }
    }
}
