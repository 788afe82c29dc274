package domefold.shell;

import domefold.basics.GaussLegendre;
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
    private static final int PANELS = 14;

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
        return new BrentSolver(1e-12, 1e-11).solve(100, eta -> shareAbove(n, eta) - missing, fillRatio < 0.5 ? -1 : 0, fillRatio < 0.5 ? 0 : 1);
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
        if (eta <= 0) {
            return 1 - slackShare(a, p, n, Math.max(-eta, 1e-12));
        }
        return areaAbove(a, p, n, eta) / (2 * areaAbove(a, p, n, 0));
    }

    private static double areaAbove(double a, double p, double n, double eta) {
        double level = Math.sqrt(1 - eta * eta);
        GaussLegendre rule = GaussLegendre.FIVE;
        double area = 0;
        for (int panel = 0; panel < PANELS; panel++) {
            double to = Math.scalb(Math.PI / 2, -panel);
            double from = panel == PANELS - 1 ? 0 : to / 2;
            for (int i = 0; i < rule.points(); i++) {
                double rim = rule.at(i, from, to);
                double cosT = level * Math.sin(rim);
                double sinT = Math.sqrt(1 - cosT * cosT);
                double turn = level * Math.cos(rim) / sinT;
                area += rule.weight(i, from, to) * 2 * a * sinT * Math.acos(Math.min(1, eta / sinT))
                        * DomeCurve.speed(a, p, n, cosT, sinT) * turn;
            }
        }
        return area;
    }
}
