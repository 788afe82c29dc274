package domefold.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelReaderTest {
    private static final char GS = Gs1Elements.SEPARATOR;
    private static final String GTIN = "09521101530001";

    @Test
    void aScanReadsAsItsPrintedFormDoes() {
        DeviceLabel printed = LabelReader.read("(01)" + GTIN + "(17)310704(10)A213B1(21)1234(30)2(240)GEL-290", 2026);
        DeviceLabel scanned = LabelReader.read(
                "]d201" + GTIN + "1731070410A213B1" + GS + "211234" + GS + "302" + GS + "240GEL-290", 2026);
        assertEquals(printed.lot(), scanned.lot());
        assertEquals(printed.serial(), scanned.serial());
        assertEquals(printed.expires(), scanned.expires());
        assertEquals(OptionalInt.of(2), scanned.quantity());
        assertEquals(Optional.of("GEL-290"), scanned.productCode());
        assertEquals(printed.productCode(), scanned.productCode());
    }

    @Test
    void aDroppedSeparatorIsRefusedBecauseTwoReadingsAreOpen() {
        assertEquals("label-ambiguous", code("01" + GTIN + "10A213B1211234"));
        assertEquals("label-ambiguous", code("01" + GTIN + "17310704" + "21A12" + "10B7"));
    }

    @Test
    void aLastPartThatHidesNothingNeedsNoSeparator() {
        assertEquals(Optional.of("ABC"), LabelReader.read("01" + GTIN + "10ABC", 2026).lot());
        assertEquals(Optional.of("A21"), LabelReader.read("01" + GTIN + "10A21" + GS, 2026).lot());
    }

    @ParameterizedTest
    @CsvSource({"(01)09521101530002,label-check-digit", "(01)0952110153000,label-part", "(10)ABC,label-no-gtin",
        "(01)09521101530001(99)X,label-unknown-part", "(01)09521101530001(10)A(10)B,label-twice",
        "(01)09521101530001(17)260230,label-date", "(01)09521101530001(10)ABCDEFGHIJKLMNOPQRSTU,label-part",
        "(01)09521101530001(10)A(B)C,label-unknown-part", "(01)09521101530001(10)é,label-part",
        "(01)09521101530001(30)12a,label-part", "(01,label-parentheses", "]d2,label-no-gtin",
        "+A123BJC5D6E71H,label-check-character", "+a123bjc5d6e71g,label-hibc-character", "+,label-hibc",
        "+1123BJC5D6E710,label-check-character"})
    void whatIsWrongIsRefusedByName(String text, String code) {
        assertEquals(code, code(text));
    }

    @ParameterizedTest
    @CsvSource({"$$2031531LOT1,2031-03-15", "$$3310315LOT1,2031-03-15", "$$431031509LOT1,2031-03-15",
        "$$531074LOT1,2031-03-15", "$$63107409LOT1,2031-03-15", "$$0331LOT1,2031-03-31", "$$8053310315LOT1,2031-03-15",
        "$$9000053310315LOT1,2031-03-15", "$$7LOT1,", "$LOT1,"})
    void aHibcDateIsReadInEachOfItsShapes(String secondary, LocalDate expires) {
        String body = "+A99912345/" + secondary;
        DeviceLabel label = LabelReader.read(body + Hibc43.of(body), 2026);
        assertEquals(Optional.of("LOT1"), label.lot());
        assertEquals(Optional.ofNullable(expires), label.expires().map(LabelDate::date));
        assertEquals(secondary.startsWith("$$8") || secondary.startsWith("$$9") ? OptionalInt.of(5) : OptionalInt.empty(),
                label.quantity());
    }

    @Test
    void aHibcSerialIsReadAfterThePlus() {
        String body = "+A99912345/$$+3310315SER-9";
        assertEquals(Optional.of("SER-9"), LabelReader.read(body + Hibc43.of(body), 2026).serial());
    }

    @Test
    void aCheckCharacterThatIsABlankSurvives() {
        String body = "+A9990BZ0";
        assertEquals(' ', Hibc43.of(body));
        assertEquals("A999 0BZ", LabelReader.read(body + " ", 2026).deviceIdentifier());
    }

    @Test
    void aSecondLineThatBelongsToAnotherLabelIsRefused() {
        String foreign = "+$$52001510X3H";
        assertEquals("label-link", code("+A123BJC5D6E71G\n" + foreign + Hibc43.of(foreign)));
    }

    @Test
    void aDayOfNoughtIsTheLastOfTheMonthAndSaysSo() {
        LabelDate date = LabelReader.read("(01)" + GTIN + "(17)280200", 2026).expires().orElseThrow();
        assertEquals(LocalDate.of(2028, 2, 29), date.date());
        assertFalse(date.dayGiven());
    }

    /** Rule of the GS1 general specifications: 51 years or more ahead is the past, 50 or more behind is the future. */
    @ParameterizedTest
    @CsvSource({"26,2026,2026", "76,2026,2076", "77,2026,1977", "99,2026,1999", "0,2026,2000", "0,2050,2100", "1,2050,2001",
        "0,2049,2000", "49,2099,2149", "50,2099,2050"})
    void twoDigitYearsFallInTheNearestCentury(int twoDigits, int nowYear, int full) {
        assertEquals(full, LabelDate.fullYear(twoDigits, nowYear));
    }

    @Test
    void anythingElseIsKeptAsTypedAndSaysThatNothingWasChecked() {
        DeviceLabel label = LabelReader.read("  REF 290-MP  ", 2026);
        assertEquals(DeviceLabel.Scheme.TYPED, label.scheme());
        assertEquals("REF 290-MP", label.deviceIdentifier());
        assertTrue(label.lot().isEmpty());
        assertEquals("label-empty", code("  "));
    }

    private static String code(String text) {
        return assertThrows(Refusal.class, () -> LabelReader.read(text, 2026)).code();
    }
}
