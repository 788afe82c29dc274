package domefold.canvas;

/**
 * A straight scale: which cell a value falls into. Everything on a screen that is to be compared by eye shares one.
 *
 * @param from value of the first cell, in whatever unit the drawing has
 * @param to value of the last cell
 * @param cells how many cells
 */
public record Scale(double from, double to, int cells) {

    /** A scale whose ends are whole steps outside every number given; others than numbers are passed over. */
    public static Scale around(double step, int cells, double... values) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (Double.isFinite(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        if (low > high) {
            return new Scale(0, step, cells);
        }
        double from = Math.floor(low / step) * step;
        double to = Math.ceil(high / step) * step;
        return new Scale(from, to > from ? to : from + step, cells);
    }

    /** Cell of a value, counted from 0; outside the scale below 0 or past the last. */
    public int cell(double value) {
        if (!Double.isFinite(value) || !(to > from) || cells < 1) {
            return -1;
        }
        return (int) Math.round(Math.max(-1e6, Math.min(1e6, (value - from) / (to - from) * (cells - 1))));
    }

    /** Cell of a value, the nearest end for one outside. */
    public int cellWithin(double value) {
        return Math.max(0, Math.min(cells - 1, cell(value)));
    }

    public boolean shows(double value) {
        int cell = cell(value);
        return cell >= 0 && cell < cells;
    }
}
