package domefold.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class DammCodeReferenceTest {
    /** 572 with check digit 4 is the worked example in common use; 20260042 with 9 was computed by another implementation. */
    @Test
    void theKnownVectorsAgree() {
        assertEquals(4, DammCode.digit("572"));
        assertEquals(9, DammCode.digit("20260042"));
        assertTrue(DammCode.agrees("5724"));
        assertTrue(DammCode.agrees("202600429"));
    }

    /** What the code promises: no single wrong digit and no swap of neighbours passes. Tried on every four-digit number. */
    @Test
    void everyWrongDigitAndEverySwapOfNeighboursIsNoticed() {
        for (int number = 0; number < 10_000; number++) {
            String stem = String.format(Locale.ROOT, "%04d", number);
            String whole = stem + DammCode.digit(stem);
            assertTrue(DammCode.agrees(whole), whole);
            for (int i = 0; i < whole.length(); i++) {
                for (char wrong = '0'; wrong <= '9'; wrong++) {
                    String other = whole.substring(0, i) + wrong + whole.substring(i + 1);
                    assertEquals(other.equals(whole), DammCode.agrees(other), whole + " typed as " + other);
                }
                if (i > 0 && whole.charAt(i) != whole.charAt(i - 1)) {
                    String swapped = whole.substring(0, i - 1) + whole.charAt(i) + whole.charAt(i - 1) + whole.substring(i + 1);
                    assertFalse(DammCode.agrees(swapped), whole + " typed as " + swapped);
                }
            }
        }
    }

    @Test
    void onlyDigitsHaveOne() {
        assertThrows(IllegalArgumentException.class, () -> DammCode.digit("57a"));
    }
}
