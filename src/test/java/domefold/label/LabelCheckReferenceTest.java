package domefold.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Strings and verdicts that others published. */
class LabelCheckReferenceTest {
    /** GS1 linter's own unit tests (lint_csum.c), and GTINs from GS1's own samples. */
    @ParameterizedTest
    @ValueSource(strings = {"12345678901231", "1234567890128", "02345673", "416000336108", "123456789012345675",
            "09521101530001", "09521234543213", "12312312312333", "12312312312326", "04065093955756", "51022222233336"})
    void aPublishedNumberHoldsItsCheckDigit(String digits) {
        assertTrue(Gs1CheckDigit.holds(digits));
    }

    /** GS1 linter's own unit tests. */
    @ParameterizedTest
    @ValueSource(strings = {"12345678901232", "1234567890129", "12345673", "416000336109", "123456789012345670"})
    void aPublishedFaultIsFound(String digits) {
        assertFalse(Gs1CheckDigit.holds(digits));
    }

    /** The sample label of the US unique device identification guidance. */
    @Test
    void theAuthoritysSampleLabelIsRead() {
        DeviceLabel label = LabelReader.read("(01)51022222233336(11)141231(17)150707(10)A213B1(21)1234", 2026);
        assertEquals(DeviceLabel.Scheme.GS1, label.scheme());
        assertEquals("51022222233336", label.deviceIdentifier());
        assertEquals(LocalDate.of(2014, 12, 31), label.made().orElseThrow().date());
        assertEquals(LocalDate.of(2015, 7, 7), label.expires().orElseThrow().date());
        assertEquals(Optional.of("A213B1"), label.lot());
        assertEquals(Optional.of("1234"), label.serial());
    }

    /** A GS1 test string with an illegal month. */
    @Test
    void anIllegalMonthIsRefused() {
        Refusal refusal = assertThrows(Refusal.class, () -> LabelReader.read("(01)95012345678903(11)131313", 2026));
        assertEquals("label-date", refusal.code());
    }

    /** The first four: an independent encoder (zint 2.11.1); then two open implementations of the standard. */
    @ParameterizedTest
    @CsvSource({"+A123BJC5D6E71,G", "+A99912345,7", "+A9991234,2", "+H123PARTNO1234567890120,Z", "+BLUEUNICORN7,N",
            "+A99912345/$$52001510X3,3", "+A99912345/$$52001510X3/16D20111212/S77DEFG45,7",
            "+A99912345/$$52001510X3/16D20111212/S77DE1G45,-", "+$$52001510X3G,D"})
    void aPublishedStringEndsInItsCheckCharacter(String body, char check) {
        assertEquals(check, Hibc43.of(body));
    }

    /** A famous sample is printed with C; the rule gives H, so it serves for its structure only. */
    @Test
    void theFamousSampleIsReadOnceItsCheckCharacterIsPutRight() {
        String body = "+H123PARTNO1234567890120/$$420020216LOT123456789012345/SXYZ456789012345678/16D20130202";
        assertThrows(Refusal.class, () -> LabelReader.read(body + "C", 2026));
        DeviceLabel label = LabelReader.read(body + "H", 2026);
        assertEquals("H123 PARTNO123456789012", label.deviceIdentifier());
        assertEquals(Optional.of("LOT123456789012345"), label.lot());
        assertEquals(Optional.of("XYZ456789012345678"), label.serial());
        assertEquals(LocalDate.of(2013, 2, 2), label.made().orElseThrow().date());
        assertEquals(LocalDate.of(2020, 2, 2), label.expires().orElseThrow().date());
    }

    /** The standard's worked pair of two symbols, tied by the link character G. */
    @Test
    void aPrimaryAndASecondarySymbolAreReadTogether() {
        DeviceLabel label = LabelReader.read("*+A123BJC5D6E71G*\n*+$$52001510X3GD*", 2026);
        assertEquals("A123 BJC5D6E7", label.deviceIdentifier());
        assertEquals(Optional.of("10X3"), label.lot());
        assertEquals(LocalDate.of(2020, 1, 15), label.expires().orElseThrow().date());
    }
}
