package domefold.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/**
 * The draws against what is published of Sobol sets. A digital shift keeps every one of these properties.
 *
 * <p>Sobol, USSR Comput Math Math Phys 1967;7(4):86-112; Niederreiter, Random Number Generation and Quasi-Monte Carlo
 * Methods, SIAM 1992 (nets); Bratley and Fox, ACM Trans Math Softw 1988;14:88-100 (test integrals). From memory.
 */
class ErrorDrawsReferenceTest {
    private static final int DIMENSIONS = 8;
    private static final int DRAWS = 1024;
    private static final ErrorDraws SET = ErrorDraws.of(DIMENSIONS, DRAWS, 20260304L);

    private static double uniform(int dimension, int i) {
        return 0.5 * Erf.erfc(-SET.z(dimension, i) / Math.sqrt(2));
    }

    /** The first 2^m points of every dimension lie one in each interval of length 2^-m. */
    @Test
    void everyDimensionHasOnePointInEachOfAsManyEqualIntervals() {
        for (int d = 0; d < DIMENSIONS; d++) {
            int[] hits = new int[DRAWS];
            for (int i = 0; i < DRAWS; i++) {
                hits[(int) (uniform(d, i) * DRAWS)]++;
            }
            for (int k = 0; k < DRAWS; k++) {
                assertEquals(1, hits[k], "dimension " + d + ", interval " + k);
            }
        }
    }

    /** The first two dimensions are a (0, m, 2) net: one point in each of 2^m boxes of every shape. */
    @Test
    void theFirstTwoDimensionsHaveOnePointInEachBoxOfEveryShape() {
        for (int wide = 1; wide <= DRAWS; wide *= 2) {
            int high = DRAWS / wide;
            int[] hits = new int[DRAWS];
            for (int i = 0; i < DRAWS; i++) {
                hits[(int) (uniform(0, i) * wide) * high + (int) (uniform(1, i) * high)]++;
            }
            for (int k = 0; k < DRAWS; k++) {
                assertEquals(1, hits[k], wide + " by " + high + ", box " + k);
            }
        }
    }

    /** One point in each of N intervals leaves a mean within 1/(2N) of 1/2, and a variance within 1/N of 1/12. */
    @Test
    void everyDimensionHasTheMeanAndVarianceOfTheUniform() {
        for (int d = 0; d < DIMENSIONS; d++) {
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < DRAWS; i++) {
                double u = uniform(d, i);
                sum += u;
                squares += (u - 0.5) * (u - 0.5);
            }
            assertEquals(0.5, sum / DRAWS, 0.5 / DRAWS, "mean of dimension " + d);
            assertEquals(1.0 / 12, squares / DRAWS, 1.0 / DRAWS, "variance of dimension " + d);
        }
    }

    @Test
    void theErrorsHaveTheMeanAndVarianceOfTheNormal() {
        for (int d = 0; d < DIMENSIONS; d++) {
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < DRAWS; i++) {
                sum += SET.z(d, i);
                squares += SET.z(d, i) * SET.z(d, i);
            }
            assertEquals(0, sum / DRAWS, 0.005, "mean of dimension " + d);
            assertEquals(1, squares / DRAWS, 0.01, "variance of dimension " + d);
        }
    }

    /** Both integrals are 1 in any number of dimensions; random points would be off by sqrt(((4/3)^s - 1) / N) or so. */
    @Test
    void productIntegralsOfKnownValueAreMetBetterThanRandomPointsWould() {
        for (int s = 2; s <= DIMENSIONS; s++) {
            double random = Math.sqrt((Math.pow(4.0 / 3, s) - 1) / DRAWS);
            assertEquals(1, product(s, u -> Math.abs(4 * u - 2)), random / 2, "|4u - 2| in " + s + " dimensions");
            assertEquals(1, product(s, u -> 2 * u), random / 2, "2u in " + s + " dimensions");
        }
    }

    private static double product(int s, DoubleUnaryOperator factor) {
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            double product = 1;
            for (int d = 0; d < s; d++) {
                product *= factor.applyAsDouble(uniform(d, i));
            }
            sum += product;
        }
        return sum / DRAWS;
    }

    @Test
    void moreDimensionsLeaveTheFirstOnesAsTheyWere() {
        ErrorDraws fewer = ErrorDraws.of(3, 64, 5);
        ErrorDraws more = ErrorDraws.of(8, 64, 5);
        for (int d = 0; d < 3; d++) {
            for (int i = 0; i < 64; i++) {
                assertEquals(fewer.z(d, i), more.z(d, i));
            }
        }
        assertTrue(ErrorDraws.of(3, 64, 6).z(0, 0) != fewer.z(0, 0), "another seed is another set");
    }
}
