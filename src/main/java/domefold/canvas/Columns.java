package domefold.canvas;

import java.util.ArrayList;
import java.util.List;

/**
 * Things side by side: one column each, rows aligned across, so that the eye compares along a line. Headings and row names
 * stay while the rows scroll together.
 *
 * @param names heading of each column
 */
public record Columns(List<Heading> names, List<Row> rows) {
    private static final int GAP = 2;
    private static final int LEAST_WIDTH = 4;

    /** Name over a column. */
    public record Heading(String text, Role role) {}

    /** Draws one entry; the canvas is as large as the entry. */
    @FunctionalInterface
    public interface Entry {
        void draw(Canvas entry);
    }

    /**
     * One line of the comparison.
     *
     * @param name what is compared
     * @param height rows it takes
     * @param entries one for each column; a missing one stays blank
     */
    public record Row(String name, int height, List<Entry> entries) {
        public Row {
            height = Math.max(1, height);
            entries = List.copyOf(entries);
        }

        /** A row of one line of text for each column. */
        public static Row ofText(String name, List<TextTable.Cell> cells) {
            List<Entry> entries = new ArrayList<>();
            for (TextTable.Cell cell : cells) {
                entries.add(entry -> entry.textWithin(0, 0, entry.columns(), cell.text(), cell.role()));
            }
            return new Row(name, 1, entries);
        }
    }

    public Columns {
        names = List.copyOf(names);
        rows = List.copyOf(rows);
    }

    /** Rows below the headings. */
    public int height() {
        return rows.stream().mapToInt(Row::height).sum();
    }

    /** The furthest that rows can scroll in that height. */
    public int lastOffset(int height) {
        return Math.max(0, height() - Math.max(0, height - 1));
    }

    /** Cells of one column, at that width in all. */
    public int columnWidth(Canvas canvas, int width) {
        int count = Math.max(1, names.size());
        return Math.max(LEAST_WIDTH, (width - gutter(canvas, width) - (count - 1) * GAP) / count);
    }

    /** How many columns of at least that width stand beside the row names; at least one. */
    public int howManyFit(Canvas canvas, int width, int leastWidth) {
        return Math.max(1, (width - gutter(canvas, width) + GAP) / (Math.max(1, leastWidth) + GAP));
    }

    /** Draws headings and the rows from {@code offset} on. */
    public void draw(Canvas canvas, int column, int row, int width, int height, int offset) {
        if (width < 1 || height < 1) {
            return;
        }
        int gutter = gutter(canvas, width);
        int each = columnWidth(canvas, width);
        Canvas whole = new Canvas(width, height(), canvas.glyphs());
        int top = 0;
        for (Row line : rows) {
            whole.textWithin(0, top, gutter - 1, line.name(), Role.LABEL);
            for (int i = 0; i < Math.min(names.size(), line.entries().size()); i++) {
                Canvas entry = new Canvas(each, line.height(), canvas.glyphs());
                line.entries().get(i).draw(entry);
                whole.draw(gutter + i * (each + GAP), top, entry);
            }
            top += line.height();
        }
        Canvas window = new Canvas(width, height - 1, canvas.glyphs());
        window.draw(0, -Math.max(0, Math.min(offset, lastOffset(height))), whole);
        for (int i = 0; i < names.size(); i++) {
            int at = gutter + i * (each + GAP);
            canvas.textWithin(column + at, row, Math.min(each, width - at), names.get(i).text(), names.get(i).role());
        }
        canvas.draw(column, row + 1, window);
    }

    /** Room for the row names and a blank; at most a third of the width. */
    private int gutter(Canvas canvas, int width) {
        int longest = rows.stream().mapToInt(row -> canvas.width(row.name())).max().orElse(0);
        return Math.min(longest + GAP, width / 3);
    }
}
