package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PlanCommandTest {
    private static final Path ORDINARY = Path.of("demo-data/ordinary.json");

    @TempDir
    private Path home;

    static List<String> demoCases() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
            return files.map(Path::toString).filter(file -> file.endsWith(".json")).sorted().toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("demoCases")
    void everyDemoCaseGivesAPlanInBothForms(String file) {
        Cli text = Cli.run(home, "plan", file);
        assertEquals(Exit.DONE, text.exit(), text.err());
        assertEquals("", text.err());
        assertEquals(List.of(), text.out().lines().filter(line -> line.codePointCount(0, line.length()) > 80).toList());
        assertTrue(text.out().contains("supports a licensed surgeon's judgement"), text.out());
        Cli json = Cli.run(home, "plan", file, "--as", "json");
        assertEquals(Exit.DONE, json.exit());
        assertTrue(json.out().contains("\"domefold-plan/1\""), json.out());
        assertEquals(json.out(), Cli.run(home, "plan", file, "--as", "json").out(), "the same case, the same plan");
    }

    @ParameterizedTest(name = "{0} shows {1}")
    @CsvSource({"thin-cover, muscle-cover", "thin-cover, keep-muscle-at-fold", "tight-envelope, tight-envelope",
        "marked-asymmetry, sides-differ", "age-20, age-below-label", "constricted-base, constricted-base",
        "blocked-nursing, contraindication", "readings-missing, volume-incomplete", "ordinary, invented-catalogue",
        "readings-missing, schedule-not-chosen"})
    void eachDemoCaseShowsWhatItsNameSays(String name, String code) {
        Cli json = Cli.run(home, "plan", "demo-data/" + name + ".json", "--as", "json");
        assertTrue(json.out().contains("\"" + code + "\""), json.out().substring(0, 4000));
    }

    /** The plainest command lines are not taken apart; they mean what they would mean. */
    @Test
    void thePlainestCommandLineGivesWhatTheParserWouldGive() {
        String file = "demo-data/ordinary.json";
        assertEquals(Cli.run(home, "plan", "--as=json", file).out(), Cli.run(home, "plan", file, "--as", "json").out());
        assertEquals(Cli.run(home, "plan", "--as=text", file).out(), Cli.run(home, "plan", file, "--as", "text").out());
        assertEquals(Cli.run(home, "plan", "--as=text", file).out(), Cli.run(home, "plan", file).out());
        assertEquals(Exit.WRONG_USAGE, Cli.run(home, "plan", file, "--as", "xml").exit());
        assertEquals(Cli.run(home, "plan", "--as=json", "none.json").out(), Cli.run(home, "plan", "none.json", "--as", "json").out());
    }

    @Test
    void aBlockedCaseStillShowsItsWorkingAndNoDeviceFits() {
        String text = Cli.run(home, "plan", "demo-data/blocked-nursing.json").out();
        assertTrue(text.contains("BLOCKED"), text);
        assertTrue(text.contains("\n0 fit both sides"), text);
        assertTrue(text.contains("LEFT: how it was worked out"), text);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', value = {
        "\"case\": \"DEMO-LAKE-1\", | | case",
        "\"ageYears\": 31, | | ageYears",
        "\"ageYears\": 31 | \"ageYaers\": 31 | ageYaers",
        "\"baseWidthCm\": 12.4 | \"baseWidthCm\": 124 | left.baseWidthCm",
        "\"baseWidthCm\": 12.4 | \"baseWidthCm\": \"12.4\" | baseWidthCm",
        "\"nippleToFoldStretchedCm\": 7.6 | \"nippleToFoldStretchedCm\": 6.0 | left",
        "\"upperPole\": \"sloped\" | \"upperPole\": \"steep\" | upperPole",
        "\"date\": \"2026-03-04\" | \"date\": \"2026-02-30\" | date",
        "\"date\": \"2026-03-04\" | \"date\": \"04/03/2026\" | date",
        "domefold-case/1 | domefold-case/9 | format",
        "\"surveillance\": \"US-2020\" | \"surveillance\": \"MOON\" | surveillance",
        "\"horizonYears\": 20 | \"horizonYears\": 2000 | horizonYears"})
    void aBadFieldIsRefusedByNameAndNothingIsPrinted(String from, String to, String where) throws IOException {
        String text = Files.readString(ORDINARY);
        assertTrue(text.contains(from), from);
        Path file = home.resolve("case.json");
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(from),
                java.util.regex.Matcher.quoteReplacement(to == null ? "" : to)));
        Cli run = Cli.run(home, "plan", file.toString());
        assertEquals(Exit.REFUSED, run.exit(), run.err());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        Cli json = Cli.run(home, "plan", file.toString(), "--as", "json");
        assertEquals(Exit.REFUSED, json.exit());
        assertTrue(json.err().startsWith("{\"error\":{\"code\":\""), json.err());
        assertTrue(json.err().contains(where), json.err());
    }

    @Test
    void whatIsNoCaseFileIsRefused() throws IOException {
        Path broken = home.resolve("broken.json");
        Files.writeString(broken, "{ \"format\": \"domefold-case/1\", ");
        Path large = home.resolve("large.json");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(100L << 20);
        }
        for (String file : List.of(broken.toString(), large.toString(), home.toString(), home.resolve("none.json").toString())) {
            Cli run = Cli.run(home, "plan", file);
            assertEquals(Exit.REFUSED, run.exit(), run.err());
            assertEquals(1, run.err().lines().count(), run.err());
            assertFalse(run.err().contains("Exception"), run.err());
        }
    }

    @Test
    void thePracticesOwnListTakesThePlaceOfTheInventedOne() throws IOException {
        Path list = home.resolve("own.csv");
        Files.writeString(list, "# name: our list\n" + String.join(",", domefold.device.CatalogueSheet.COLUMNS)
                + "\nown,gel,smooth,moderate-plus,300,,,11.9,11.9,4.1,OWN-1\n");
        Cli run = Cli.run(home, "plan", ORDINARY.toString(), "--catalogue", list.toString());
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains("Device list: our list, 1 device."), run.out());
        assertFalse(run.out().contains("is invented"), run.out());
    }
}
