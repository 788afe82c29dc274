package domefold.engine;


/**
 * Standard normal errors that are the same every time: a {@linkplain SobolSet Sobol set}, shifted digit by digit, through the
 * quantile of the {@linkplain Normal normal distribution}.
 *
 * <pre>
 *   u = (x XOR s + 1/2) / 2^52       x  Sobol point as a 52 bit integer     s  shift of its dimension, from the seed
 *   z = the u quantile of the standard normal distribution
 * </pre>
 *
 * The shift keeps the set evenly spread and off the corner. Both sides use the same draws, so that exchanging the sides
 * exchanges the plan.
 */
public final class ErrorDraws {
    private static final double SCALE = 1L << SobolSet.BITS;

    private final double[][] byDimension;

    private ErrorDraws(double[][] byDimension) {
        this.byDimension = byDimension;
    }

    /** That many draws in that many dimensions, at most {@link SobolSet#MOST_DIMENSIONS}. */
    public static ErrorDraws of(int dimensions, int draws, long seed) {
        SobolSet sobol = new SobolSet(dimensions);
        long[] shift = new long[dimensions];
        long state = seed;
        for (int d = 0; d < dimensions; d++) {
            state += 0x9E3779B97F4A7C15L;
            shift[d] = mix(state) >>> (Long.SIZE - SobolSet.BITS);
        }
        double[][] normal = new double[dimensions][draws];
        for (int i = 0; i < draws; i++) {
            long[] point = sobol.next();
            for (int d = 0; d < dimensions; d++) {
                double u = ((point[d] ^ shift[d]) + 0.5) / SCALE;
                normal[d][i] = Normal.quantile(u);
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
