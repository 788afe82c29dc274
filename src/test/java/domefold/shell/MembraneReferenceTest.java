package domefold.shell;

import domefold.basics.GaussLegendre;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Membranes with a closed form: the Mylar balloon (Paulsen 1994), the two-disc pillow, the long tube on a table. */
class MembraneReferenceTest {
    private static final double A = Math.sqrt(Math.PI) * Gamma.gamma(1.25) / Gamma.gamma(0.75);

    @Test
    void theBalloonsIntegralsAreGammaFunctions() {
        assertEquals(1.3110287771460599, A, 1e-14);
        assertEquals(A, Capacity.moment(0, 0), 1e-14);
        assertEquals(0.5990701173677961, Capacity.moment(0, 2), 1e-14);
        assertEquals(Math.PI / 4, Capacity.moment(0, 0) * Capacity.moment(0, 2), 1e-14);
        assertEquals(A / 3, Capacity.moment(0, 4), 1e-14);
    }

    /** A dome as flat as a disc makes the shell a balloon of two discs: radius 1/A, thickness 2B/A, volume (2 pi / 3)/A^2. */
    @Test
    void aShellOfTwoDiscsFillsToAMylarBalloon() {
        double[] volumes = new double[3];
        double[] flat = {0.08, 0.04, 0.02};
        for (int i = 0; i < flat.length; i++) {
            Capacity full = Capacity.of(new DomeCurve(1, flat[i], 1.5));
            volumes[i] = full.volumeMl();
            double off = 0.2 * flat[i];
            assertEquals(2 * 0.7627597635018132, full.widthCm(), off);
            assertEquals(0.9138931620889272, full.heightCm(), off);
        }
        // The excess goes with a power of the dome's height: its limit by Aitken's rule.
        double limit = volumes[2] - (volumes[2] - volumes[1]) * (volumes[2] - volumes[1])
                / (volumes[2] - 2 * volumes[1] + volumes[0]);
        assertEquals(1.2185242161185697, limit, 2e-4);
        assertEquals(1.2185242161185697, 2 * Math.PI / 3 / (A * A), 1e-14);
    }

    /** A dome 0.02 high is nearly two flat discs of radius 1 filled on a table (one separate code): apex head, height, contact radius, volume. */
    @ParameterizedTest
    @CsvSource({".3,.61893116,.61525663,1.0928120", "1,.74581735,.46342192,1.1778821"})
    void theTwoDiscPillowLiesAsTabulated(double head, double height, double contact, double volume) {
        BandPath path = new BandPath(new DomeCurve(1, 0.02, 2), Double.POSITIVE_INFINITY, 90_000);
        double t = new BrentSolver(1e-13, 1e-13).solve(100, x -> path.descend(x, head), 0.004, 0.2);
        path.descend(t, head);
        assertEquals(height, path.baseHead() - head, 1e-3);
        assertEquals(contact, path.r, 1e-3);
        assertEquals(volume, path.volume(), 2e-3);
    }

    /**
     * A ring far from the axis is a long tube: T (1 - cos psi) = p0 z + z^2/2, height -p0 + sqrt(p0^2 + 4T), half length
     * (2T/p0) K(m = -4T/p0^2). K by the arithmetic-geometric mean, itself held against K(1/2) = Gamma(1/4)^2 / (4 sqrt pi).
     */
    @ParameterizedTest
    @CsvSource({".2,.5,1.228285685709,2.355171227044,0.980917139971", "1,1,1.236067977500,2.018905819978,0.393175148372"})
    void aWideRingIsALongTube(double p0, double tension, double height, double halfLength, double overhang) {
        assertEquals(Math.pow(Gamma.gamma(0.25), 2) / (4 * Math.sqrt(Math.PI)), completeK(0.5), 1e-13);
        assertEquals(halfLength, 2 * tension / p0 * completeK(-4 * tension / (p0 * p0)), 1e-11);
        assertEquals(height, -p0 + Math.sqrt(p0 * p0 + 4 * tension), 1e-11);
        double far = 1e7;
        BandPath path = new BandPath(new DomeCurve(1, 0.5, 2), Double.POSITIVE_INFINITY, 3000);
        path.descendFrom(far, 0, 0, tension * far, p0);
        assertEquals(height, path.z, 1e-6);
        assertEquals(halfLength, path.arc, 1e-6);
        assertEquals(overhang, path.r - far, 1e-6);
    }

    private static double completeK(double m) {
        double mean = 1;
        double root = Math.sqrt(1 - m);
        while (Math.abs(mean - root) > 1e-15 * mean) {
            double next = (mean + root) / 2;
            root = Math.sqrt(mean * root);
            mean = next;
        }
        return Math.PI / (2 * mean);
    }

    @Test
    void quadratureIsExactForPolynomialsOfItsDegree() {
        double sum = GaussLegendre.FIVE.integrate(x -> Math.pow(x, 9) + 3 * x * x, -1, 3);
        assertEquals((Math.pow(3, 10) - 1) / 10 + 28, sum, 1e-9);
        double[] weights = new double[30];
        for (int i = 0; i < 30; i++) {
            weights[i] = GaussLegendre.THIRTY.weight(i, -1, 1);
        }
        assertEquals(2, Arrays.stream(weights).sum(), 1e-13);
    }
}
