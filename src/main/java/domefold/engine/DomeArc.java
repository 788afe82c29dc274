package domefold.engine;

import domefold.basics.GaussLegendre;

/**
 * Length of a device's dome from apex to lower edge.
 *
 * <pre>
 *   (r/a)^2 + (z/P)^n = 1        a  half width, cm      P  projection, cm
 *   k = V / (pi a^2 P)           V  volume, mL          k  form factor, between 0 and 1
 *   n = k / (1 - k)
 *   arc = integral of sqrt(dr^2 + dz^2) from r = 0 to r = a
 * </pre>
 *
 * The curve is cut where (r/a)^2 = 1/2 and integrated by r above and by z below, so that neither part has a vertical
 * tangent. Exact geometry of the superellipse dome; that a device is one is an assumption. Agrees with the closed form
 * of the quarter ellipse at n = 2.
 */
public final class DomeArc {
    private static final int POINTS = 24;
    /** Power of the substitution that spreads points towards the rim, where the curve is least smooth. */
    private static final int RIM_POWER = 4;
    private static final GaussLegendre RULE = new GaussLegendre(POINTS);

    private DomeArc() {}

    /** Form factor V / (pi a^2 P); a dome has one between 0 and 1. */
    public static double formFactor(double widthCm, double projectionCm, double volumeMl) {
        double halfCm = 0.5 * widthCm;
        return volumeMl / (Math.PI * halfCm * halfCm * projectionCm);
    }

    /** Arc from apex to edge, cm; NaN where the volume does not go into a dome of that width and projection. */
    public static double cm(double widthCm, double projectionCm, double volumeMl) {
        double k = formFactor(widthCm, projectionCm, volumeMl);
        if (!(k > 0 && k < 1)) {
            return Double.NaN;
        }
        return superellipseCm(0.5 * widthCm, projectionCm, k / (1 - k));
    }

    /** Quarter meridian of (r/a)^2 + (z/P)^n = 1, cm. */
    public static double superellipseCm(double halfCm, double projectionCm, double exponent) {
        double cut = Math.sqrt(0.5);
        double upper = RULE.integrate(u -> {
            double x = cut * u;
            double slope = -2 * projectionCm / exponent / halfCm * x * Math.pow(1 - x * x, 1 / exponent - 1);
            return cut * halfCm * Math.sqrt(1 + slope * slope);
        }, 0, 1);
        double height = Math.pow(0.5, 1 / exponent);
        double lower = RULE.integrate(u -> {
            double z = height * Math.pow(u, RIM_POWER);
            double step = height * RIM_POWER * Math.pow(u, RIM_POWER - 1);
            double zToN = Math.pow(z, exponent);
            double slope = 0.5 * exponent * halfCm / projectionCm * zToN / z / Math.sqrt(1 - zToN);
            return projectionCm * step * Math.sqrt(1 + slope * slope);
        }, 0, 1);
        return upper + lower;
    }
}
