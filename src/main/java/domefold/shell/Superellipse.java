package domefold.shell;

import org.apache.commons.math3.special.Gamma;

/**
 * The dome |r/a|^m + |z/P|^n = 1 over a flat base: a half base width, P height, m and n exponents.
 *
 * <p>Volume = pi a^2 P k with the form factor
 * <pre>
 *   k(m, n) = G(1 + 1/n) G(1 + 2/m) / G(1 + 1/n + 2/m)          G: gamma function
 *   dk/dn   = -(k / n^2)  [psi(1 + 1/n) - psi(1 + 1/n + 2/m)]   psi: digamma
 *   dk/dm   = -(2k / m^2) [psi(1 + 2/m) - psi(1 + 1/n + 2/m)]
 * </pre>
 * Exact, solid geometry. m = 2 is used throughout: then k = n / (n + 1) and n = k / (1 - k). m below 2 makes the apex
 * pointed, above 2 flat.
 */
public final class Superellipse {
    private Superellipse() {}

    /** Form factor k(m, n), both exponents above 0. */
    public static double formFactor(double m, double n) {
        double u = 1 / n;
        double v = 2 / m;
        return Math.exp(Gamma.logGamma(1 + u) + Gamma.logGamma(1 + v) - Gamma.logGamma(1 + u + v));
    }

    /** dk/dn, above 0. */
    public static double formFactorByN(double m, double n) {
        double sum = Gamma.digamma(1 + 1 / n + 2 / m);
        return -formFactor(m, n) / (n * n) * (Gamma.digamma(1 + 1 / n) - sum);
    }

    /** dk/dm, above 0. */
    public static double formFactorByM(double m, double n) {
        double sum = Gamma.digamma(1 + 1 / n + 2 / m);
        return -2 * formFactor(m, n) / (m * m) * (Gamma.digamma(1 + 2 / m) - sum);
    }

    /** k of a dome with a smooth apex (m = 2). */
    public static double formFactor(double n) {
        return n / (n + 1);
    }

    /** n of a dome with a smooth apex and that form factor, 0 &lt; k &lt; 1. */
    public static double exponentOf(double formFactor) {
        return formFactor / (1 - formFactor);
    }

    /** Form factor of a body: V / (pi (D/2)^2 P). */
    public static double formFactorOf(double widthCm, double projectionCm, double volumeMl) {
        return 4 * volumeMl / (Math.PI * widthCm * widthCm * projectionCm);
    }

    /** Volume of the dome. */
    public static double volumeMl(double halfWidthCm, double domeCm, double m, double n) {
        return Math.PI * halfWidthCm * halfWidthCm * domeCm * formFactor(m, n);
    }

    /** At fixed volume and form factor, how the projection answers the width: dP/dD = -2 P / D. */
    public static double projectionByWidth(double widthCm, double projectionCm) {
        return -2 * projectionCm / widthCm;
    }
}
