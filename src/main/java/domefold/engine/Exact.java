package domefold.engine;

/**
 * Comparisons that are strict as written and blind to the dust of binary fractions: 8.0 - 7.3 is not above 0.7, although
 * a double says so. The dust allowed is far below anything a hand can read.
 */
public final class Exact {
    /** Allowed dust, in the unit compared. */
    private static final double DUST = 1e-9;
    private static final double PER_UNIT = 1e9;

    private Exact() {}

    /** The value without its dust, for handing out; NaN stays NaN. */
    public static double clean(double value) {
        return Math.abs(value) < 1e6 ? Math.rint(value * PER_UNIT) / PER_UNIT : value;
    }

    /** True if {@code value} is strictly above {@code limit}. */
    public static boolean above(double value, double limit) {
        return value > limit + DUST;
    }

    /** True if {@code value} is strictly below {@code limit}. */
    public static boolean below(double value, double limit) {
        return value < limit - DUST;
    }
}
