package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.Scale;
import domefold.outcome.Band;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A length or a volume drawn along a row, to a scale that every ruler on the screen shares.
 *
 * @param from value at the first column
 * @param to value at the last column
 */
record SideRuler(double from, double to) {
    static final SideRuler WIDTH_CM = new SideRuler(8, 16);
    static final SideRuler VOLUME_ML = new SideRuler(100, 600);

    private int column(int column, int width, double value) {
        return column + new Scale(from, to, width).cellWithin(value);
    }

    /** The bare scale: a dot at every step, with its figures where there is room below. */
    void scale(Canvas canvas, int column, int row, int width, double step, String unit) {
        for (double value = from; value <= to + 1e-9; value += step) {
            String figure = String.valueOf(Math.round(value));
            int at = column(column, width, value) - figure.length() / 2;
            boolean last = value > to - step / 2;
            canvas.text(last ? column + width - figure.length() - unit.length() - 1 : Math.max(column, at), row,
                    last ? figure + " " + unit : figure, Role.FAINT);
        }
    }

    /** The row's ground: a dot per cell. */
    void ground(Canvas canvas, int column, int row, int width) {
        canvas.fill(column, row, width, canvas.glyphs().dot(), Role.FAINT);
    }

    /** A span with ends. */
    void span(Canvas canvas, int column, int row, int width, double low, double high, Role role) {
        int a = column(column, width, low);
        int b = column(column, width, high);
        canvas.fill(a, row, b - a + 1, canvas.glyphs().horizontal(), role);
        canvas.put(a, row, canvas.glyphs().teeLeft(), role);
        canvas.put(b, row, canvas.glyphs().teeRight(), role);
        beyond(canvas, column, row, width, Math.min(low, high), high, role);
    }

    /** A band, shaded. */
    void band(Canvas canvas, int column, int row, int width, Optional<Band> band, Role role) {
        if (band.isPresent()) {
            int a = column(column, width, band.get().low());
            int b = column(column, width, band.get().high());
            canvas.fill(a, row, b - a + 1, canvas.glyphs().shade(), role);
            beyond(canvas, column, row, width, band.get().low(), band.get().high(), role);
        }
    }

    /** A sign at the end that a value lies beyond. */
    private void beyond(Canvas canvas, int column, int row, int width, double low, double high, Role role) {
        if (low < from) {
            canvas.put(column, row, '<', role);
        }
        if (high > to) {
            canvas.put(column + width - 1, row, '>', role);
        }
    }

    /** One mark. */
    void mark(Canvas canvas, int column, int row, int width, OptionalDouble value, int glyph, Role role) {
        if (value.isPresent()) {
            canvas.put(column(column, width, value.getAsDouble()), row, glyph, role);
            beyond(canvas, column, row, width, value.getAsDouble(), value.getAsDouble(), role);
        }
    }

    /** Small marks, one a value. */
    void ticks(Canvas canvas, int column, int row, int width, List<Double> values, Role role) {
        values.stream().filter(value -> value >= from && value <= to)
                .forEach(value -> canvas.put(column(column, width, value), row, canvas.glyphs().tick(), role));
    }
}
