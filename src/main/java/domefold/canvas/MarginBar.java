package domefold.canvas;

/** A signed margin as a bar from zero in the middle: to the right within the limit, to the left over it. */
public final class MarginBar {
    private MarginBar() {}

    /**
     * @param width cells in all; an odd number puts zero in the middle
     * @param margin the value, in the unit of {@code reach}
     * @param reach the value that fills one side; a longer bar ends in {@code <} or {@code >}
     */
    public static void draw(Canvas canvas, int column, int row, int width, double margin, double reach, Role role) {
        int side = (width - 1) / 2;
        if (side < 0) {
            return;
        }
        int zero = column + side;
        boolean unicode = canvas.glyphs().unicode();
        if (Double.isFinite(margin) && reach > 0) {
            double cells = Math.abs(margin) / reach * side;
            int direction = margin < 0 ? -1 : 1;
            int whole = (int) Math.min(side, Math.floor(cells + 1e-9));
            for (int i = 1; i <= whole; i++) {
                canvas.put(zero + direction * i, row, canvas.glyphs().full(), role);
            }
            if (cells > side + 1e-9 && side > 0) {
                canvas.put(zero + direction * side, row, direction < 0 ? '<' : '>', role);
            } else if (cells - whole >= 0.5 && whole < side) {
                char half = direction < 0 ? '▐' : '▌';
                canvas.put(zero + direction * (whole + 1), row, unicode ? half : canvas.glyphs().full(), role);
            }
        }
        canvas.put(zero, row, canvas.glyphs().vertical(), Role.FAINT);
    }
}
