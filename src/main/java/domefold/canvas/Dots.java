package domefold.canvas;

/**
 * Fine drawing: two dots across and four down in each cell, as braille. A cell is about twice as high as wide, so a dot is
 * about square. In ASCII there is one dot across and two down in each cell.
 *
 * <p>The second series is drawn with gaps, so that the two differ without colour.
 */
public final class Dots {
    /** Bit of the dot at column x and row y of a cell, Unicode block 2800. */
    private static final int[][] BITS = {{0x01, 0x02, 0x04, 0x40}, {0x08, 0x10, 0x20, 0x80}};

    private static final int BRAILLE = 0x2800;
    private static final int GAP_EVERY = 3;
    private static final int LONGEST_LINE = 20_000;

    private final int columns;
    private final int rows;
    private final boolean braille;
    private final int[] first;
    private final int[] second;

    public Dots(int columns, int rows, Glyphs glyphs) {
        this.columns = Math.max(0, columns);
        this.rows = Math.max(0, rows);
        this.braille = glyphs.unicode();
        this.first = new int[this.columns * this.rows];
        this.second = new int[this.columns * this.rows];
    }

    /** Dots across. */
    public int across() {
        return columns * cellAcross();
    }

    /** Dots down. */
    public int down() {
        return rows * cellDown();
    }

    private int cellAcross() {
        return braille ? 2 : 1;
    }

    private int cellDown() {
        return braille ? 4 : 2;
    }

    /** Sets one dot, counted from the top left; outside nothing happens. */
    public void dot(int x, int y, boolean other) {
        if (x < 0 || y < 0 || x >= across() || y >= down()) {
            return;
        }
        int cell = y / cellDown() * columns + x / cellAcross();
        int bit = BITS[x % cellAcross()][y % cellDown()];
        if (other) {
            second[cell] |= bit;
        } else {
            first[cell] |= bit;
        }
    }

    /** A straight line between two dots; far outside it is not drawn. */
    public void line(int x0, int y0, int x1, int y1, boolean other) {
        int steps = Math.max(Math.abs(x1 - x0), Math.abs(y1 - y0));
        if (steps > LONGEST_LINE || Math.abs(x0) > LONGEST_LINE || Math.abs(y0) > LONGEST_LINE) {
            return;
        }
        for (int i = 0; i <= steps; i++) {
            if (!other || i % GAP_EVERY != GAP_EVERY - 1) {
                double share = steps == 0 ? 0 : (double) i / steps;
                dot((int) Math.round(x0 + share * (x1 - x0)), (int) Math.round(y0 + share * (y1 - y0)), other);
            }
        }
    }

    /** Draws the dots; cells without one stay as they were. Where both series meet the first has the cell. */
    public void draw(Canvas canvas, int column, int row, Role role, Role otherRole) {
        for (int cell = 0; cell < first.length; cell++) {
            int bits = first[cell] | second[cell];
            if (bits != 0) {
                boolean other = first[cell] == 0;
                canvas.put(column + cell % columns, row + cell / columns, braille ? BRAILLE + bits
                        : ascii(bits, other), other ? otherRole : role);
            }
        }
    }

    private static int ascii(int bits, boolean other) {
        boolean upper = (bits & BITS[0][0]) != 0;
        boolean lower = (bits & BITS[0][1]) != 0;
        if (other) {
            return 'o';
        }
        return upper && lower ? ':' : upper ? '\'' : '.';
    }
}
