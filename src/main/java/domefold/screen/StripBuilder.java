package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Puts a page of strips together; wraps every text to the cells it has, so that nothing is cut. */
final class StripBuilder {
    private static final int WIDEST_TEXT = 110;
    private static final int GAP = 2;

    private final Glyphs glyphs;
    private final int width;
    private final int each;
    private final List<Strip> strips = new ArrayList<>();

    StripBuilder(Glyphs glyphs, int width, int each) {
        this.glyphs = glyphs;
        this.width = width;
        this.each = each;
    }

    StripPage page() {
        return new StripPage(strips, width, each);
    }

    int each() {
        return each;
    }

    /** Begins a part, a blank line before it. */
    void part(String title) {
        if (!strips.isEmpty()) {
            blank();
        }
        strips.add(new Strip(title, List.of(), Role.TITLE, List.of(), true));
    }

    void blank() {
        strips.add(new Strip("", List.of(""), Role.BODY, List.of(), true));
    }

    /** A paragraph over the whole width. */
    void say(String text, Role role) {
        strips.add(new Strip("", lines(text, Math.min(width, WIDEST_TEXT)), role, List.of(), true));
    }

    /** A paragraph with its further lines indented below the first. */
    void item(String mark, String text, Role role) {
        int room = Math.min(width, WIDEST_TEXT) - TextWidth.of(mark);
        List<String> out = new ArrayList<>();
        for (String line : lines(text, room)) {
            out.add((out.isEmpty() ? mark : " ".repeat(TextWidth.of(mark))) + line);
        }
        strips.add(new Strip("", out, role, List.of(), true));
    }

    /** A value with its source, on one line where both have room. */
    void sourced(String mark, String value, Role role, String source) {
        int at = TextWidth.of(mark);
        String spelled = glyphs.spell(mark + value);
        String from = glyphs.spell(source);
        if (TextWidth.of(spelled) + GAP + TextWidth.of(from) <= width) {
            Cell line = new Cell(1, canvas -> canvas.text(canvas.text(0, 0, spelled, role) + GAP, 0, from, Role.FAINT));
            strips.add(new Strip("", List.of(), role, List.of(line), true));
            return;
        }
        item(mark, value, role);
        if (!source.isEmpty()) {
            item(" ".repeat(at), source, Role.FAINT);
        }
    }

    /** A heading with one cell a device below it, then a blank line. */
    <T> void across(String heading, List<T> items, Function<T, Cell> cell) {
        strips.add(new Strip("", lines(heading, width), Role.LABEL, items.stream().map(cell).toList(), false));
        blank();
    }

    /** Text wrapped to a device's column. */
    Cell text(String text, Role role) {
        return painted(lines(text, each), role);
    }

    /** A drawing of a device's column. */
    Cell drawing(int rows, Consumer<Canvas> painter) {
        return new Cell(rows, painter);
    }

    /** Cells under each other. */
    static Cell stack(List<Cell> cells) {
        int height = cells.stream().mapToInt(Cell::height).sum();
        return new Cell(height, canvas -> {
            int at = 0;
            for (Cell cell : cells) {
                Canvas part = new Canvas(canvas.columns(), cell.height(), canvas.glyphs());
                cell.painter().accept(part);
                canvas.draw(0, at, part);
                at += cell.height();
            }
        });
    }

    private static Cell painted(List<String> lines, Role role) {
        return new Cell(lines.size(), canvas -> {
            for (int i = 0; i < lines.size(); i++) {
                canvas.textWithin(0, i, canvas.columns(), lines.get(i), role);
            }
        });
    }

    private List<String> lines(String text, int room) {
        return TextWidth.wrap(glyphs.spell(text), room);
    }
}
