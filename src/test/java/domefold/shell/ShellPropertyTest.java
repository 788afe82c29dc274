package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Thousands of shells drawn at random: solved every time, and solved to what the zones allow. */
class ShellPropertyTest {
    private static final long SEED = 20261125L;

    private static ShellMetric draw(Random random) {
        return ShellMetric.of(1, 0.35 + 0.8 * random.nextDouble(), 1.2 + 1.1 * random.nextDouble());
    }

    private static double drawFill(Random random, ShellMetric metric) {
        double head = metric.capacityMl() / metric.fullVolumeMl();
        return 0.78 + (1 + 0.97 * (head - 1) - 0.78) * random.nextDouble();
    }

    @Test
    void everyShellInTheRangeIsSolved() {
        Random random = new Random(SEED);
        for (int i = 0; i < 3000; i++) {
            ShellMetric metric = draw(random);
            double fill = drawFill(random, metric);
            String which = "seed " + SEED + ", shell " + i + ": P/a " + metric.domeCm() + ", n " + metric.exponent()
                    + ", fill " + fill;
            ShellState state = ShellSolver.atFill(metric, fill);
            assertTrue(state.hasShape(), which);
            assertEquals(0, state.closureDefect(), 1e-9, which);
            assertTrue(state.contactWidthCm() > 0 && state.contactWidthCm() < state.widthCm(), which);
            assertTrue(state.slackFraction() >= 0 && state.bandFraction() > 0 && state.crimp() > 0, which);
            assertEquals(fill < 1, state.slackFraction() > 0, which);
            double held = state.baseHeadCm() * Math.PI * state.contactWidthCm() * state.contactWidthCm() / 4;
            assertEquals(state.volumeMl(), held, 1e-9 * held, which);
        }
    }

    /** The hoop pulls or is slack, never pushes: T_h at least 0 on the taut dome, rings no longer than their rubber. */
    @Test
    void theZonesAreWhatTheyClaimToBe() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 300; i++) {
            ShellMetric metric = draw(random);
            double fill = drawFill(random, metric);
            BandPath path = new BandPath(metric.curve, Double.POSITIVE_INFINITY, 24);
            String which = "seed " + (SEED + 1) + ", shell " + i + ": P/a " + metric.domeCm() + ", n " + metric.exponent()
                    + ", fill " + fill;
            assertTrue(ShellSolver.solve(metric, path, fill * metric.fullVolumeMl()), which);
            hoopPullsOnTheDome(path, which);
            ringsAreNoLongerThanTheirRubber(path, which);
        }
    }

    private static void hoopPullsOnTheDome(BandPath path, String which) {
        DomeCurve curve = path.curve;
        double from = path.headH0 < 0 ? curve.parameterAtDepth(-path.headH0) : 0;
        double solvedEnd = path.t1;
        BandPath probe = new BandPath(curve, Double.POSITIVE_INFINITY, 4);
        for (int j = 1; j <= 20; j++) {
            double t = from + (solvedEnd - from) * j / 20;
            probe.descend(t, path.headH0);
            double r = curve.a * Math.sin(t);
            double psi = curve.slope(t);
            double meridian = probe.tension / r;
            double step = 1e-6;
            double turned = (curve.slope(t + step) - curve.slope(t - step)) / (2 * step);
            double curvature = turned / curve.speed(Math.PI / 2 - t);
            double hoop = (curve.depth(t) + path.headH0 - curvature * meridian) * r / Math.sin(psi);
            assertTrue(hoop >= -1e-6, which + ": hoop tension " + hoop + " at t " + t);
        }
    }

    private static void ringsAreNoLongerThanTheirRubber(BandPath path, String which) {
        DomeCurve curve = path.curve;
        double t = path.t1;
        for (int j = 0; j < path.nodeR.length; j++) {
            double arc = path.nodeArc[j];
            double rubber;
            if (arc >= curve.domeArc) {
                rubber = curve.meridian() - arc;
            } else {
                while (t < Math.PI / 2 - 1e-7 && curve.arcTo(t) < arc) {
                    t += Math.min(1e-3, (Math.PI / 2 - t) / 50);
                }
                rubber = curve.a * Math.sin(t);
            }
            assertTrue(path.nodeR[j] <= rubber + 1e-7, which + ": ring " + path.nodeR[j] + " on rubber " + rubber);
        }
    }

    @Test
    void moreLiquidIsNarrowerTallerAndTauter() {
        Random random = new Random(SEED + 2);
        for (int i = 0; i < 60; i++) {
            ShellMetric metric = draw(random);
            ShellState before = ShellSolver.atFill(metric, 0.79);
            double most = metric.capacityMl() / metric.fullVolumeMl();
            for (int j = 1; j <= 20; j++) {
                ShellState state = ShellSolver.atFill(metric, 0.79 + (0.9 * (most - 1) + 0.21) * j / 20);
                String which = "seed " + (SEED + 2) + ", shell " + i + ", step " + j;
                assertTrue(state.widthCm() < before.widthCm(), which);
                assertTrue(state.heightCm() > before.heightCm(), which);
                assertTrue(state.contactWidthCm() < before.contactWidthCm(), which);
                assertTrue(state.baseHeadCm() > before.baseHeadCm(), which);
                assertTrue(state.apexHeadCm() > before.apexHeadCm(), which);
                assertTrue(state.slackFraction() < before.slackFraction() || state.slackFraction() == 0, which);
                before = state;
            }
        }
    }

    /** Newton and the bracketed search are two ways to one answer; Newton is the usual one. */
    @Test
    void theSlowWayAgreesWithTheFastOne() {
        Random random = new Random(SEED + 3);
        int slowOnly = 0;
        for (int i = 0; i < 150; i++) {
            ShellMetric metric = draw(random);
            double volume = drawFill(random, metric) * metric.fullVolumeMl();
            double stiffness = i % 2 == 0 ? Double.POSITIVE_INFINITY : 25;
            String which = "seed " + (SEED + 3) + ", shell " + i;
            BandPath slow = new BandPath(metric.curve, stiffness, 24);
            assertTrue(ShellSolver.nested(metric, slow, volume), which);
            BandPath fast = new BandPath(metric.curve, stiffness, 24);
            if (!ShellSolver.newton(metric, fast, volume)) {
                slowOnly++;
                continue;
            }
            assertEquals(slow.widest, fast.widest, 1e-8, which);
            assertEquals(slow.headH0, fast.headH0, 1e-6 * (1 + Math.abs(slow.headH0)), which);
        }
        assertTrue(slowOnly <= 10, slowOnly + " of 150 needed the slow way, seed " + (SEED + 3));
    }

    @Test
    void aScaledShellIsTheSameShell() {
        ShellMetric one = ShellMetric.of(1, 0.5, 1.6);
        ShellMetric six = ShellMetric.of(6, 3, 1.6);
        for (double fill : new double[] {0.8, 1, 1.1}) {
            ShellState a = ShellSolver.atFill(one, fill);
            ShellState b = ShellSolver.atFill(six, fill);
            assertEquals(6 * a.widthCm(), b.widthCm(), 1e-8);
            assertEquals(6 * a.apexHeadCm(), b.apexHeadCm(), 1e-8);
            assertEquals(216 * a.volumeMl(), b.volumeMl(), 1e-7);
            assertEquals(a.crimp(), b.crimp(), 1e-9);
        }
    }
}
