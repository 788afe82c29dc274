package domefold.shell;

import domefold.basics.GaussLegendre;

/**
 * The dome r = a sin t, z = P (1 - cos^(2/n) t), 0 &lt;= t &lt;= pi/2, with arc length and area along its meridian
 * (superellipse, m = 2; z runs down from the apex).
 *
 * <p>dS/dt = sqrt(a^2 cos^2 t + (2P/n)^2 cos^(4/n - 2) t sin^2 t). Near the rim this goes like tau^(2/n - 1),
 * tau = pi/2 - t, so sums are kept on panels that halve towards the rim, each in four parts with five Gauss points:
 * about 1e-13 of the length, singular exponents (n above 2) included.
 */
final class DomeCurve {
    private static final int LEVELS = 20;
    private static final int PARTS = 4;

    final double a;
    final double p;
    final double n;
    /** Arc length of the dome from apex to rim. */
    final double domeArc;
    /** Area of the dome without its base. */
    final double domeArea;

    private final double power;
    private final double steep;
    private final double[] arcAtEdge = new double[LEVELS * PARTS + 1];
    private final double[] areaAtEdge = new double[LEVELS * PARTS + 1];

    DomeCurve(double halfWidthCm, double domeCm, double exponent) {
        a = halfWidthCm;
        p = domeCm;
        n = exponent;
        power = 2 / n - 1;
        steep = 2 * p / n;
        int last = LEVELS * PARTS;
        double smallest = edge(last);
        arcAtEdge[last] = p * Math.pow(smallest, 2 / n);
        areaAtEdge[last] = 2 * Math.PI * a * arcAtEdge[last];
        for (int i = last - 1; i >= 0; i--) {
            addPanel(i);
        }
        domeArc = arcAtEdge[0];
        domeArea = areaAtEdge[0];
    }

    private void addPanel(int i) {
        GaussLegendre rule = GaussLegendre.FIVE;
        double from = edge(i + 1);
        double to = edge(i);
        double arc = 0;
        double area = 0;
        for (int j = 0; j < rule.points(); j++) {
            double tau = rule.at(j, from, to);
            double part = rule.weight(j, from, to) * speed(tau);
            arc += part;
            area += 2 * Math.PI * a * Math.cos(tau) * part;
        }
        arcAtEdge[i] = arcAtEdge[i + 1] + arc;
        areaAtEdge[i] = areaAtEdge[i + 1] + area;
    }

    private static double edge(int i) {
        double top = Math.scalb(Math.PI / 2, -(i / PARTS));
        return top * (1 - 0.5 * (i % PARTS) / PARTS);
    }

    /** The first edge at or below tau. */
    private static int edgeBelow(double tau) {
        int level = Math.min(Math.getExponent(Math.PI / 2 / tau), LEVELS - 1);
        double top = Math.scalb(Math.PI / 2, -level);
        int part = Math.max(0, Math.min(PARTS - 1, (int) ((1 - tau / top) * 2 * PARTS)));
        return level * PARTS + part + 1;
    }

    /** dS/dtau, the speed along the meridian. */
    double speed(double tau) {
        return speed(a, p, n, Math.sin(tau), Math.cos(tau));
    }

    /** dS/dt where cos t and sin t are known. */
    static double speed(double a, double p, double n, double cosT, double sinT) {
        double across = a * cosT;
        double down = 2 * p / n * Math.pow(cosT, 2 / n - 1) * sinT;
        return Math.sqrt(across * across + down * down);
    }

    /** Arc length from the apex down to parameter t. */
    double arcTo(double t) {
        double tau = Math.PI / 2 - t;
        int below = edgeBelow(tau);
        double from = edge(below);
        GaussLegendre rule = GaussLegendre.FIVE;
        double sum = 0;
        for (int j = 0; j < rule.points(); j++) {
            sum += rule.weight(j, from, tau) * speed(rule.at(j, from, tau));
        }
        return domeArc - arcAtEdge[below] - sum;
    }

    /** Area from the apex down to parameter t. */
    double areaTo(double t) {
        double tau = Math.PI / 2 - t;
        int below = edgeBelow(tau);
        double from = edge(below);
        return domeArea - areaAtEdge[below]
                - GaussLegendre.FIVE.integrate(x -> 2 * Math.PI * a * Math.cos(x) * speed(x), from, tau);
    }

    /** Depth below the apex at parameter t. */
    double depth(double t) {
        return p * (1 - Math.pow(Math.cos(t), 2 / n));
    }

    /** The parameter at that depth below the apex. */
    double parameterAtDepth(double depth) {
        return Math.acos(Math.pow(Math.max(0, 1 - depth / p), n / 2));
    }

    /** Slope angle of the meridian at parameter t: 0 at the apex, pi/2 at the rim. */
    double slope(double t) {
        double c = Math.cos(t);
        return Math.atan2(steep * Math.pow(c, power) * Math.sin(t), a * c);
    }

    /** Volume under the dome down to parameter t, from the apex. */
    double capVolume(double t) {
        double h = p * Math.pow(Math.cos(t), 2 / n);
        return volumeToHeight(p) - volumeToHeight(h);
    }

    private double volumeToHeight(double h) {
        return Math.PI * a * a * (h - Math.pow(h, n + 1) / ((n + 1) * Math.pow(p, n)));
    }

    /** Volume of the dome. */
    double volume() {
        return Math.PI * a * a * p * n / (n + 1);
    }

    /** Meridian from pole to pole, base radius included. */
    double meridian() {
        return domeArc + a;
    }

    /** Whole surface, base disc included. */
    double area() {
        return domeArea + Math.PI * a * a;
    }
}
