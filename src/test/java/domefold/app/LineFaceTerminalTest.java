package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.terminal.TmuxSession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The line face in a real terminal. */
@Tag("terminal")
class LineFaceTerminalTest {
    private static final String MAIN = Main.class.getName();

    @TempDir
    private Path home;

    private TmuxSession window(Map<String, String> more) throws IOException {
        Map<String, String> environment = new HashMap<>(Map.of("DOMEFOLD_HOME", home.toString(), "LC_ALL", "C.UTF-8"));
        environment.putAll(more);
        return TmuxSession.open(100, 40, environment);
    }

    private static void answer(TmuxSession session, String typed, String awaited) throws IOException {
        session.type(typed);
        session.keys("Enter");
        session.await(awaited);
    }

    @Test
    void linesAreRecalledAndCompletedAndCtrlCLeavesTheTerminalAsItWas() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            String before = session.lineSettings();
            session.type(session.command(MAIN, "consult", "--line") + "; echo ended $?");
            session.keys("Enter");
            session.await("Case code?");
            answer(session, "KB-1", "Age?");
            answer(session, "31", "Height?");
            session.keys("Up", "Up");
            session.await("> KB-1");
            session.keys("C-u");
            answer(session, "skip", "Weight?");
            answer(session, "skip", "Nicotine");
            answer(session, "none", "Upper pole:");
            session.type("slop");
            session.keys("Tab");
            session.await("> sloped");
            session.keys("Enter");
            session.await("Upper pole: sloped.");
            session.type("half a li");
            session.keys("C-c");
            session.await("Left. The consult is kept and offered again at the next start.");
            session.await("ended 0");
            assertEquals(before, session.lineSettings());
            assertFalse(session.alternateOn());
        }
        assertEquals(0, historyFiles(), "what is typed about a patient stands in the journal alone");
    }

    @Test
    void aCompletedNameIsTheNameTheConsultUnderstands() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            session.run(MAIN, "consult", "--line");
            session.await("Case code?");
            session.type("go BAS");
            session.keys("Tab");
            session.await("> go base width");
            session.keys("Enter");
            session.await("Base width?");
            session.type("Su");
            session.keys("Tab");
            session.await("> summary");
            session.keys("Enter");
            session.await("Nothing is answered yet.");
            assertFalse(session.history().contains("original"), session.history());
            session.keys("C-c");
            session.awaitPrompt();
        }
    }

    @Test
    void aPracticeCaseIsEditedRecalledAndCompletedToo() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            String before = session.lineSettings();
            session.run(MAIN, "practise", "--line", "--level", "2", "--draw", "2");
            session.await("`state`");
            session.type("ask base w");
            session.keys("Tab");
            session.await("> ask base width");
            session.keys("Enter");
            session.await("Base width: LEFT");
            answer(session, "state", "Would you operate now?");
            session.keys("Up", "Up");
            session.await("\n> ask base width");
            session.keys("C-c");
            session.await("Left.");
            session.awaitPrompt();
            assertEquals(before, session.lineSettings());
            assertFalse(session.keysChanged());
        }
    }

    @Test
    void endedByASignalOrStoppedAndContinuedItLeavesTheTerminalAsItWas() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            String before = session.lineSettings();
            session.run(MAIN, "consult", "--line");
            session.await("Case code?");
            answer(session, "KB-6", "Age?");
            TmuxSession.await("a line is read", () -> keysChanged(session));
            session.signal("TERM");
            TmuxSession.await("the program has ended", () -> endsWithPrompt(session));
            assertFalse(session.keysChanged());
            assertFalse(session.picture().contains("defect"), session.picture());
            session.keys("Enter");
            session.awaitPrompt();
            assertEquals(before, session.lineSettings());
            session.run(MAIN, "consult", "--line");
            session.await("1. KB-6, 1 answer,");
            session.keys("C-z");
            session.await("Stopped");
            session.type("fg");
            session.keys("Enter");
            session.await("consult");
            answer(session, "KB-7", "Age?");
            session.keys("C-c");
            session.awaitPrompt();
            assertEquals(before, session.lineSettings());
        }
    }

    @Test
    void keysTypedAheadAreNotLost() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            session.run(MAIN, "consult", "--line");
            session.await("Case code?");
            for (String typed : new String[] {"KB-5", "31", "166", "58", "none", "even", "310"}) {
                session.type(typed);
                session.keys("Enter");
            }
            session.await("Size wished: 310 mL.");
            session.keys("C-d");
            session.await("Left.");
            session.awaitPrompt();
        }
    }

    private static boolean keysChanged(TmuxSession session) {
        try {
            return session.keysChanged();
        } catch (IOException failure) {
            return false;
        }
    }

    private static boolean endsWithPrompt(TmuxSession session) {
        try {
            return session.picture().stripTrailing().endsWith("ready$");
        } catch (IOException failure) {
            return false;
        }
    }

    private long historyFiles() throws IOException {
        try (Stream<Path> files = Files.walk(home)) {
            return files.filter(file -> file.getFileName().toString().contains("history")).count();
        }
    }

    @Test
    void ctrlDLeavesAndTheConsultIsContinued() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            session.run(MAIN, "consult", "--line");
            session.await("Case code?");
            answer(session, "KB-2", "Age?");
            session.keys("C-d");
            session.await("Left. The consult is kept");
            session.awaitPrompt();
            session.run(MAIN, "consult", "--line");
            session.await("1. KB-2, 1 answer,");
            answer(session, "continue 1", "Continued: KB-2, 1 answer.");
            session.keys("C-c");
            session.awaitPrompt();
        }
    }

    @Test
    void aPasteOfSeveralLinesIsSeveralAnswers() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            session.run(MAIN, "consult", "--line");
            session.await("Case code?");
            session.paste("KB-3\n31\n166\n58\nnone\n");
            session.await("Upper pole:");
            assertTrue(session.history().contains("\n> 166\nHeight: 166.0 cm."), session.history());
            answer(session, "quit", "Left.");
            session.awaitPrompt();
        }
    }

    @Test
    void aDumbTerminalGetsTheLineFaceByItself() throws IOException {
        try (TmuxSession session = window(Map.of())) {
            session.type("TERM=dumb " + session.command(MAIN, "consult"));
            session.keys("Enter");
            session.await("Case code?");
            answer(session, "KB-4", "Age?");
            answer(session, "31", "Height?");
            answer(session, "undo", "Taken back: age, 31 years.");
            answer(session, "quit", "Left.");
            session.awaitPrompt();
            assertTrue(session.history().contains("> KB-4"), session.history());
        }
    }
}
