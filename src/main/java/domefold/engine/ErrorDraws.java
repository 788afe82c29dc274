package domefold.engine;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.special.Erf;

/**
 * Standard normal errors that are the same every time: a Sobol set, shifted digit by digit, through the inverse normal.
 *
 * <pre>
 *   u = (x XOR s + 1/2) / 2^52       x  Sobol point as a 52 bit integer     s  shift of its dimension, from the seed
 *   z = sqrt(2) erfinv(2 u - 1)
 * </pre>
 *
 * The shift keeps the set evenly spread and off the corner. Both sides use the same draws, so that exchanging the sides
 * exchanges the plan.
 */
public final class ErrorDraws {
    private static final int BITS = 52;
    private static final double SCALE = 1L << BITS;

    private final double[][] byDimension;

    private ErrorDraws(double[][] byDimension) {
        this.byDimension = byDimension;
    }

    /** That many draws in that many dimensions. */
    public static ErrorDraws of(int dimensions, int draws, long seed) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
        long[] shift = new long[dimensions];
        long state = seed;
        for (int d = 0; d < dimensions; d++) {
            state += 0x9E3779B97F4A7C15L;
            shift[d] = mix(state) >>> (Long.SIZE - BITS);
        }
        double[][] normal = new double[dimensions][draws];
        for (int i = 0; i < draws; i++) {
            double[] point = sobol.nextVector();
            for (int d = 0; d < dimensions; d++) {
                double u = (((long) (point[d] * SCALE) ^ shift[d]) + 0.5) / SCALE;
                normal[d][i] = Math.sqrt(2) * Erf.erfInv(2 * u - 1);
            }
        }
        return new ErrorDraws(normal);
    }

    public int size() {
        return byDimension[0].length;
    }

    /** Draw number {@code i} of that dimension. */
    public double z(int dimension, int i) {
        return byDimension[dimension][i];
    }

    /** The SplitMix64 finaliser (Steele, Lea and Flood 2014). */
    private static long mix(long value) {
        long z = value;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
