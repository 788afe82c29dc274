package domefold.export.pdf;

/** A sheet of paper, upright. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private static final double POINTS_PER_MM = 72 / 25.4;
    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** A length on paper, in points. */
    public static float points(double lengthMm) {
        return (float) (lengthMm * POINTS_PER_MM);
    }

    float widthPt() {
        return points(widthMm);
    }

    float heightPt() {
        return points(heightMm);
    }
}
