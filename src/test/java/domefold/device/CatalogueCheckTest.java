package domefold.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Constants;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueCheckTest {
    private static final Constants CONSTANTS = EvidenceFiles.shipped().constants();
    private static final String HEADER = String.join(",", CatalogueSheet.COLUMNS) + "\n";
    private static final String GEL_300 = "own,gel,smooth,moderate,300,,,12.6,12.6,3.6,g300\n";
    private static final String SALINE_300 = "own,saline,smooth,moderate,300,300,330,12.6,12.6,3.6,s300\n";

    private static List<CatalogueFinding> findings(String text) {
        return CatalogueCheck.of(CatalogueFile.sheet(text, "list.csv"), CONSTANTS).findings();
    }

    private static List<String> codes(String text) {
        return findings(text).stream().map(finding -> finding.severity().key() + " " + finding.line() + " " + finding.code())
                .toList();
    }

    @Test
    void aSoundListHasNoFinding() {
        assertEquals(List.of(), codes("# name: ours\n" + HEADER + GEL_300 + SALINE_300));
    }

    @ParameterizedTest(name = "{0} asks for {1}")
    @CsvSource(delimiter = '|', value = {
        "'12,5' | write 12.5", "0 | write digits", "00 | write digits", "0.0 | write digits", "'0,0' | write digits",
        "1234567890 | write digits", "12345678901.5 | write digits", "'1,2,3' | write digits", "12cm | write digits"})
    void noSentenceAsksForWhatWouldBeRefusedAgain(String cell, String asked) {
        String row = "own,gel,smooth,moderate,300,,,\"" + cell + "\",12.6,3.6,g300\n";
        String said = findings(HEADER + row).get(0).toString();
        assertTrue(said.contains(asked), said);
    }

    @ParameterizedTest(name = "{1}: {0}")
    @CsvSource(delimiter = '|', value = {
        "own,gel,smooth,moderate,300,,,126,126,3.6,a | fault 2 unit-length, fault 2 unit-length",
        "own,gel,smooth,moderate,300,,,12.6,12.6,36,a | fault 2 unit-length",
        "own,gel,smooth,moderate,500,,,12,12,4,a | fault 2 geometry-above-cylinder",
        "own,gel,smooth,moderate,90,,,12,12,4,a | fault 2 geometry-below-cone",
        "own,gel,smooth,moderate,400,,,12,12,4,a | query 2 form-factor",
        "own,gel,smooth,moderate,240,,,12,12,4,a | query 2 form-factor",
        "own,gel,smooth,full,262,,,11,11,4.8,a | query 2 below-cap",
        "own,gel,smooth,full,290,,,11,11,5.3,a | query 2 below-cap",
        "own,gel,smooth,moderate,302,,,12,12,4,a | ''",
        "own,gel,smooth,moderate,'12,5',,,12,12,4,a | fault 2 bad-number",
        "own,gel,smooth,moderate,-300,,,12,12,4,a | fault 2 bad-number",
        "own,gel,smooth,moderate,300cc,,,12,12,4,a | fault 2 bad-number",
        "own,gel,smooth,moderate,NaN,,,12,12,4,a | fault 2 bad-number",
        "own,gel,smooth,moderate,0,,,12,12,4,a | fault 2 bad-number",
        "own,gel,smooth,moderate,,,,12,12,4,a | fault 2 bad-number",
        "own,gel,rough,moderate,300,,,12,12,4,a | fault 2 unknown-surface",
        "own,foam,smooth,moderate,300,,,12,12,4,a | fault 2 unknown-fill",
        "own,gel,smooth,tall,300,,,12,12,4,a | fault 2 unknown-profile",
        "own,gel,smooth,moderate,300,,,12,12,4, | fault 2 no-reference",
        "own,gel,smooth,moderate,300,300,330,12,12,4,a | fault 2 gel-with-fill-range",
        "own,saline,smooth,moderate,300,,,12,12,4,a | fault 2 saline-without-fill-range",
        "own,saline,smooth,moderate,300,310,330,12,12,4,a | fault 2 fill-range-without-nominal",
        "own,saline,smooth,moderate,300,330,300,12,12,4,a | fault 2 fill-range-reversed",
        "own,gel,smooth,moderate,300,,,12,12,4 | fault 2 cell-count",
        "own,gel,smooth,moderate,30,,,5.5,5.5,2,a | query 2 volume-unusual",
        "own,gel,smooth,moderate,20,,,4.5,4.5,1.9,a | 'query 2 volume-unusual, query 2 length-unusual, query 2 length-unusual'"})
    void eachKindOfBadRowIsNamed(String row, String expected) {
        String written = row.replace('\'', '"').replace("\"\"", "");
        String wanted = expected.replace("'", "");
        assertEquals(wanted.isEmpty() ? List.of() : List.of(wanted.split(", ")), codes(HEADER + written + "\n"));
    }

    @Test
    void aLadderThatDoesNotRiseIsNamedAtTheLineThatFalls() {
        assertEquals(List.of("query 3 ladder-not-rising"),
                codes(HEADER + GEL_300 + "own,gel,smooth,moderate,330,,,12.4,12.4,4.1,g330\n"));
        assertEquals(List.of("query 3 ladder-not-rising"),
                codes(HEADER + GEL_300 + "own,gel,smooth,moderate,310,,,12.6,12.6,3.6,g310\n"));
        assertEquals(List.of(), codes(HEADER + GEL_300 + "own,gel,smooth,moderate,310,,,12.6,12.6,3.7,g310\n"));
        assertEquals(List.of(), codes(HEADER + GEL_300 + "other,gel,smooth,moderate,330,,,12.4,12.4,4.1,g330\n"));
    }

    @Test
    void aProfileClassOutOfOrderAtEqualVolumeIsNamed() {
        assertEquals(List.of("query 3 profile-out-of-order"),
                codes(HEADER + GEL_300 + "own,gel,smooth,full,300,,,12.8,12.8,3.5,f300\n"));
        assertEquals(List.of(), codes(HEADER + GEL_300 + "own,gel,smooth,full,300,,,11.1,11.1,4.8,f300\n"));
    }

    @Test
    void doublesAreNamedByReferenceAndByDevice() {
        assertEquals(List.of("fault 3 double-reference"), codes(HEADER + GEL_300 + GEL_300));
        assertEquals(List.of("fault 3 double-device"), codes(HEADER + GEL_300 + GEL_300.replace("g300", "g301")));
    }

    @Test
    void columnsMissingUnknownOrTwiceAreNamed() {
        assertEquals(List.of("fault 1 missing-column", "fault 1 unknown-column"),
                codes(HEADER.replace("width_cm", "width_mm") + GEL_300));
        assertEquals(List.of("fault 1 double-column"), codes(HEADER.strip() + ",line\n"));
        assertEquals(List.of("fault 1 separator"), codes(HEADER.replace(',', ';') + GEL_300.replace(',', ';')));
    }

    @Test
    void anEmptyListIsNamedWithOrWithoutItsHeader() {
        assertEquals(List.of("fault 0 empty-list"), codes(HEADER));
        assertEquals(List.of("fault 0 empty-list"), codes("# name: nothing\n"));
        assertEquals(List.of("fault 0 empty-list"), codes(""));
    }

    @Test
    void theSentenceForMillimetresSaysWhatToWrite() {
        CatalogueFinding finding = findings(HEADER + "own,gel,smooth,moderate,300,,,126,12.6,3.6,a\n").get(0);
        assertEquals("line 2 (a): width_cm is 126, more than 25 cm; if it is in millimetres, write 12.6", finding.text());
        assertTrue(finding.isFault());
    }

    @Test
    void columnsMayStandInAnyOrder() {
        String text = "reference,projection_cm,height_cm,width_cm,fill_max_ml,fill_min_ml,nominal_ml,profile,surface,fill,line\n"
                + "s300,3.6,12.6,12.6,330,300,300,moderate,smooth,saline,own\n";
        CatalogueCheck check = CatalogueCheck.of(CatalogueFile.sheet(text, "list.csv"), CONSTANTS);
        assertFalse(check.hasFaults());
        assertEquals("s300", check.devices().get(0).id());
    }
}
