package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A practice case line by line, as a script would give it. */
class PipedPracticeTest {
    /** A plan for case 2 of level 2, one line a statement, in the order asked. */
    private static final List<String> PLAN = List.of("yes", "10.5 same", "250 same", "dual-plane", "keep 0.5", "gel", "full",
            "smooth 240 / smooth 270", "inframammary", "yes", "3.5", "US-2020", "uneven sides, second reading", "so that it fits her base");

    @TempDir
    private Path home;

    private Cli practise(List<String> lines) {
        return Cli.piped(home, StandardCharsets.UTF_8, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8),
                "practise", "--level", "2", "--draw", "2");
    }

    @Test
    void aWholeExerciseIsMarkedWithItsReasons_andKeptInTheHistory() {
        List<String> lines = new ArrayList<>(List.of("", "", "", "", ""));
        lines.addAll(PLAN);
        lines.add("commit");
        lines.add("quit");
        Cli run = practise(lines);
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().startsWith("PRACTICE - this patient is invented"), run.out());
        assertTrue(run.out().contains("base width"), "readings are told");
        assertTrue(run.out().contains("Marked: "), run.out());
        assertTrue(run.out().contains("Decided by: "), run.out());
        assertEquals(List.of(), run.out().lines().filter(line -> line.length() > 82).toList());
        assertTrue(Files.exists(home.resolve("practice").resolve("progress.jsonl")));
    }

    @Test
    void nothingIsMarkedBeforeTheCommitment_andTheEndOfTheInputEndsIt() {
        Cli run = practise(List.of("", "state", "yes", "ask base width"));
        assertEquals(Exit.DONE, run.exit());
        assertTrue(!run.out().contains("Marked: "));
        assertTrue(!Files.exists(home.resolve("practice").resolve("progress.jsonl")));
    }

    @Test
    void whatWasTypedIsPrintedWhereNobodySawIt_andTheEndIsSaid() {
        Cli run = practise(List.of("", "state", "yes"));
        assertTrue(run.out().contains("\n> state\nWould you operate now?"), run.out());
        assertTrue(run.out().contains("\n> yes\nWidth ceiling"), run.out());
        assertTrue(run.out().endsWith("\n> \nLeft. The plan was not handed in; nothing of it is kept.\n"), run.out());
    }
}
