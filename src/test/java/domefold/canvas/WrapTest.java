package domefold.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrapTest {
    @Test
    void aNumberKeepsItsUnitItsErrorAndTheNumberItIsTimes() {
        assertEquals(List.of("a fill of", "300 mL, then"), TextWidth.wrap("a fill of 300 mL, then", 13));
        assertEquals(List.of("ceiling", "11.0 ± 0.6 cm"), TextWidth.wrap("ceiling 11.0 ± 0.6 cm", 15));
        assertEquals(List.of("ceiling", "11.0 +- 0.6 cm"), TextWidth.wrap("ceiling 11.0 +- 0.6 cm", 15));
        assertEquals(List.of("a dome of", "12.4 x 3.7 cm;", "more"), TextWidth.wrap("a dome of 12.4 x 3.7 cm; more", 16));
    }

    @Test
    void whatNoLineCanHoldIsBrokenAllTheSame() {
        assertEquals(List.of("11.0 ±", "0.6 cm"), TextWidth.wrap("11.0 ± 0.6 cm", 8));
        assertEquals(List.of("300", "mL"), TextWidth.wrap("300 mL", 4));
    }

    @Test
    void aUnitAfterAWordIsAWordLikeAnother() {
        assertEquals(List.of("widths in", "cm here"), TextWidth.wrap("widths in cm here", 10));
    }

    @Test
    void aLongCodeIsBrokenAfterAHyphen() {
        assertEquals(List.of("saline-smooth-moderate-", "plus-280"), TextWidth.wrap("saline-smooth-moderate-plus-280", 25));
        assertEquals(List.of("a-bcdefg", "hij"), TextWidth.wrap("a-bcdefghij", 8));
    }
}
