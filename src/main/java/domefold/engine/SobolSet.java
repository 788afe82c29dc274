package domefold.engine;

/**
 * Sobol points in Gray code order, as 52 bit integers: a point over 2^52 lies in the unit cube, the first one in its corner.
 *
 * <pre>
 *   v_i = m_i 2^(52-i)                                            i up to s, the degree of the dimension's polynomial
 *   v_i = v_(i-s) XOR v_(i-s) / 2^s XOR a_1 v_(i-1) XOR ... XOR a_(s-1) v_(i-s+1)
 *   x_n = x_(n-1) XOR v_c                                         c: place of the lowest zero bit of n - 1, from 1
 * </pre>
 *
 * Direction numbers of Joe and Kuo, SIAM J Sci Comput 2008;30:2635-54 (set new-joe-kuo-6, read in the copy that Commons Math
 * carries). Commons Math reads the whole of that file for each generator, which takes longer than the points of a plan; the points
 * are the same bit for bit.
 */
final class SobolSet {
    static final int BITS = 52;
    /** Of each dimension but the first: a, its coefficients as a binary number, and then m_1 to m_s. */
    private static final int[][] DIRECTIONS = {
        {0, 1}, {1, 1, 3}, {1, 1, 3, 1}, {2, 1, 1, 1}, {1, 1, 1, 3, 3}, {4, 1, 3, 5, 13}, {2, 1, 1, 5, 5, 17}, {4, 1, 1, 5, 5, 5},
        {7, 1, 1, 7, 11, 19}, {11, 1, 1, 5, 1, 1}, {13, 1, 1, 1, 3, 11}, {14, 1, 3, 5, 5, 31}, {1, 1, 3, 3, 9, 7, 49},
        {13, 1, 1, 1, 15, 21, 21}, {16, 1, 3, 1, 13, 27, 49}};
    static final int MOST_DIMENSIONS = DIRECTIONS.length + 1;

    private final long[][] direction;
    private final long[] point;
    private long number;

    /** @param dimensions 1 to {@link #MOST_DIMENSIONS} */
    SobolSet(int dimensions) {
        if (dimensions < 1 || dimensions > MOST_DIMENSIONS) {
            throw new IllegalArgumentException("a Sobol set has 1 to " + MOST_DIMENSIONS + " dimensions here, got " + dimensions);
        }
        direction = new long[dimensions][];
        point = new long[dimensions];
        for (int d = 0; d < dimensions; d++) {
            direction[d] = d == 0 ? first() : directions(DIRECTIONS[d - 1]);
        }
    }

    /** The next point; the array is the set's own and changes with the point after it. */
    long[] next() {
        if (number > 0) {
            int c = Long.numberOfTrailingZeros(~(number - 1)) + 1;
            for (int d = 0; d < point.length; d++) {
                point[d] ^= direction[d][c];
            }
        }
        number++;
        return point;
    }

    private static long[] first() {
        long[] v = new long[BITS + 1];
        for (int i = 1; i <= BITS; i++) {
            v[i] = 1L << (BITS - i);
        }
        return v;
    }

    private static long[] directions(int... polynomial) {
        int degree = polynomial.length - 1;
        long[] v = new long[BITS + 1];
        for (int i = 1; i <= BITS; i++) {
            if (i <= degree) {
                v[i] = (long) polynomial[i] << (BITS - i);
                continue;
            }
            v[i] = v[i - degree] ^ (v[i - degree] >> degree);
            for (int k = 1; k < degree; k++) {
                v[i] ^= ((polynomial[0] >> (degree - 1 - k)) & 1) * v[i - k];
            }
        }
        return v;
    }
}
