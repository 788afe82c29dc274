package domefold.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

/** Against the generator of Commons Math 3.6.1, which reads the published direction numbers from its own copy of their file. */
class SobolSetReferenceTest {
    private static final int POINTS = 5000;

    @Test
    void everyPointIsThatOfCommonsMathBitForBit() {
        SobolSequenceGenerator theirs = new SobolSequenceGenerator(SobolSet.MOST_DIMENSIONS);
        SobolSet ours = new SobolSet(SobolSet.MOST_DIMENSIONS);
        for (int i = 0; i < POINTS; i++) {
            double[] expected = theirs.nextVector();
            long[] point = ours.next();
            for (int d = 0; d < SobolSet.MOST_DIMENSIONS; d++) {
                assertEquals((long) (expected[d] * (1L << SobolSet.BITS)), point[d], "point " + i + ", dimension " + d);
            }
        }
    }

    @Test
    void moreDimensionsThanThereAreDirectionNumbersForAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SobolSet(SobolSet.MOST_DIMENSIONS + 1));
        assertThrows(IllegalArgumentException.class, () -> new SobolSet(0));
    }
}
