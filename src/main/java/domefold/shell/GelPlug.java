package domefold.shell;

/**
 * A gel device squeezed into a long plug: a cylinder with round ends of its own area and volume,
 * <pre>
 *   V = A d / 4 - pi d^3 / 12,  d_min = 2 sqrt(A / pi) cos((pi + arccos nu) / 3),  nu = 6 sqrt(pi) V / A^(3/2)
 * </pre>
 * (smaller root; nu is the isoperimetric ratio, 1 for a sphere). Exact geometry; that a device passes as such a plug is a
 * model, and through a short opening it can pass thinner.
 */
public final class GelPlug {
    private GelPlug() {}

    /** Isoperimetric ratio, at most 1. */
    public static double isoperimetricRatio(double areaCm2, double volumeMl) {
        return 6 * Math.sqrt(Math.PI) * volumeMl / Math.pow(areaCm2, 1.5);
    }

    /** Thinnest plug of that area and volume; the area must be at least a sphere's. */
    public static double diameterCm(double areaCm2, double volumeMl) {
        double nu = isoperimetricRatio(areaCm2, volumeMl);
        if (!(nu > 0 && nu <= 1 + 1e-12)) {
            throw new IllegalArgumentException("no body of that area holds that volume");
        }
        return 2 * Math.sqrt(areaCm2 / Math.PI) * Math.cos((Math.PI + Math.acos(Math.min(1, nu))) / 3);
    }

    /** Two equal bulbs joined by a thread exist below this ratio: such a device could dumb-bell through. */
    public static boolean canDumbBell(double areaCm2, double volumeMl) {
        return isoperimetricRatio(areaCm2, volumeMl) <= Math.sqrt(0.5);
    }

    /**
     * Area of a gel device: share x (half-spheroid + base disc).
     *
     * <p>Half an oblate spheroid of half axes a, a, p (p below a): pi a^2 [1 + (1 - e^2)/e artanh e], e^2 = 1 - (p/a)^2;
     * prolate: pi a^2 [1 + p / (a e) arcsin e], e^2 = 1 - (a/p)^2.
     */
    public static double deviceAreaCm2(double widthCm, double projectionCm, double share) {
        double a = widthCm / 2;
        double p = projectionCm;
        double dome;
        if (Math.abs(p / a - 1) < 1e-9) {
            dome = 2;
        } else if (p < a) {
            double e = Math.sqrt(1 - p * p / (a * a));
            dome = 1 + (1 - e * e) / e * 0.5 * Math.log((1 + e) / (1 - e));
        } else {
            double e = Math.sqrt(1 - a * a / (p * p));
            dome = 1 + p / (a * e) * Math.asin(e);
        }
        return share * Math.PI * a * a * (dome + 1);
    }

    /** Opening that passes a plug: slit = factor x pi d / 2, the factor being chi / (1 + e). */
    public static double slitCm(double diameterCm, double factor) {
        return factor * Math.PI * diameterCm / 2;
    }
}
