package domefold.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void lengthsHaveOneDecimalAndVolumesNone() {
        assertEquals("12.4 cm", Numbers.cm(12.44));
        assertEquals("300 mL", Numbers.ml(299.6));
        assertEquals("11.0 ± 0.6 cm", Numbers.cmWithin(11, 0.6));
        assertEquals("46 %", Numbers.percent(0.456));
    }

    @Test
    void aBandIsTwoNumbersUnlessTheyPrintAlike() {
        assertEquals("265–330 mL", Numbers.ml(new Band(265, 330)));
        assertEquals("9.5–11.0 cm", Numbers.cm(new Band(9.5, 11)));
        assertEquals("300 mL", Numbers.ml(new Band(299.8, 300.2)));
        assertEquals("−0.3 to 0.2 cm", Numbers.cm(new Band(-0.3, 0.2)));
    }

    @Test
    void marginsAreSignedAndZeroIsNot() {
        assertEquals("+0.2 cm", Numbers.marginCm(0.2));
        assertEquals("−0.3 cm", Numbers.marginCm(-0.3));
        assertEquals("0.0 cm", Numbers.marginCm(0.04));
        assertEquals("0.0 cm", Numbers.marginCm(-0.04));
        assertEquals("0.0 cm", Numbers.cm(-0.0));
        assertEquals("−25 mL", Numbers.marginMl(-25));
    }

    @Test
    void whatIsNoNumberIsADashWithoutAUnit() {
        assertEquals("–", Numbers.cm(Double.NaN));
        assertEquals("–", Numbers.marginMl(Double.POSITIVE_INFINITY));
    }

    @Test
    void smallRisksKeepADecimal() {
        assertEquals("0.4", Numbers.per100(0.4));
        assertEquals("9", Numbers.per100(9.2));
        assertEquals("0", Numbers.per100(0));
    }

    @Test
    void countsAgreeWithTheirWord() {
        assertEquals("1 device", Numbers.count(1, "device", "devices"));
        assertEquals("0 devices", Numbers.count(0, "device", "devices"));
        assertEquals("12 000", Numbers.count(12_000));
    }

    @Test
    void theMachinesLocaleChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("12.4 cm", Numbers.cm(12.4));
            assertEquals("12 000", Numbers.count(12_000));
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The digits of the JDK's own format, over numbers of every size a plan prints and halves at every place. */
    @Test
    void theDigitsAreThoseOfTheFormat() {
        Random random = new Random(20261125);
        for (int i = 0; i < 100_000; i++) {
            double value = random.nextInt(4) == 0 ? random.nextInt(20_000) / 2000.0
                    : (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 3);
            int decimals = random.nextInt(5);
            String expected = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
            assertEquals(expected, Numbers.plain(value, decimals).replace("\u2212", ""), () -> value + " to " + decimals);
        }
    }
}
