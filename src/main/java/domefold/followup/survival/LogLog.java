package domefold.followup.survival;

import domefold.outcome.Band;

/**
 * The scale on which a Weibull is a straight line and intervals of a share are nearly symmetric: y(p) = ln(-ln(1-p)).
 *
 * <p>From a 95 % interval SE = [y(hi) - y(lo)] / 3.92, 3.92 being twice 1.96 (complementary log-log interval, a definition).
 */
public final class LogLog {
    static final double Z = 1.96;

    private LogLog() {}

    /** y(p) for a share strictly between 0 and 1. */
    public static double of(double share) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("ln(-ln(1-p)) needs a share between 0 and 1, got " + share);
        }
        return Math.log(-Math.log1p(-share));
    }

    /** The share at y. */
    public static double share(double y) {
        return -Math.expm1(-Math.exp(y));
    }

    /** Standard error of y from the ends of a 95 % interval of the share. */
    public static double standardError(Band share) {
        return (of(share.high()) - of(share.low())) / (2 * Z);
    }

    /** The 95 % interval of a share from its standard error on this scale. */
    public static Band interval(double share, double standardError) {
        return new Band(share(of(share) - Z * standardError), share(of(share) + Z * standardError));
    }
}
