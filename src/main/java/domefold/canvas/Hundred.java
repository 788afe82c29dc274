package domefold.canvas;

/**
 * A hundred people as a hundred signs, every sign the same size: those counted even in the low estimate, those that only
 * the high estimate adds, and the others.
 */
public final class Hundred {
    /** Cells of {@link #drawSmall}. */
    public static final int SMALL_WIDTH = 29;
    /** Rows of {@link #drawSmall}. */
    public static final int SMALL_ROWS = 4;

    private static final int PEOPLE = 100;
    private static final int SMALL_PER_ROW = 25;
    private static final int GROUP = 5;

    private Hundred() {}

    /**
     * Draws rows of {@code perRow} people, 10 or 20 or another divisor of 100, each two cells wide.
     *
     * @param low people of a hundred in the low estimate, rounded to whole ones
     * @param high in the high estimate
     */
    public static void draw(Canvas canvas, int column, int row, int perRow, double low, double high, Role role) {
        if (perRow < 1 || PEOPLE % perRow != 0) {
            throw new IllegalArgumentException("rows of " + perRow + " do not make a hundred");
        }
        for (int i = 0; i < PEOPLE; i++) {
            person(canvas, column + 2 * (i % perRow), row + i / perRow, i, low, high, role);
        }
    }

    /**
     * Draws four rows of twenty-five people in groups of five, one cell each, {@link #SMALL_WIDTH} cells wide: for columns
     * that stand side by side.
     */
    public static void drawSmall(Canvas canvas, int column, int row, double low, double high, Role role) {
        for (int i = 0; i < PEOPLE; i++) {
            int place = i % SMALL_PER_ROW;
            person(canvas, column + place + place / GROUP, row + i / SMALL_PER_ROW, i, low, high, role);
        }
    }

    private static void person(Canvas canvas, int x, int y, int index, double low, double high, Role role) {
        boolean unicode = canvas.glyphs().unicode();
        if (index < whole(Math.min(low, high))) {
            canvas.put(x, y, unicode ? '●' : '#', role);
        } else if (index < whole(Math.max(low, high))) {
            canvas.put(x, y, unicode ? '◐' : '+', role);
        } else {
            canvas.put(x, y, canvas.glyphs().dot(), Role.FAINT);
        }
    }

    private static long whole(double per100) {
        return Double.isFinite(per100) ? Math.max(0, Math.min(PEOPLE, Math.round(per100))) : 0;
    }
}
