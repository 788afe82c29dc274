package domefold.shell;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * What becomes of a shell with a given volume of liquid in it, lying on a table: tension-field membrane, no bending, no
 * friction, weightless shell.
 *
 * <p>Unknowns are the end of the taut dome t1 and the apex head H0; equations are closure of the meridian and the volume
 * V = p_base pi r_c^2. Newton from a guess; where that fails, t1 inside H0, both bracketed. Shapes are good to about
 * 3 mm on a real device, pressures to an order of magnitude: the solver is far more exact than its assumptions.
 */
public final class ShellSolver {
    private static final int COARSE = 24;
    private static final int FINE = 128;
    /** Defect at which the coarse path is left for the fine one, and at which the fine one is done. */
    private static final double NEAR = 1e-6;
    private static final double DONE = 1e-11;
    /** Heads beyond this many half widths count as out of reach. */
    private static final double FARTHEST = 1e7;
    /** Growth of the taut dome beyond which the small-stretch correction means nothing. */
    private static final double MOST_GROWTH = 1.3;

    private ShellSolver() {}

    /** A shell that does not stretch, at V / V_full. */
    public static ShellState atFill(ShellMetric metric, double fillRatio) {
        return atVolume(metric, fillRatio * metric.fullVolumeMl(), Double.POSITIVE_INFINITY);
    }

    /** A shell of stiffness K = E t / (rho g) in cm^2, at V / V_full (V_full without stretch). */
    public static ShellState atFill(ShellMetric metric, double fillRatio, double stiffnessCm2) {
        return atVolume(metric, fillRatio * metric.fullVolumeMl(), stiffnessCm2);
    }

    /** A shell that does not stretch. */
    public static ShellState atVolume(ShellMetric metric, double volumeMl) {
        return atVolume(metric, volumeMl, Double.POSITIVE_INFINITY);
    }

    /**
     * A shell of stiffness K; positive infinity for one that does not stretch.
     *
     * @throws IllegalArgumentException for a volume below {@link #LEAST_FILL} of the full one, or a stiffness not above 0
     */
    public static ShellState atVolume(ShellMetric metric, double volumeMl, double stiffnessCm2) {
        check(metric, volumeMl, stiffnessCm2);
        if (Double.isInfinite(stiffnessCm2) && volumeMl >= metric.capacityMl()) {
            return ShellState.beyond(volumeMl, metric.fullVolumeMl(), metric.capacityMl());
        }
        BandPath path = new BandPath(metric.curve, stiffnessCm2, COARSE);
        return solve(metric, path, volumeMl) ? state(metric, path, volumeMl)
                : ShellState.beyond(volumeMl, metric.fullVolumeMl(), metric.capacityMl());
    }

    /** Below this fill ratio the model is not asked. */
    public static final double LEAST_FILL = 0.5;

    private static void check(ShellMetric metric, double volumeMl, double stiffnessCm2) {
        if (!(volumeMl >= LEAST_FILL * metric.fullVolumeMl() && volumeMl < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the shell is solved from half full upward");
        }
        if (!(stiffnessCm2 > 0)) {
            throw new IllegalArgumentException("a stiffness is above 0");
        }
    }

    /** Leaves the path at the solution, nodes kept; false where there is none within reach. */
    static boolean solve(ShellMetric metric, BandPath path, double volumeMl) {
        return newton(metric, path, volumeMl) || nested(metric, path, volumeMl);
    }

    /** Newton on coarse paths, then steps with the last slopes on a fine one. */
    static boolean newton(ShellMetric metric, BandPath path, double volumeMl) {
        Guess guess = Guess.of(metric, volumeMl, path.stiffness);
        Slopes slopes = new Slopes(path, volumeMl, guess.parameter(), guess.head());
        path.inSteps(COARSE);
        for (int round = 0; ; round++) {
            double size = slopes.measure();
            if (!path.reachedTable || !(size < 0.5) || round > 14) {
                return false;
            }
            if (size < NEAR) {
                break;
            }
            if (!slopes.turn() || !slopes.step()) {
                return false;
            }
        }
        path.inSteps(FINE);
        path.keepNodes();
        for (int round = 0; round < 6; round++) {
            if (slopes.measure() < DONE) {
                return path.growth < MOST_GROWTH;
            }
            if (!slopes.step()) {
                return false;
            }
        }
        return false;
    }

    /** The path closed at that head; false where no taut dome closes it. */
    static boolean close(BandPath path, double head) {
        double waterline = head < 0 ? path.curve.parameterAtDepth(-head) : 0;
        double low = Math.max(ShellMetric.T_LOW, waterline + 1e-6);
        try {
            double t = new BrentSolver(1e-15, 1e-14)
                    .solve(200, x -> path.descend(x, head), low, ShellMetric.T_HIGH);
            path.descend(t, head);
            return path.reachedTable;
        } catch (MathIllegalArgumentException | MathIllegalStateException noRoot) {
            return false;
        }
    }

    /** Head outside, end of the dome inside, both bracketed. */
    static boolean nested(ShellMetric metric, BandPath path, double volumeMl) {
        double a = metric.curve.a;
        path.inSteps(FINE);
        path.keepNodes();
        double low = -0.3 * metric.curve.p;
        while (!(close(path, low) && path.volume() < volumeMl)) {
            low = 0.7 * low - 0.3 * metric.curve.p;
            if (low < -0.999 * metric.curve.p) {
                return false;
            }
        }
        double high = 0.3 * a;
        while (!(close(path, high) && path.volume() > volumeMl)) {
            high *= 3;
            if (high > FARTHEST * a) {
                return false;
            }
        }
        try {
            double head = new BrentSolver(1e-15, 1e-13 * a).solve(300, h -> {
                close(path, h);
                return path.volume() / volumeMl - 1;
            }, low, high);
            return close(path, head) && path.growth < MOST_GROWTH;
        } catch (MathIllegalArgumentException | MathIllegalStateException noRoot) {
            return false;
        }
    }

    private static ShellState state(ShellMetric metric, BandPath path, double volumeMl) {
        DomeCurve curve = metric.curve;
        double head = path.headH0;
        double contact = path.r;
        double slack = 0;
        double slackExcess = 0;
        if (head < 0) {
            double waterline = curve.parameterAtDepth(-head / path.growth);
            double ring = curve.a * Math.sin(waterline);
            slack = curve.areaTo(waterline);
            slackExcess = slack - Math.PI * ring * ring;
        }
        double band = curve.area() - curve.areaTo(path.t1) - Math.PI * contact * contact;
        double crimp = slackExcess + band - path.bandArea;
        ShellState.Kind kind = kind(head, curve.a);
        return new ShellState(kind, volumeMl / metric.fullVolumeMl(), volumeMl, metric.fullVolumeMl(),
                metric.capacityMl(), kind == ShellState.Kind.FULL ? 0 : head, path.baseHead(), 2 * path.widest, path.baseHead() - Math.max(head, 0),
                2 * contact, slack / curve.area(), band / curve.area(), crimp / curve.area(),
                1 - path.ringAt(curve.domeArc) / curve.a, path.closure);
    }

    private static ShellState.Kind kind(double head, double a) {
        if (Math.abs(head) <= 1e-9 * a) {
            return ShellState.Kind.FULL;
        }
        return head < 0 ? ShellState.Kind.SLACK : ShellState.Kind.PRESSURISED;
    }
}
