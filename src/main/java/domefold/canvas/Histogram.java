package domefold.canvas;

/** How many values fall into each cell of a scale, as one row of small columns; the fullest cell is the tallest. */
public final class Histogram {
    private static final String UNICODE = " ▁▂▃▄▅▆▇█";
    private static final String ASCII = " .:|#";

    private Histogram() {}

    public static void draw(Canvas canvas, int column, int row, Scale scale, double[] values, Role role) {
        if (scale.cells() < 1) {
            return;
        }
        int[] counts = new int[scale.cells()];
        int most = 0;
        for (double value : values) {
            if (scale.shows(value)) {
                most = Math.max(most, ++counts[scale.cell(value)]);
            }
        }
        String steps = canvas.glyphs().unicode() ? UNICODE : ASCII;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                int height = (int) Math.ceil((double) counts[i] / most * (steps.length() - 1));
                canvas.put(column + i, row, steps.charAt(height), role);
            }
        }
    }
}
