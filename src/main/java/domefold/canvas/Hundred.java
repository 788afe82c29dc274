package domefold.canvas;

/**
 * A hundred people as a hundred signs, every sign the same size: those counted even in the low estimate, those that only
 * the high estimate adds, and the others.
 */
public final class Hundred {
    private static final int PEOPLE = 100;

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
        long sure = whole(Math.min(low, high));
        long perhaps = whole(Math.max(low, high));
        boolean unicode = canvas.glyphs().unicode();
        for (int i = 0; i < PEOPLE; i++) {
            int x = column + 2 * (i % perRow);
            int y = row + i / perRow;
            if (i < sure) {
                canvas.put(x, y, unicode ? '●' : '#', role);
            } else if (i < perhaps) {
                canvas.put(x, y, unicode ? '◐' : '+', role);
            } else {
                canvas.put(x, y, canvas.glyphs().dot(), Role.FAINT);
            }
        }
    }

    private static long whole(double per100) {
        return Double.isFinite(per100) ? Math.max(0, Math.min(PEOPLE, Math.round(per100))) : 0;
    }
}
