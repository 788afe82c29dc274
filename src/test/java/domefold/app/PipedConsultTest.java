package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.interview.Interview;
import domefold.line.LineWalk;
import domefold.screen.ConsultScreen;
import domefold.screen.Key;
import domefold.screen.Walk;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole consults through standard input, as a script would give them. */
class PipedConsultTest {
    private static final String CODE = "20260042-9";

    @TempDir
    private Path home;

    private static List<String> whole() {
        List<String> lines = new ArrayList<>(List.of(CODE));
        lines.addAll(Walk.ORDINARY.subList(1, Walk.ORDINARY.size()));
        lines.addAll(LineWalk.SETTLED);
        lines.add("sign kb");
        return lines;
    }

    private Cli consult(List<String> lines) {
        return consult(lines, StandardCharsets.UTF_8);
    }

    private Cli consult(List<String> lines, Charset encoding) {
        return Cli.piped(home, encoding, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8), "consult");
    }

    private List<String> journals() throws IOException {
        Path folder = home.resolve("journal");
        try (Stream<Path> files = Files.exists(folder) ? Files.list(folder) : Stream.empty()) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private String record(String version) throws IOException {
        return Files.readString(home.resolve("records").resolve(CODE).resolve(version));
    }

    @Test
    void aWholeConsultIsSignedAndItsJournalHasDoneItsWork() throws IOException {
        Cli run = consult(whole());
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertEquals("", run.err());
        assertTrue(run.out().lines().toList().get(run.out().lines().toList().size() - 1).startsWith("Signed and saved: "), run.out());
        assertTrue(record("v1.txt").contains("LEFT"));
        assertEquals(List.of(), journals());
    }

    @Test
    void theRecordIsByteForByteThatOfTheFullScreenApartFromTimesAndIds() throws Exception {
        consult(whole());
        String byLine = withoutIds(record("v1.json"));
        Walk walk = Walk.consult().line(CODE).lines(Walk.ORDINARY.subList(1, Walk.ORDINARY.size()))
                .key(Key.Kind.F3).key(Key.Kind.F6).key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.character(' '))
                .key(Key.Kind.F3).lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3"));
        Interview interview = ((ConsultScreen) walk.screen()).interview();
        Path elsewhere = home.resolve("other");
        Console console = Cli.console(elsewhere, new ByteArrayOutputStream(), new ByteArrayOutputStream(), StandardCharsets.UTF_8);
        new ConsultSaving(new Domefold(console, FacesHere.of()).bench(null)).sign(interview, "kb", 0);
        String byScreen = withoutIds(Files.readString(elsewhere.resolve("records").resolve(CODE).resolve("v1.json")));
        assertTrue(byLine.contains("\"left\""), byLine);
        assertEquals(byScreen, byLine);
    }

    /** Random ids of calendar entries; the clock of these tests stands still. */
    private static String withoutIds(String json) {
        return json.replaceAll("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}", "an id")
                .replaceAll("\"(sha256|digest|check)\"\\s*:\\s*\"[0-9a-f]{64}\"", "a digest");
    }

    @Test
    void inputThatEndsEarlyIsKeptAndContinuedAtTheNextStart() throws IOException {
        Cli first = consult(whole().subList(0, 20));
        assertEquals(Exit.DONE, first.exit());
        assertTrue(first.out().endsWith("Left. The consult is kept and offered again at the next start.\n"), first.out());
        assertEquals(1, journals().size());
        List<String> rest = new ArrayList<>(List.of("continue 1"));
        rest.addAll(whole().subList(20, whole().size()));
        Cli second = consult(rest);
        assertEquals(Exit.DONE, second.exit(), second.err());
        assertTrue(second.out().contains("1. " + CODE + ", 20 answers"), second.out());
        assertTrue(second.out().contains("Continued: " + CODE + ", 20 answers."), second.out());
        String resumed = record("v1.txt");
        assertEquals(List.of(), journals());
        Files.walk(home).sorted(java.util.Comparator.reverseOrder()).filter(file -> !file.equals(home)).forEach(file -> file.toFile().delete());
        consult(whole());
        assertEquals(record("v1.txt").replaceAll("sha256 [0-9a-f]+", ""), resumed.replaceAll("sha256 [0-9a-f]+", ""));
    }

    @Test
    void aTypedUndoHoldsAfterTheConsultIsContinued() {
        consult(List.of(CODE, "31", "undo", "32", "166", "undo"));
        Cli second = consult(List.of("continue 1", "summary"));
        assertTrue(second.out().contains("  Age: 32 years\n"), second.out());
        assertFalse(second.out().contains("Height: 166"), second.out());
    }

    @Test
    void nothingAnsweredLeavesNothingBehind() throws IOException {
        Cli run = Cli.piped(home, StandardCharsets.UTF_8, new byte[0], "consult");
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains("Case code?"), run.out());
        assertFalse(run.out().contains("kept"), run.out());
        assertEquals(List.of(), journals());
    }

    @Test
    void brokenLinesAreSaidAndTheRestIsTaken() {
        byte[] head = ("\uFEFF" + CODE + "\r\n31\r\n").getBytes(StandardCharsets.UTF_8);
        byte[] broken = {'1', (byte) 0xff, (byte) 0xfe, '6', '\n', 0, 0, '\n'};
        byte[] endless = ("7".repeat(3_000_000) + "\n166\nsummary").getBytes(StandardCharsets.UTF_8);
        byte[] all = new byte[head.length + broken.length + endless.length];
        System.arraycopy(head, 0, all, 0, head.length);
        System.arraycopy(broken, 0, all, head.length, broken.length);
        System.arraycopy(endless, 0, all, head.length + broken.length, endless.length);
        Cli run = Cli.piped(home, StandardCharsets.UTF_8, all, "consult");
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertEquals(2, run.out().split("That line holds characters that cannot be read", -1).length - 1, run.out());
        assertEquals(1, run.out().split("That line is longer than", -1).length - 1);
        assertTrue(run.out().contains("  Height: 166.0 cm\n"), run.out());
    }

    @Test
    void aSavingThatFailsIsSaidAndTheScriptLearnsOfIt() throws IOException {
        Files.createDirectories(home.resolve("records"));
        Files.writeString(home.resolve("records").resolve(CODE), "a file where a folder should be");
        Cli run = consult(whole());
        assertTrue(run.out().contains("Not done: "), run.out());
        assertEquals(Exit.WORLD_FAILED, run.exit());
        assertEquals(1, journals().size());
    }

    @Test
    void whereOnlyAsciiCanBeReadOnlyAsciiIsPrinted() {
        Cli run = consult(whole(), StandardCharsets.US_ASCII);
        assertEquals("", run.out().replaceAll("[\\x20-\\x7e\\n]", ""));
    }

    @Test
    void aCaseFileIsWhereItBegins() {
        Cli run = Cli.piped(home, StandardCharsets.UTF_8, "summary\nlimits\n".getBytes(StandardCharsets.UTF_8), "consult",
                "demo-data/ordinary.json", "--line");
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains("  Base width: LEFT "), run.out());
        assertTrue(run.out().contains("What the tissues allow"), run.out());
        assertEquals(Exit.REFUSED, Cli.piped(home, StandardCharsets.UTF_8, new byte[0], "consult", "pom.xml").exit());
    }
}
