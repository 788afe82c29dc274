package domefold.canvas;

import java.util.ArrayList;
import java.util.List;

/**
 * A horizontal ruler of three rows: labels above, the marks, the scale below. Lengths and volumes alike; a screen gives
 * all its rulers of one kind the same {@link Scale}.
 *
 * @param step distance of the dots on the scale
 * @param firstAndLast what stands at the two ends of the scale, for example {@code 8 cm} and {@code 16 cm}
 * @param marks drawn in this order, later over earlier; where labels compete the later gives way
 */
public record Ruler(Scale scale, double step, List<String> firstAndLast, List<Mark> marks) {
    public static final int ROWS = 3;
    private static final int MOST_DOTS = 200;

    /** What a ruler shows. */
    public sealed interface Mark {}

    /** A measured length from one value to another, with ends: {@code ├────┤}. */
    public record Span(double low, double high, String label, Role role) implements Mark {}

    /** A band of uncertainty or choice, shaded. */
    public record Shade(double low, double high, String label, Role role) implements Mark {}

    /** One value: a ceiling, a wish, a device. */
    public record Tick(double at, String label, Role role) implements Mark {}

    public Ruler {
        firstAndLast = List.copyOf(firstAndLast);
        marks = List.copyOf(marks);
    }

    public void draw(Canvas canvas, int column, int row) {
        List<Labels.Label> labels = new ArrayList<>();
        for (Mark mark : marks) {
            drawMark(canvas, column, row + 1, mark, labels);
        }
        Labels.draw(canvas, column, row, scale.cells(), labels);
        drawScale(canvas, column, row + 2);
    }

    /** The bottom row alone, for several rulers over one scale. */
    public void drawScale(Canvas canvas, int column, int row) {
        Glyphs glyphs = canvas.glyphs();
        double count = step > 0 ? (scale.to() - scale.from()) / step : 0;
        for (int i = 0; i <= Math.min(MOST_DOTS, Math.floor(count + 1e-9)); i++) {
            double value = scale.from() + i * step;
            if (scale.shows(value)) {
                canvas.put(column + scale.cell(value), row, glyphs.dot(), Role.FAINT);
            }
        }
        List<Labels.Label> ends = new ArrayList<>();
        for (int i = 0; i < Math.min(2, firstAndLast.size()); i++) {
            ends.add(new Labels.Label(i == 0 ? -scale.cells() : 2 * scale.cells(), firstAndLast.get(i), Role.FAINT));
        }
        Labels.draw(canvas, column, row, scale.cells(), ends);
    }

    private void drawMark(Canvas canvas, int column, int row, Mark mark, List<Labels.Label> labels) {
        Glyphs glyphs = canvas.glyphs();
        if (mark instanceof Span span && touches(span.low(), span.high())) {
            int low = scale.cellWithin(span.low());
            int high = scale.cellWithin(span.high());
            canvas.fill(column + low, row, high - low + 1, glyphs.horizontal(), span.role());
            end(canvas, column + low, row, span.low(), glyphs.teeLeft(), span.role());
            end(canvas, column + high, row, span.high(), glyphs.teeRight(), span.role());
            labels.add(new Labels.Label((low + high) / 2, span.label(), span.role()));
        } else if (mark instanceof Shade shade && touches(shade.low(), shade.high())) {
            int low = scale.cellWithin(shade.low());
            int high = scale.cellWithin(shade.high());
            canvas.fill(column + low, row, high - low + 1, glyphs.shade(), shade.role());
            labels.add(new Labels.Label((low + high) / 2, shade.label(), shade.role()));
        } else if (mark instanceof Tick tick && Double.isFinite(tick.at())) {
            int cell = scale.cellWithin(tick.at());
            canvas.put(column + cell, row, tickGlyph(glyphs, tick.at()), tick.role());
            labels.add(new Labels.Label(cell, tick.label(), tick.role()));
        }
    }

    /** A span that runs out of the scale has no end there. */
    private void end(Canvas canvas, int column, int row, double value, char glyph, Role role) {
        if (scale.shows(value)) {
            canvas.put(column, row, glyph, role);
        }
    }

    private char tickGlyph(Glyphs glyphs, double value) {
        if (value < scale.from() && !scale.shows(value)) {
            return '<';
        }
        return value > scale.to() && !scale.shows(value) ? '>' : glyphs.tick();
    }

    private boolean touches(double low, double high) {
        return Double.isFinite(low) && Double.isFinite(high) && low <= high && scale.cell(high) >= 0
                && scale.cell(low) < scale.cells() && scale.cells() > 0;
    }
}
