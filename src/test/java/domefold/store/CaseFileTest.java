package domefold.store;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CaseFileTest {
    private static final CaseRules RULES = CaseRules.of(EvidenceFiles.shipped(), any -> {});

    private static Case read(String json) {
        return CaseFile.read(json.getBytes(StandardCharsets.UTF_8), "K.json", RULES);
    }

    private static Refusal refusal(String json) {
        return assertThrows(Refusal.class, () -> read(json));
    }

    @Test
    void aWholeCaseIsReadSideBySide() {
        Case read = read(Samples.CASE);
        assertEquals("K-2041", read.code());
        assertEquals(new Reading(12.4, "12.40", ReadBy.HAND, 1), read.left().readings().get(Measure.BASE_WIDTH).orElseThrow());
        assertEquals(new Reading(12.6, "12.6", ReadBy.HAND, 2), read.right().readings().get(Measure.BASE_WIDTH).orElseThrow());
        assertEquals(ReadBy.SURFACE_SCAN, read.right().readings().get(Measure.UPPER_PINCH).orElseThrow().readBy());
        assertFalse(read.left().readings().has(Measure.BREAST_VOLUME), "null means not taken");
        assertEquals(6, read.history().size());
        assertEquals(7, read.wishes().weights().size());
        assertEquals(20, read.setting().horizonYears().orElseThrow());
    }

    @Test
    void whatIsWrittenReadsBackTheSameAndPassesTheSchema() {
        Case read = read(Samples.CASE);
        String written = CaseFile.write(read);
        assertEquals(read, read(written));
        assertEquals(List.of(), Schemas.faults("case-1", written));
        assertTrue(written.contains("\"baseWidthCm\": 12.40"), "a number stays as typed");
    }

    @Test
    void everyReadingThereIsCanBeWrittenAndRead() {
        Readings[] all = {Readings.NONE, Readings.NONE, Readings.NONE};
        for (Measure measure : Measure.values()) {
            int of = measure.of().ordinal();
            all[of] = all[of].with(measure, new Reading(1.25 + measure.ordinal(), 1.25 + measure.ordinal() + "", ReadBy.HAND, 1));
        }
        Breast breast = new Breast(all[Measure.Of.SIDE.ordinal()], java.util.Optional.empty());
        Case full = Case.empty("K-1", LocalDate.of(2026, 3, 4)).withPatient(all[Measure.Of.PATIENT.ordinal()])
                .withChest(all[Measure.Of.CHEST.ordinal()]).withSide(Side.LEFT, breast).withSide(Side.RIGHT, breast);
        String written = CaseFile.write(full);
        assertEquals(full, read(written));
        assertEquals(List.of(), Schemas.faults("case-1", written));
    }

    @Test
    void aReadingTypedWithACommaIsWrittenAsItsValue() {
        Case commas = read(Samples.CASE).withChest(Readings.NONE.with(Measure.INTERMAMMARY, new Reading(2.5, "2,5", ReadBy.HAND, 1)));
        assertTrue(CaseFile.write(commas).contains("\"intermammaryCm\": 2.5"));
    }

    @Test
    void aByteOrderMarkIsNotInTheWay() {
        assertEquals(read(Samples.CASE), read("\uFEFF" + Samples.CASE));
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                slip("\"baseWidthCm\": 12.40", "\"baseWidthMm\": 124", "unknown-field", "left.baseWidthMm", "\"baseWidthCm\""),
                slip("\"baseWidthCm\": 12.40", "\"basewidthCm\": 12.4", "unknown-field", "left.basewidthCm", "\"baseWidthCm\""),
                slip("\"areolaCm\"", "\"xyzzy\"", "unknown-field", "left.xyzzy", "it has "),
                slip("\"lowCost\"", "\"lowCosts\"", "unknown-field", "wishes.weights.lowCosts", "\"lowCost\""),
                slip("\"nicotine\"", "\"nicotin\"", "unknown-field", "patient.nicotin", "\"nicotine\""),
                slip("\"chest\": {", "\"thorax\": {", "unknown-field", "thorax", "chest"),
                slip("\"baseWidthCm\": 12.40, ", "", "missing-field", "left.baseWidthCm", "in cm"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": null", "missing-field", "left.baseWidthCm", "in cm"),
                slip("\"ageYears\": 31, ", "", "missing-field", "patient.ageYears", "whole years"),
                slip("\"format\": \"domefold-case/1\", ", "", "missing-field", "format", "domefold-case/1"),
                slip("\"case\": \"K-2041\", ", "", "missing-field", "case", "text in quotes"),
                slip("\"date\": \"2026-03-04\", ", "", "missing-field", "date", "2026-03-04"),
                slip("domefold-case/1", "domefold-case/2", "newer-format", "format", "newer version"),
                slip("domefold-case/1", "domefold-plan/1", "wrong-format", "format", "domefold-case/1"),
                slip("domefold-case/1", "domefold-case/0", "wrong-format", "format", "domefold-case/1"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": \"12.4\"", "wrong-type", "left.baseWidthCm", "without quotes"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": \"12,4 cm\"", "wrong-type", "left.baseWidthCm", "example 12.4"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": \"wide\"", "wrong-type", "left.baseWidthCm", "a number of cm"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": true", "wrong-type", "left.baseWidthCm", "a number of cm"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": [12.4, 12.6]", "wrong-type", "left.baseWidthCm", "a list"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": -12.4", "out-of-range", "left.baseWidthCm", "not below 0"),
                slip("\"baseWidthCm\": 12.40", "\"baseWidthCm\": 1e999", "out-of-range", "left.baseWidthCm", "too large"),
                slip("\"nicotine\": false", "\"nicotine\": \"no\"", "wrong-type", "patient.nicotine", "true or false"),
                slip("\"nicotine\": false", "\"nicotine\": 0", "wrong-type", "patient.nicotine", "true or false"),
                slip("\"chest\": { \"interNippleCm\": 20.5, \"intermammaryCm\": 2.4 }", "\"chest\": 20", "wrong-type", "chest",
                        "an object"),
                slip("\"upperPole\": \"sloped\"", "\"upperPole\": \"steep\"", "unknown-word", "wishes.upperPole", "\"even\""),
                slip("\"ptosis\": \"none\"", "\"ptosis\": \"IV\"", "unknown-word", "left.ptosis", "\"III\""),
                slip("\"dual-plane\"", "\"dualplane\"", "unknown-word", "setting.pocket", "\"dual-plane\""),
                slip("\"inframammary\"", "\"fold\"", "unknown-word", "setting.route", "\"transaxillary\""),
                slip("\"readBy\": \"hand\"", "\"readBy\": \"eye\"", "unknown-word", "readBy", "\"surface-scan\""),
                slip("[\"smooth\"]", "[\"rough\"]", "unknown-word", "setting.surfaces", "\"textured\""),
                slip("[\"smooth\"]", "[\"smooth\", \"smooth\"]", "word-twice", "setting.surfaces", "once"),
                slip("[\"smooth\"]", "\"smooth\"", "wrong-type", "setting.surfaces", "a list"),
                slip("[\"smooth\"]", "[1]", "wrong-type", "setting.surfaces", "texts in quotes"),
                slip("\"US-2020\"", "\"US-2002\"", "unknown-schedule", "setting.surveillance", "nearest"),
                slip("\"horizonYears\": 20", "\"horizonYears\": 20.5", "out-of-range", "setting.horizonYears", "whole number"),
                slip("\"horizonYears\": 20", "\"horizonYears\": 0", "out-of-range", "setting.horizonYears", "from 1"),
                slip("\"shortScar\": 3", "\"shortScar\": 6", "out-of-range", "wishes.weights.shortScar", "0 to 5"),
                slip("\"shortScar\": 3", "\"shortScar\": 2.5", "out-of-range", "wishes.weights.shortScar", "0 to 5"),
                slip("\"sizeWishMl\": 300", "\"sizeWishMl\": 0", "out-of-range", "wishes.sizeWishMl", "mL"),
                slip("\"sizeWishMl\": 300", "\"sizeWishMl\": 30000", "out-of-range", "wishes.sizeWishMl", "mL"),
                slip("2026-03-04", "2026-02-30", "bad-date", "date", "no calendar"),
                slip("2026-03-04", "04/03/2026", "bad-date", "date", "year-month-day"),
                slip("2026-03-04", "2026-3-4", "bad-date", "date", "year-month-day"),
                slip("K-2041", "", "bad-case-code", "case", "1 to 40"),
                slip("K-2041", " K", "bad-case-code", "case", "blanks"),
                slip("K-2041", "K\\u001b[31m", "bad-case-code", "case", "1 to 40"),
                slip("K-2041", "K".repeat(41), "bad-case-code", "case", "1 to 40"),
                slip("{ \"baseWidthCm\": 2 }", "{ \"baseWidthCm\": 0 }", "out-of-range", "right.takes.baseWidthCm", "1 to 99"),
                slip("{ \"baseWidthCm\": 2 }", "{ \"areolaCm\": 2 }", "unknown-field", "right.takes.areolaCm", "it has"),
                slip("\"ptosis\": \"none\",", "\"areolaCm\": 3.9, \"ptosis\": \"none\",", "field-twice", "areolaCm", "twice, on lines 12 and 14"));
    }

    private static Arguments slip(String right, String wrong, String code, String where, String says) {
        return Arguments.of(right, wrong, code, where, says);
    }

    @ParameterizedTest(name = "{1} is refused as {2}")
    @MethodSource("slips")
    void aSlipIsRefusedByNamePlaceAndRemedy(String right, String wrong, String code, String where, String says) {
        assertTrue(Samples.CASE.contains(right), right);
        int at = Samples.CASE.indexOf(right);
        Refusal refusal = refusal(Samples.CASE.substring(0, at) + wrong + Samples.CASE.substring(at + right.length()));
        assertAll(
                () -> assertEquals(code, refusal.code(), refusal.getMessage()),
                () -> assertEquals(where, refusal.where()),
                () -> assertTrue(refusal.getMessage().contains(says), refusal.getMessage()),
                () -> assertTrue(refusal.getMessage().startsWith("K.json"), refusal.getMessage()),
                () -> assertTrue(refusal.getMessage().matches("[^\\n]*line[^\\n]*"), refusal.getMessage()),
                () -> assertEquals(Shown.plain(refusal.getMessage()), refusal.getMessage(), "nothing a terminal obeys"));
    }

    @ParameterizedTest(name = "text {index} is refused as {1}")
    @MethodSource("brokenTexts")
    void brokenJsonIsRefusedWithItsPlace(String text, String code, String where) {
        Refusal refusal = refusal(text);
        assertEquals(code, refusal.code(), refusal.getMessage());
        assertEquals(where, refusal.where(), refusal.getMessage());
        assertFalse(refusal.getMessage().contains("\n"));
        assertFalse(refusal.getMessage().contains("com.fasterxml"));
    }

    static Stream<Arguments> brokenTexts() {
        return Stream.of(
                Arguments.of("", "json-empty", "line 1"),
                Arguments.of("  \n ", "json-empty", "line 1"),
                Arguments.of("[]", "json-not-object", "line 1"),
                Arguments.of("null", "json-not-object", "line 1"),
                Arguments.of("{\n \"case\" \"K\" }", "json-broken", "line 2, column 9"),
                Arguments.of("{\n \"case\": \"K\",\n}", "json-broken", "line 3, column 1"),
                Arguments.of("{ 'case': 1 }", "json-broken", "line 1, column 3"),
                Arguments.of("{ \"n\": NaN }", "json-broken", "line 1, column 11"),
                Arguments.of("{ \"n\": 012 }", "json-broken", "line 1, column 9"),
                Arguments.of("{ \"n\": .5 }", "json-broken", "line 1, column 8"),
                Arguments.of("{ \"n\": 12,5 }", "json-broken", "line 1, column 11"),
                Arguments.of("{ // remark\n }", "json-broken", "line 1, column 3"),
                Arguments.of("{} {}", "json-broken", "line 1, column 4"),
                Arguments.of("{ \"n\": \"a\nb\" }", "json-broken", "line 1, column 10"),
                Arguments.of("{ \"n\": ".repeat(60) + "1" + "}".repeat(60), "json-too-deep", "line 1"));
    }

    @Test
    void aTextThatStopsTooEarlySaysSo() {
        for (int length = 1; length < Samples.CASE.strip().length(); length++) {
            String cut = Samples.CASE.substring(0, length);
            Refusal refusal = refusal(cut);
            assertEquals("json-broken", refusal.code(), cut);
        }
        assertTrue(refusal("{ \"case\": ").getMessage().contains("still open"));
    }

    @Test
    void bytesThatAreNotUtf8AreRefusedWithTheirLine() {
        byte[] latin1 = "{\n\n \"case\": \"M\u00fcller\" }".getBytes(StandardCharsets.ISO_8859_1);
        Refusal refusal = assertThrows(Refusal.class, () -> CaseFile.read(latin1, "K.json", RULES));
        assertEquals("not-utf-8", refusal.code());
        assertEquals("line 3", refusal.where());
    }

    /** One file per format version ever written, kept forever. */
    @Test
    void theFirstVersionEverWrittenStaysReadable() throws IOException {
        assertEquals(read(Samples.CASE), CaseFile.read(Path.of("src/test/resources/saved/case-1.json"), RULES));
    }

    @Test
    void aReadingThatNoBodyHasIsRefusedByTheGateWithItsLine() {
        domefold.evidence.Evidence evidence = EvidenceFiles.shipped();
        CaseRules gated = CaseRules.of(evidence, any -> domefold.engine.CaseGate.check(any, evidence));
        byte[] millimetres = Samples.CASE.replace("12.40", "124").getBytes(StandardCharsets.UTF_8);
        Refusal refusal = assertThrows(Refusal.class, () -> CaseFile.read(millimetres, "K.json", gated));
        assertEquals("left.baseWidthCm", refusal.where());
        assertTrue(refusal.getMessage().startsWith("K.json, line 12: left base width 124 cm"), refusal.getMessage());
    }

    @Test
    void aFolderAMissingFileAndAHugeOneAreRefusedBeforeReading(@TempDir Path folder) throws IOException {
        Path huge = folder.resolve("huge.json");
        try (var channel = Files.newByteChannel(huge, java.nio.file.StandardOpenOption.CREATE,
                java.nio.file.StandardOpenOption.WRITE)) {
            channel.position(100L << 20).write(java.nio.ByteBuffer.wrap(new byte[] {'}'}));
        }
        assertEquals("directory", assertThrows(Refusal.class, () -> CaseFile.read(folder, RULES)).code());
        assertEquals("no-such-file",
                assertThrows(Refusal.class, () -> CaseFile.read(folder.resolve("none.json"), RULES)).code());
        assertEquals("file-too-large", assertThrows(Refusal.class, () -> CaseFile.read(huge, RULES)).code());
        assertEquals("file-too-large", assertThrows(Refusal.class, () -> CaseFile.read(Path.of("/dev/zero"), RULES)).code());
    }
}
