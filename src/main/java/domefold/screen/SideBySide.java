package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import java.util.ArrayList;
import java.util.List;

/** Blocks in columns whose rows stand level, so that the eye compares along a line; all scroll together. */
final class SideBySide {
    private SideBySide() {}

    /** Draws a cell's content; row 0 is the cell's first. */
    interface Painter {
        void paint(Canvas canvas, int column, int row, int width);
    }

    /**
     * One cell.
     *
     * @param height rows it needs
     * @param painter what it draws
     */
    record Cell(int height, Painter painter) {
        /** Text wrapped to the column. */
        static Cell text(String text, Role role, int width) {
            List<String> lines = TextWidth.wrap(text, width);
            return new Cell(lines.size(), (canvas, column, row, w) -> {
                for (int i = 0; i < lines.size(); i++) {
                    canvas.textWithin(column, row + i, w, lines.get(i), role);
                }
            });
        }

        /** Several texts under each other. */
        static Cell texts(List<String> texts, Role role, int width) {
            return text(String.join("\n", texts), role, width);
        }
    }

    /**
     * One row across all columns.
     *
     * @param label its name at the left; empty where it goes on
     * @param cells one a column
     */
    record Row(String label, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }

        int height() {
            return cells.stream().mapToInt(Cell::height).max().orElse(1);
        }
    }

    /** Draws the rows from {@code scroll} on and returns how many rows there are in all. */
    static int draw(Canvas canvas, int column, int row, int width, int height, int labelWidth, int columnWidth,
            List<Row> rows, int scroll) {
        int total = rows.stream().mapToInt(Row::height).sum();
        Canvas page = new Canvas(width, Math.max(total, height), canvas.glyphs());
        int at = 0;
        for (Row line : rows) {
            page.textWithin(0, at, labelWidth - 1, line.label(), Role.LABEL);
            for (int i = 0; i < line.cells().size(); i++) {
                line.cells().get(i).painter().paint(page, labelWidth + i * columnWidth, at, columnWidth - 2);
            }
            at += line.height();
        }
        int from = Math.max(0, Math.min(scroll, total - height));
        for (int r = 0; r < height && from + r < page.rows(); r++) {
            for (int c = 0; c < width; c++) {
                canvas.put(column + c, row + r, page.codePointAt(c, from + r), page.roleAt(c, from + r));
            }
        }
        return total;
    }

    /** A cell that is empty. */
    static Cell blank() {
        return new Cell(1, (canvas, column, row, width) -> { });
    }

    /** One cell a device. */
    static <T> Row row(String label, List<T> items, java.util.function.Function<T, Cell> cell) {
        List<Cell> cells = new ArrayList<>();
        items.forEach(item -> cells.add(cell.apply(item)));
        return new Row(label, cells);
    }
}
