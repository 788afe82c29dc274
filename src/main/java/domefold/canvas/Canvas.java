package domefold.canvas;

import java.util.Arrays;
import java.util.List;

/**
 * A grid of cells, each a code point and a role. Drawing outside is clipped, so no window is too small to draw on.
 *
 * <p>Columns and rows count from 0 at the top left. Every character the program draws is one cell wide; text is
 * normalised to composed form first, spelled in ASCII where the glyphs are, and what cannot be shown in one cell becomes
 * {@code ?}.
 */
public final class Canvas {
    private final int columns;
    private final int rows;
    private final int[] codePoints;
    private final Role[] roles;
    private final Glyphs glyphs;
    private int cursorColumn = -1;
    private int cursorRow = -1;

    public Canvas(int columns, int rows, Glyphs glyphs) {
        this.columns = Math.max(0, columns);
        this.rows = Math.max(0, rows);
        this.glyphs = glyphs;
        this.codePoints = new int[this.columns * this.rows];
        this.roles = new Role[this.columns * this.rows];
        Arrays.fill(codePoints, ' ');
        Arrays.fill(roles, Role.BODY);
    }

    public int columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    public Glyphs glyphs() {
        return glyphs;
    }

    /** Puts one character; outside the grid nothing happens. */
    public void put(int column, int row, int codePoint, Role role) {
        if (column < 0 || row < 0 || column >= columns || row >= rows) {
            return;
        }
        codePoints[row * columns + column] = TextWidth.isSingleCell(codePoint) ? codePoint : '?';
        roles[row * columns + column] = role;
    }

    /** Writes text from that cell to the right and returns the column after its last character, clipped or not. */
    public int text(int column, int row, String text, Role role) {
        int at = column;
        String composed = TextWidth.composed(glyphs.spell(text));
        for (int i = 0; i < composed.length(); ) {
            int codePoint = composed.codePointAt(i);
            put(at++, row, codePoint, role);
            i += Character.charCount(codePoint);
        }
        return at;
    }

    /** Writes text into at most {@code width} cells, ending in an ellipsis where it is cut. */
    public int textWithin(int column, int row, int width, String text, Role role) {
        return text(column, row, TextWidth.cut(glyphs.spell(text), width, glyphs.ellipsis()), role);
    }

    /** Writes text so that it ends just before {@code columnAfter}. */
    public void textRight(int columnAfter, int row, String text, Role role) {
        text(columnAfter - width(text), row, text, role);
    }

    /** Cells the text takes on this canvas; ASCII spells some characters with two. */
    public int width(String text) {
        return TextWidth.of(glyphs.spell(text));
    }

    /** The text in lines of at most {@code width} cells as they will be drawn here, spelled for this canvas. */
    public List<String> wrap(String text, int width) {
        return TextWidth.wrap(glyphs.spell(text), width);
    }

    /** Fills a row's cells with one character. */
    public void fill(int column, int row, int width, int codePoint, Role role) {
        for (int i = 0; i < width; i++) {
            put(column + i, row, codePoint, role);
        }
    }

    /** Changes the role of cells already drawn. */
    public void paint(int column, int row, int width, Role role) {
        for (int i = 0; i < width; i++) {
            int at = column + i;
            if (at >= 0 && row >= 0 && at < columns && row < rows) {
                roles[row * columns + at] = role;
            }
        }
    }

    /** Draws another canvas with its top left at that cell, cursor included. */
    public void draw(int column, int row, Canvas part) {
        for (int r = 0; r < part.rows; r++) {
            for (int c = 0; c < part.columns; c++) {
                put(column + c, row + r, part.codePointAt(c, r), part.roleAt(c, r));
            }
        }
        if (part.cursorRow >= 0) {
            cursor(column + part.cursorColumn, row + part.cursorRow);
        }
    }

    /** Places the hardware cursor, which a screen reader follows; without a call there is none. */
    public void cursor(int column, int row) {
        if (column >= 0 && row >= 0 && column < columns && row < rows) {
            cursorColumn = column;
            cursorRow = row;
        }
    }

    /** Column of the hardware cursor, -1 without one. */
    public int cursorColumn() {
        return cursorColumn;
    }

    /** Row of the hardware cursor, -1 without one. */
    public int cursorRow() {
        return cursorRow;
    }

    public int codePointAt(int column, int row) {
        return codePoints[row * columns + column];
    }

    public Role roleAt(int column, int row) {
        return roles[row * columns + column];
    }

    /** The characters as lines, trailing blanks removed, for tests and printing. */
    public String picture() {
        StringBuilder out = new StringBuilder();
        for (int row = 0; row < rows; row++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                line.appendCodePoint(codePointAt(column, row));
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
        return out.toString();
    }
}
