package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import domefold.store.RecordStore;
import domefold.store.Stored;
import domefold.store.Workstation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordsCommandTest {
    @TempDir
    private Path home;
    private Stored signed;

    @BeforeEach
    void saveOne() throws IOException {
        ConsultRecord draft = SampleRecords.withStatus(RecordStatus.DRAFT, false);
        RecordStore store = new RecordStore(home.resolve("records"), false, new Workstation("test"));
        signed = store.sign(draft, 0, "A. Surgeon", Cli.DAY.instant(), ConsultSaving::summary);
    }

    private Cli run(String line) {
        return Cli.run(home, line.split(" "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"records find | K-2041", "records find signed | K-2041", "records find K-2041 | signed",
        "records show K-2041 | Clinical summary", "records order K-2041 | GEL-M-290", "records due 2031-03 | K-2041",
        "records due 2029-01 | 0 records", "records verify | nothing was changed", "records find nobody-else | nobody-else"})
    void eachCommandAnswers(String line, String part) {
        Cli run = run(line);
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains(part), run.out());
        Cli json = run(line + " --as json");
        assertEquals(Exit.DONE, json.exit(), json.err());
        assertTrue(json.out().startsWith("{"), json.out());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"records show K-2014 | 3 | no record 'K-2014'", "records order K-9 | 3 | no record",
        "records due March | 2 | write year and month as 2031-03", "records export K-2041 --as docx | 3 | is no format",
        "records export K-2041 | 2 | --as=FORMAT", "records show | 2 | ID"})
    void whatCannotBeAnsweredIsSaidInOneSentence(String line, int exit, String part) {
        Cli run = run(line);
        assertEquals(exit, run.exit(), run.err());
        assertTrue(run.err().contains(part), run.err());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"find", "find gel", "find C-2026-0042-8", "due", "due 2031-03", "order --day 2026-03-20"})
    void whereNothingWasSavedEveryListSaysSo(String line, @TempDir Path empty) {
        Cli run = Cli.run(empty, ("records " + line).split(" "));
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertEquals("There are no records yet.\n", run.out());
        assertTrue(Cli.run(empty, ("records " + line + " --as json").split(" ")).out().startsWith("{"));
    }

    @Test
    void showAsJsonIsTheFileItself() throws IOException {
        assertEquals(Files.readString(signed.file()), run("records show K-2041 --as json").out());
    }

    @Test
    void anExportGoesToAFileOrToStandardOutput() throws IOException {
        Path file = home.resolve("reminders.ics");
        Cli toFile = Cli.run(home, "records", "export", "K-2041", "--as", "ics", "--out", file.toString());
        assertEquals(Exit.DONE, toFile.exit(), toFile.err());
        assertEquals("", toFile.out());
        assertEquals(Files.readString(file), run("records export K-2041 --as ics").out());
        assertTrue(Files.readString(file).startsWith("BEGIN:VCALENDAR"));
    }

    @Test
    void aChangedByteIsFoundAndEndsWithThree() throws IOException {
        byte[] bytes = Files.readAllBytes(signed.file());
        bytes[bytes.length / 2] ^= 1;
        Files.write(signed.file(), bytes);
        Cli verify = run("records verify");
        assertEquals(Exit.REFUSED, verify.exit());
        assertTrue(verify.out().contains("v1.json"), verify.out());
        assertEquals(1, verify.err().lines().count());
    }

    @Test
    void planSavesADraftWithItsSummaryAndNeverOverAnother() throws IOException {
        Cli saved = run("plan demo-data/thin-cover.json --save");
        assertEquals(Exit.DONE, saved.exit(), saved.err());
        assertTrue(saved.err().startsWith("saved as a draft: "), saved.err());
        Path draft = home.resolve("records/DEMO-LAKE-2/draft-1.json");
        assertTrue(Files.exists(draft) && Files.readString(draft.resolveSibling("draft-1.txt")).startsWith("Clinical summary"));
        Cli again = run("plan demo-data/thin-cover.json --save");
        assertEquals(Exit.REFUSED, again.exit());
        assertEquals("", again.out());
        assertEquals(Exit.DONE, run("records verify").exit());
    }

    @Test
    void aHomeThatCannotBeWrittenIsTheWorldsFaultAndLeavesNothing() throws IOException {
        Path file = home.resolve("not-a-folder");
        Files.writeString(file, "");
        Cli run = Cli.run(home, "plan", "demo-data/thin-cover.json", "--save", "--home", file.resolve("below").toString());
        assertEquals(Exit.WORLD_FAILED, run.exit(), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertEquals("", run.out());
        assertEquals("", Files.readString(file));
    }

    @Test
    void herOwnConstantIsUsedShownAndSaved() throws IOException {
        Files.writeString(home.resolve("settings.json"), """
                {"format": "domefold-settings/1", "overrides": [
                  {"constant": "POC-01", "value": 3.0, "date": "2026-01-15", "reason": "my own threshold"}]}
                """);
        Cli evidence = run("evidence POC-01");
        assertTrue(evidence.out().contains("the surgeon's own value") && evidence.out().contains("shipped: 2 cm"), evidence.out());
        assertTrue(run("plan demo-data/ordinary.json").out().contains("dual-plane"));
        assertEquals(Exit.DONE, run("plan demo-data/ordinary.json --save").exit());
        try (Stream<Path> files = Files.list(home.resolve("records/DEMO-LAKE-1"))) {
            Path json = files.filter(file -> file.toString().endsWith(".json")).findFirst().orElseThrow();
            assertTrue(Files.readString(json, StandardCharsets.UTF_8).contains("my own threshold"));
        }
        Files.writeString(home.resolve("settings.json"), "{\"format\": \"domefold-settings/1\", \"colour\": 3}");
        assertEquals(Exit.REFUSED, run("plan demo-data/ordinary.json").exit());
        assertFalse(run("plan demo-data/ordinary.json").err().isBlank());
    }
}
