package domefold.shell;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * An empty round shell as a surface that cannot stretch: a superellipse dome (m = 2) over a flat disc, joined at a sharp
 * seam, with what follows from it once: just-full volume and capacity.
 *
 * <p>Range: P/a from 0.1 to 1.6, n from 1.05 to 3. A value, safe to share.
 */
public final class ShellMetric {
    /** Bracket for the end of the taut dome. */
    static final double T_LOW = 0.05;
    static final double T_HIGH = Math.PI / 2 - 1e-5;
    private static final int STEPS = 128;

    final DomeCurve curve;
    final double fullParameter;
    final double fullBaseHead;
    final Capacity capacity;
    private final double fullVolumeMl;
    private final double fullWidthCm;

    private ShellMetric(DomeCurve curve) {
        this.curve = curve;
        BandPath path = justFull(curve);
        fullParameter = path.t1;
        fullBaseHead = path.baseHead();
        fullVolumeMl = path.volume();
        fullWidthCm = 2 * path.widest;
        capacity = Capacity.of(curve);
    }

    /**
     * @param halfWidthCm a, radius of the flat disc
     * @param domeCm P, height of the dome
     * @param exponent n of |r/a|^2 + |z/P|^n = 1
     * @throws IllegalArgumentException outside the range above
     */
    public static ShellMetric of(double halfWidthCm, double domeCm, double exponent) {
        double aspect = domeCm / halfWidthCm;
        if (!(halfWidthCm > 0 && aspect >= 0.1 && aspect <= 1.6 && exponent >= 1.05 && exponent <= 3)) {
            throw new IllegalArgumentException("a shell needs a half width above 0, a dome of 0.1 to 1.6 half widths"
                    + " and an exponent from 1.05 to 3");
        }
        return new ShellMetric(new DomeCurve(halfWidthCm, domeCm, exponent));
    }

    /** The just-full path: apex head 0. */
    static BandPath justFull(DomeCurve curve) {
        BandPath path = new BandPath(curve, Double.POSITIVE_INFINITY, STEPS);
        double t = new BrentSolver(1e-15, 1e-14).solve(100, x -> path.descend(x, 0), T_LOW, T_HIGH);
        path.descend(t, 0);
        return path;
    }

    public double halfWidthCm() {
        return curve.a;
    }

    public double domeCm() {
        return curve.p;
    }

    public double exponent() {
        return curve.n;
    }

    /** Meridian from pole to pole: down the dome to the seam and in to the middle of the base. */
    public double meridianCm() {
        return curve.meridian();
    }

    /** Meridian of the dome alone, apex to seam. */
    public double domeArcCm() {
        return curve.domeArc;
    }

    /** Area of the whole shell, base included. */
    public double areaCm2() {
        return curve.area();
    }

    /** Volume of the undeformed body; less than the just-full volume, since the seam rounds off. */
    public double metricVolumeMl() {
        return curve.volume();
    }

    /** Volume at which the top is just taut, lying, without stretch. */
    public double fullVolumeMl() {
        return fullVolumeMl;
    }

    /** Width at just full. */
    public double fullWidthCm() {
        return fullWidthCm;
    }

    /** Most it can hold without stretch. */
    public double capacityMl() {
        return capacity.volumeMl();
    }
}
