package domefold.followup.survival;

/**
 * F(t) = 1 - exp(-(t/s)^k), the share that has failed by time t.
 *
 * @param scale s, in the unit of the times it was fitted to; greater than 0
 * @param shape k; below 1 the hazard falls with time, above 1 it rises
 */
public record Weibull(double scale, double shape) {
    public Weibull {
        if (!(scale > 0 && shape > 0 && Double.isFinite(scale) && Double.isFinite(shape))) {
            throw new IllegalArgumentException("a Weibull has a scale and a shape above 0, got " + scale + " and " + shape);
        }
    }

    /** Share failed by {@code time}, 0 to 1. */
    public double cumulative(double time) {
        return time <= 0 ? 0 : -Math.expm1(-hazardSum(time));
    }

    /** Share still intact at {@code time}. */
    public double survival(double time) {
        return time <= 0 ? 1 : Math.exp(-hazardSum(time));
    }

    /** The time by which a share {@code p} has failed: s (-ln(1-p))^(1/k). */
    public double quantile(double p) {
        return scale * Math.pow(-Math.log1p(-p), 1 / shape);
    }

    private double hazardSum(double time) {
        return Math.pow(time / scale, shape);
    }

    /** The curve through two points (time, share failed), exactly. */
    public static Weibull through(double time1, double share1, double time2, double share2) {
        double shape = (LogLog.of(share2) - LogLog.of(share1)) / Math.log(time2 / time1);
        return new Weibull(Math.exp(Math.log(time1) - LogLog.of(share1) / shape), shape);
    }
}
