package domefold.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** Against the inverse error function of Commons Math 3.6.1 (Giles 2012), which is of another making. */
class NormalReferenceTest {
    private static final int SHARES = 20_000;
    private static final double RELATIVE = 4e-15;
    /** 2p - 1 is rounded by at most half of this. */
    private static final double ROUNDING = Math.ulp(1.0);

    @Test
    void everyShareGivesTheInverseErrorFunctionOfCommonsMath() {
        for (int i = 1; i < SHARES; i++) {
            double share = (double) i / SHARES;
            double expected = Math.sqrt(2) * Erf.erfInv(2 * share - 1);
            double density = Math.exp(-expected * expected / 2) / Math.sqrt(2 * Math.PI);
            assertEquals(expected, Normal.quantile(share), RELATIVE * Math.abs(expected) + ROUNDING / density, "share " + share);
        }
    }

    @Test
    void theShareBelowIsThatOfTheErrorFunctionOfCommonsMath() {
        for (double z = -40; z <= 40; z += 0.01) {
            assertEquals(0.5 * Erf.erfc(-z / Math.sqrt(2)), Normal.below(z), 2e-15, "z " + z);
        }
        assertEquals(0.5, Normal.below(0));
        assertTrue(Double.isNaN(Normal.below(Double.NaN)));
        assertEquals(0, Normal.below(Double.NEGATIVE_INFINITY));
        assertEquals(1, Normal.below(Double.POSITIVE_INFINITY));
    }

    @Test
    void aShareIsNeverLessThanNothingNorMoreThanEverything() {
        for (double z = -9; z < 9; z += 1e-3) {
            double share = Normal.below(z);
            assertTrue(share >= 0 && share <= 1, z + " gives " + share);
        }
    }

    /** Far below, where 2p - 1 has lost its digits, the error function is turned round instead. */
    @Test
    void farOutTheShareComesBack() {
        for (double share = 1e-3; share > 1e-250; share /= 7) {
            double z = Normal.quantile(share);
            assertEquals(share, 0.5 * Erf.erfc(-z / Math.sqrt(2)), 2e-12 * share, "share " + share);
        }
    }

    @Test
    void itIsOddRisesAndEndsAtInfinity() {
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < 1 << 12; i++) {
            double share = i / (double) (1 << 12);
            assertTrue(Normal.quantile(share) > before, "share " + share);
            before = Normal.quantile(share);
            assertEquals(before, 0 - Normal.quantile(1 - share));
        }
        assertEquals(Double.NEGATIVE_INFINITY, Normal.quantile(0));
        assertEquals(Double.POSITIVE_INFINITY, Normal.quantile(1));
        assertTrue(Double.isNaN(Normal.quantile(1.5)));
    }
}
