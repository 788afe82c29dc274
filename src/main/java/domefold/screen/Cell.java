package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Columns;
import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * One entry of the side-by-side.
 *
 * @param height rows it needs
 * @param painter draws it onto a canvas of its own size
 */
record Cell(int height, Consumer<Canvas> painter) {

    /** Text wrapped to the column. */
    static Cell text(String text, Role role, int width) {
        int height = Math.max(TextWidth.wrap(text, width).size(), TextWidth.wrap(Glyphs.ASCII.spell(text), width).size());
        return new Cell(height, canvas -> {
            List<String> lines = canvas.wrap(text, width);
            for (int i = 0; i < lines.size(); i++) {
                canvas.textWithin(0, i, canvas.columns(), lines.get(i), role);
            }
        });
    }

    /** Several texts under each other. */
    static Cell texts(List<String> texts, Role role, int width) {
        return text(String.join("\n", texts), role, width);
    }

    /** A row across all columns, one cell an item. */
    static <T> Columns.Row row(String name, List<T> items, Function<T, Cell> cell) {
        List<Cell> cells = items.stream().map(cell).toList();
        List<Columns.Entry> entries = new ArrayList<>();
        cells.forEach(one -> entries.add(one.painter()::accept));
        return new Columns.Row(name, cells.stream().mapToInt(Cell::height).max().orElse(1), entries);
    }
}
