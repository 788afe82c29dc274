package domefold.shell;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Beta;

/**
 * A dome standing upright, cut off level where its liquid ends: a rough stand-in for an underfilled shell on the chest.
 *
 * <p>The dome (r/a)^2 + (x/P)^n = 1 lies with its axis level. Above height y = eta a it holds the share
 * <pre>
 *   1/2 I(1 - eta^2; 1/n + 3/2, 1/2)        I: regularised incomplete beta function
 * </pre>
 * of its volume; set equal to 1 - f this gives the waterline. The slack share is the dome's area above it. Against a
 * three-dimensional mesh with its back held, the waterline lies 0.2 to 0.5 cm low and the slack share is out by up to a
 * factor of 4 near full: good for ranking, never for millimetres of ripple.
 *
 * @param waterline eta, the liquid's surface above the middle, as a share of the half width; 1 when full
 * @param slackShare share of the dome's area above it
 */
public record RigidBag(double waterline, double slackShare) {

    /** @param fillRatio V / V_full; full or fuller gives no slack */
    public static RigidBag of(double halfWidthCm, double domeCm, double exponent, double fillRatio) {
        if (fillRatio >= 1) {
            return new RigidBag(1, 0);
        }
        double eta = waterline(exponent, fillRatio);
        return new RigidBag(eta, slackShare(halfWidthCm, domeCm, exponent, eta));
    }

    /** Distance from the liquid's surface to the upper edge. */
    public double upperGapCm(double halfWidthCm) {
        return (1 - waterline) * halfWidthCm;
    }

    private static double waterline(double n, double fillRatio) {
        double missing = Math.max(0, 1 - fillRatio);
        return new BrentSolver(1e-13, 1e-12).solve(100, eta -> shareAbove(n, eta) - missing, -1, 1);
    }

    /** Share of the dome's volume above that height, eta from -1 to 1. */
    static double shareAbove(double n, double eta) {
        double half = 0.5 * Beta.regularizedBeta(Math.max(0, 1 - eta * eta), 1 / n + 1.5, 0.5);
        return eta >= 0 ? half : 1 - half;
    }

    /**
     * Area above: int 2 r acos(y / r) dS, the ring of radius r = a sin t carrying the arc above y. With
     * cos t = cos t_w cos w (t_w where the ring just reaches y) the root at the waterline goes.
     */
    private static double slackShare(double a, double p, double n, double eta) {
        DomeCurve curve = new DomeCurve(a, p, n);
        if (eta <= 0) {
            return 1 - slackShare(a, p, n, -eta + 1e-12);
        }
        double level = Math.sqrt(1 - eta * eta);
        double area = 0;
        for (int panel = 0; panel < 24; panel++) {
            double to = Math.scalb(Math.PI / 2, -panel);
            area += GaussLegendre.FIVE.integrate(v -> above(curve, eta, level, Math.PI / 2 - v), to / 2, to);
        }
        return area / curve.domeArea;
    }

    private static double above(DomeCurve curve, double eta, double level, double w) {
        double cos = level * Math.cos(w);
        double sin = Math.sqrt(1 - cos * cos);
        double turn = level * Math.sin(w) / sin;
        return 2 * curve.a * sin * Math.acos(Math.min(1, eta / sin)) * curve.speed(Math.asin(cos)) * turn;
    }
}
