package domefold.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.terminal.TmuxSession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Windows that are too small, terminals that cannot be painted, a home that cannot be written: said, and nothing lost. */
@Tag("terminal")
class BadTerminalSessionsTest {
    @TempDir
    private Path home;

    @Test
    void aWindowOfTwentyByFiveSaysWhatItNeedsAndStartsOnceItIsLarger() throws IOException {
        try (Consulting consult = Consulting.start(home, 20, 5, "")) {
            consult.sees("20 x 5");
            consult.keys("Enter");
            consult.terminal().resize(80, 24);
            consult.sees("▸ New consult");
            consult.keys("Enter");
            consult.sees("Case code");
            consult.terminal().resize(20, 5);
            consult.sees("20 x 5");
            consult.leaves();
            assertEquals(List.of(), consult.files(".json"));
        }
    }

    @Test
    void aHomeThatCannotBeAFolderIsSaidBeforeTheWindowIsPainted() throws IOException {
        Path file = Files.writeString(home.resolve("a-file"), "");
        for (String command : new String[] {"", "consult"}) {
            try (Consulting consult = Consulting.start(home, 160, 24, Map.of("DOMEFOLD_HOME", file.resolve("below").toString()), command)) {
                String said = consult.ended(4);
                assertTrue(said.contains("domefold: cannot "), said);
                assertEquals(1, said.lines().filter(line -> line.startsWith("domefold: ")).count(), said);
            }
        }
        assertEquals("", Files.readString(file));
    }

    @Test
    void aTerminalThatNobodyHasDescribedIsPaintedAllTheSame() throws IOException {
        try (Consulting consult = Consulting.start(home, 100, 30, Map.of("TERM", "no-such-terminal"), "")) {
            consult.sees("▸ New consult");
            consult.keys("q");
            String left = consult.ended(0);
            assertFalse(left.contains("infocmp") || left.contains("Exception") || left.contains("WARNING"), left);
        }
    }

    @Test
    void aTerminalThatCannotBePaintedIsSpokenToLineByLine() throws IOException {
        try (Consulting consult = Consulting.start(home, 100, 40, Map.of("TERM", "dumb"), "consult")) {
            String asked = consult.sees("Case code");
            assertFalse(consult.terminal().alternateOn(), asked);
            consult.line("");
            consult.sees("Age");
            consult.line("31");
            consult.sees("Height");
            consult.keys("C-d");
            TmuxSession.await("it ends", () -> picture(consult).contains("ended 0"));
        }
        try (Consulting again = Consulting.start(home, 100, 40, "")) {
            again.sees("2 answers");
            again.leaves();
        }
    }

    @Test
    void whatIsNoCaseIsRefusedBeforeTheWindowIsPainted() throws IOException {
        try (Consulting consult = Consulting.start(home, 160, 24, "consult " + home.toAbsolutePath())) {
            String said = consult.ended(3);
            assertTrue(said.contains("is a folder"), said);
        }
    }

    private static String picture(Consulting consult) {
        try {
            return consult.terminal().picture();
        } catch (IOException failure) {
            return failure.toString();
        }
    }
}
