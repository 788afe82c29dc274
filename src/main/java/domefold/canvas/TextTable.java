package domefold.canvas;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of text: the first column stays while the others move sideways, numbers stand with their points one under the
 * other, one row may be chosen. Widths come from all rows, so that nothing jumps while the list scrolls.
 */
public record TextTable(List<Heading> headings, List<List<Cell>> rows) {
    private static final int GAP = 2;
    private static final int LEAST_CUT = 4;

    /** How a column's cells are set. */
    public enum Set {
        LEFT, RIGHT,
        /** Points one under the other; a number without one ends where the point would be. */
        POINT
    }

    /** Name and setting of a column. */
    public record Heading(String name, Set set) {}

    /** One entry. */
    public record Cell(String text, Role role) {
        public static Cell of(String text) {
            return new Cell(text, Role.BODY);
        }
    }

    /**
     * What part of the table to draw.
     *
     * @param firstRow the row at the top
     * @param chosenRow the row marked, -1 for none
     * @param firstColumn the column after the pinned one, counted from 1
     */
    public record View(int firstRow, int chosenRow, int firstColumn) {
        public static final View WHOLE = new View(0, -1, 1);
    }

    public TextTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** Rows of the table, not the heading, that fit into that height. */
    public static int visibleRows(int height) {
        return Math.max(0, height - 1);
    }

    /** Draws the heading and as many rows and columns as fit; {@code <} and {@code >} say that there are more columns. */
    public void draw(Canvas canvas, int column, int row, int width, int height, View view) {
        if (headings.isEmpty() || width < 1 || height < 1) {
            return;
        }
        int[] widths = widths(canvas);
        List<Integer> shown = columnsShown(widths, width, view);
        Canvas part = new Canvas(width, height, canvas.glyphs());
        int at = 0;
        for (int index : shown) {
            int room = Math.min(widths[index], width - at);
            drawColumn(part, at, room, index, widths[index], view);
            at += widths[index] + GAP;
        }
        if (view.firstColumn() > 1 && shown.size() > 1) {
            part.put(widths[shown.get(0)], 0, '<', Role.FAINT);
        }
        if (shown.get(shown.size() - 1) < headings.size() - 1) {
            part.put(width - 1, 0, '>', Role.FAINT);
        }
        int chosen = view.chosenRow() - view.firstRow() + 1;
        if (view.chosenRow() >= view.firstRow() && view.chosenRow() < rows.size() && chosen < height) {
            part.paint(0, chosen, width, Role.SELECTED);
        }
        canvas.draw(column, row, part);
    }

    private List<Integer> columnsShown(int[] widths, int width, View view) {
        List<Integer> shown = new ArrayList<>(List.of(0));
        int at = widths[0] + GAP;
        for (int index = Math.max(1, view.firstColumn()); index < widths.length; index++) {
            boolean fits = at + widths[index] <= width - (index < widths.length - 1 ? GAP : 0);
            if (!fits && (shown.size() > 1 || width - at < LEAST_CUT)) {
                break;
            }
            shown.add(index);
            at += widths[index] + GAP;
        }
        return shown;
    }

    private void drawColumn(Canvas part, int at, int room, int index, int full, View view) {
        Heading heading = headings.get(index);
        boolean left = heading.set() == Set.LEFT;
        put(part, at, 0, room, left ? heading.name() : pad(part, heading.name(), full), Role.LABEL);
        int before = before(part, index);
        int after = after(part, index);
        for (int line = 1; line < part.rows() && line - 1 + view.firstRow() < rows.size(); line++) {
            int rowIndex = line - 1 + view.firstRow();
            if (rowIndex >= 0) {
                Cell cell = cell(rows.get(rowIndex), index);
                String text = switch (heading.set()) {
                    case LEFT -> cell.text();
                    case RIGHT -> pad(part, cell.text(), full);
                    case POINT -> pad(part, " ".repeat(Math.max(0, before - integerWidth(part, cell.text()))) + cell.text()
                            + " ".repeat(Math.max(0, after - fractionWidth(part, cell.text()))), full);
                };
                put(part, at, line, room, text, cell.role());
            }
        }
    }

    private static void put(Canvas part, int at, int line, int room, String text, Role role) {
        part.textWithin(at, line, room, text, role);
    }

    private static String pad(Canvas canvas, String text, int width) {
        return " ".repeat(Math.max(0, width - canvas.width(text))) + text;
    }

    private int[] widths(Canvas canvas) {
        int[] widths = new int[headings.size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = canvas.width(headings.get(i).name());
            for (List<Cell> row : rows) {
                widths[i] = Math.max(widths[i], canvas.width(cell(row, i).text()));
            }
            if (headings.get(i).set() == Set.POINT) {
                widths[i] = Math.max(widths[i], before(canvas, i) + after(canvas, i));
            }
        }
        return widths;
    }

    private int before(Canvas canvas, int index) {
        return rows.stream().mapToInt(row -> integerWidth(canvas, cell(row, index).text())).max().orElse(0);
    }

    private int after(Canvas canvas, int index) {
        return rows.stream().mapToInt(row -> fractionWidth(canvas, cell(row, index).text())).max().orElse(0);
    }

    private static Cell cell(List<Cell> row, int index) {
        return index < row.size() ? row.get(index) : Cell.of("");
    }

    private static int integerWidth(Canvas canvas, String text) {
        return canvas.width(text.substring(0, integerEnd(text)));
    }

    private static int fractionWidth(Canvas canvas, String text) {
        return canvas.width(text.substring(integerEnd(text)));
    }

    /** Where the integer part of the first number ends; the end of a text without one. */
    private static int integerEnd(String text) {
        int i = 0;
        while (i < text.length() && !Character.isDigit(text.charAt(i))) {
            i++;
        }
        while (i < text.length() && Character.isDigit(text.charAt(i))) {
            i++;
        }
        return i;
    }
}
