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

/** Bad input: one sentence that says what, where and what would be right; the exit code; nothing written. */
class BadInputTest {
    private static final Path ORDINARY = Path.of("demo-data/ordinary.json");

    @TempDir
    private Path home;
    @TempDir
    private Path elsewhere;

    private void refused(Path file, String... parts) throws IOException {
        for (String[] args : new String[][] {{"plan", file.toString(), "--save"}, {"consult", file.toString(), "--line"}}) {
            Cli run = Cli.run(home, args);
            assertEquals(Exit.REFUSED, run.exit(), run.err());
            assertEquals("", run.out());
            assertEquals(1, run.err().lines().count(), run.err());
            assertFalse(run.err().contains("xception"), run.err());
            for (String part : parts) {
                assertTrue(run.err().contains(part), run.err());
            }
        }
        try (Stream<Path> left = Files.walk(home)) {
            assertEquals(List.of(), left.filter(Files::isRegularFile).toList(), "nothing is written");
        }
    }

    /** Each row: what a sound file says, what is put in its place, what the sentence names, and what it says would be right. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "\"baseWidthCm\": 12.4,| |left.baseWidthCm|in cm",
        "\"ageYears\": 31,| |patient.ageYears|whole years",
        "\"baseWidthCm\": 12.4|\"baseWidth\": 12.4|left has no field \"baseWidth\"|baseWidthCm",
        "\"chest\": {|\"bosom\": {|bosom|chest",
        "\"baseWidthCm\": 12.4|\"baseWidthCm\": \"12,4\"|left.baseWidthCm|example 12.4",
        "\"ageYears\": 31|\"ageYears\": \"thirty-one\"|patient.ageYears|a number",
        "\"baseWidthCm\": 12.4|\"baseWidthCm\": 124|left base width 124 cm|12.4",
        "\"baseWidthCm\": 12.4|\"baseWidthCm\": 4.9|left base width 4.9 cm|inches",
        "\"baseWidthCm\": 12.4|\"baseWidthCm\": 30|left base width 30 cm|to",
        "\"nippleToFoldCm\": 6.4|\"nippleToFoldCm\": 64|left nipple to fold at rest 64 cm|6.4",
        "\"nippleToFoldStretchedCm\": 7.6|\"nippleToFoldStretchedCm\": 6.0|left|6.4",
        "\"heightCm\": 166|\"heightCm\": 1.66|height 1.66 cm|166",
        "\"weightKg\": 58|\"weightKg\": 5.8|weight 5.8 kg|30 to 200",
        "\"ageYears\": 31|\"ageYears\": 310|age 310|31",
        "\"parenchymalFillPercent\": 50|\"parenchymalFillPercent\": 150|parenchymal fill 150|100"})
    void aFieldThatCannotBeIsRefusedWithWhatWouldBeRight(String right, String wrong, String names, String says)
            throws IOException {
        String text = Files.readString(ORDINARY);
        int at = text.indexOf(right);
        assertTrue(at > 0, right);
        Path file = elsewhere.resolve("case.json");
        Files.writeString(file, text.substring(0, at) + (wrong == null ? "" : wrong) + text.substring(at + right.length()));
        refused(file, "case.json, line ", names, says);
    }

    @Test
    void brokenJsonIsRefusedWithItsLine() throws IOException {
        Path file = elsewhere.resolve("case.json");
        Files.writeString(file, Files.readString(ORDINARY).replaceFirst(",", ""));
        refused(file, "case.json", "line 3");
    }

    @Test
    void aFileOfAHundredMegabytesIsRefusedUnread() throws IOException {
        Path file = elsewhere.resolve("large.json");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(100L << 20);
        }
        long start = System.nanoTime();
        refused(file, "large.json", "MB");
        assertTrue(System.nanoTime() - start < 10_000_000_000L, "it was read after all");
    }

    @Test
    void aFolderAndAFileThatIsNotThereAreRefused() throws IOException {
        refused(elsewhere, "is a folder");
        refused(elsewhere.resolve("none.json"), "there is no file");
    }
}
