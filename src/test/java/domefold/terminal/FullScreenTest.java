package domefold.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The full screen in a real terminal. */
@Tag("terminal")
class FullScreenTest {
    private static final String MAIN = KeyBoardMain.class.getName();

    @Test
    void keysArriveAsWhatTheyAre() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of())) {
            String[][] pressed = {{"C-c", "Ctrl-c"}, {"C-z", "Ctrl-z"}, {"C-s", "Ctrl-s"}, {"C-q", "Ctrl-q"},
                {"C-\\", "Ctrl-\\"}, {"Enter", "ENTER"}, {"Tab", "TAB"}, {"BTab", "BACK_TAB"},
                {"BSpace", "BACKSPACE"}, {"DC", "DELETE"}, {"Home", "HOME"}, {"End", "END"}, {"PPage", "PAGE_UP"},
                {"NPage", "PAGE_DOWN"}, {"Up", "UP"}, {"Down", "DOWN"}, {"Left", "LEFT"}, {"Right", "RIGHT"},
                {"F1", "F1"}, {"F2", "F2"}, {"F3", "F3"}, {"F4", "F4"}, {"F5", "F5"}, {"F10", "F10"},
                {"Escape", "ESCAPE"}, {"M-x", "Alt-x"}, {"é", "é"}, {"?", "?"}, {"a", "a"}};
            for (String[] key : pressed) {
                session.keys(key[0]);
                session.await("last [" + key[1] + "]");
            }
        }
    }

    @Test
    void aPasteArrivesAsCharacters() throws IOException {
        try (TmuxSession session = started(160, 48, Map.of())) {
            String text = "12,5 12.8 née ½ " + "0123456789".repeat(10);
            session.paste(text);
            session.await("typed " + text);
        }
    }

    @Test
    void quittingLeavesTheTerminalAsItWas() throws IOException {
        try (TmuxSession session = TmuxSession.open(80, 24)) {
            String before = session.lineSettings();
            session.run(MAIN);
            session.await("Key board 80 x 24");
            assertTrue(session.alternateOn());
            session.keys("Q");
            session.await("ended QUIT");
            assertSane(session, before);
        }
    }

    @Test
    void aFaultLeavesTheTerminalAsItWas() throws IOException {
        try (TmuxSession session = TmuxSession.open(80, 24)) {
            String before = session.lineSettings();
            session.run(MAIN);
            session.await("Key board 80 x 24");
            session.keys("X");
            session.await("fault: a fault in a screen");
            assertSane(session, before);
        }
    }

    @Test
    void ctrlLPaintsTheWindowAnew() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of())) {
            session.scribble("\033[2J\033[10;10Ha message of the system");
            session.await("a message of the system");
            session.keys("C-l");
            assertFalse(session.await("Key board 80 x 24").contains("message"));
        }
    }

    @Test
    void anEffectIsCarriedOutAndItsOutcomeShown() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of())) {
            session.keys("V");
            session.await("typed been there");
        }
    }

    @Test
    void aFaultOfAnEffectLeavesTheTerminalAsItWas() throws IOException {
        try (TmuxSession session = TmuxSession.open(80, 24)) {
            String before = session.lineSettings();
            session.run(MAIN);
            session.await("Key board 80 x 24");
            session.keys("W");
            session.await("fault: no such place");
            assertSane(session, before);
        }
    }

    @Test
    void standardErrorIsHeldBackAndPrintedAfterwards() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of())) {
            session.keys("E");
            session.await("last [E]");
            assertFalse(session.picture().contains("complains"), session.picture());
            session.keys("Q");
            session.await("ended QUIT");
            session.await("a library complains");
        }
    }

    @Test
    void aTerminalThatGoesAwayEndsTheProgram() throws IOException {
        ProcessHandle program;
        try (TmuxSession session = started(80, 24, Map.of())) {
            program = session.program();
            assertTrue(program.isAlive());
        }
        TmuxSession.await("the program ends with its terminal", () -> !program.isAlive());
    }

    @Test
    void signalsThatEndTheProgramLeaveTheTerminalAsItWas() throws IOException {
        for (String signal : new String[] {"TERM", "HUP", "INT"}) {
            try (TmuxSession session = TmuxSession.open(80, 24)) {
                String before = session.lineSettings();
                session.run(MAIN);
                session.await("Key board 80 x 24");
                session.signal(signal);
                TmuxSession.await("the screen is left after " + signal, () -> !alternate(session));
                session.awaitPrompt();
                assertFalse(session.picture().contains("xception"), session.picture());
                assertFalse(session.picture().contains("fault"), session.picture());
                assertSane(session, before);
            }
        }
    }

    @Test
    void suspendedFromOutsideItGivesTheTerminalBackAndTakesItAgain() throws IOException {
        try (TmuxSession session = TmuxSession.open(80, 24)) {
            String before = session.lineSettings();
            session.run(MAIN);
            session.await("Key board 80 x 24");
            session.type("12.5");
            session.await("typed 12.5");
            session.signal("TSTP");
            session.await("Stopped");
            assertSane(session, before);
            session.type("fg");
            session.keys("Enter");
            session.await("typed 12.5");
            assertTrue(session.alternateOn());
            session.type(" 12.8");
            session.await("typed 12.5 12.8");
            session.keys("Q");
            session.await("ended QUIT");
            assertSane(session, before);
        }
    }

    @Test
    void aSmallWindowSaysSoAndComesBackByItself() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of())) {
            session.type("12.5");
            session.await("typed 12.5");
            session.resize(20, 5);
            session.await("20 x 5");
            session.type("lost");
            session.resize(60, 18);
            session.await("Key board 60 x 18");
            session.type(" 12.8");
            session.await("typed 12.5 12.8");
        }
    }

    @Test
    void afterManyResizesTheLastSizeIsDrawn() throws IOException {
        long seed = 20260304;
        Random random = new Random(seed);
        try (TmuxSession session = started(80, 24, Map.of())) {
            for (int i = 0; i < 40; i++) {
                session.resize(10 + random.nextInt(220), 3 + random.nextInt(70));
            }
            session.resize(101, 31);
            String picture = session.await("Key board 101 x 31");
            String[] rows = picture.split("\n", -1);
            assertEquals(100, rows[29].indexOf('#'), picture);
            assertEquals(" Q quit   X fault", rows[30], picture);
            session.keys("Q");
            session.await("ended QUIT");
            assertFalse(session.history().contains("Key board"), session.history());
            assertEquals(3, picture.lines().filter(row -> row.contains("last [") || row.contains("typed")
                    || row.contains("#")).count(), picture);
        }
    }

    @Test
    void withoutColoursNoneAreSent() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of("NO_COLOR", "1"))) {
            session.type("12.5");
            session.await("typed 12.5");
            String picture = session.colouredPicture();
            assertFalse(picture.matches("(?s).*\u001b\\[[0-9;]*(3[0-7]|4[0-7]|9[0-7]|38|48)[;m].*"), picture);
            assertTrue(picture.contains("\u001b[4m"), picture);
        }
    }

    @Test
    void withoutATerminalThereIsOneSentence() throws IOException {
        try (TmuxSession session = TmuxSession.open(200, 24)) {
            String program = session.command(MAIN);
            assertEquals("sentence: This terminal cannot show a full screen (TERM is dumb or not set); use --line.",
                    session.ask("TERM=dumb " + program));
            String none = "sentence: There is no terminal here; use --line, or plan for a case file.";
            assertEquals(none, session.ask("true | " + program));
            assertEquals(none, session.ask(program + " | cat"));
            assertEquals(none, session.ask("setsid -w " + program + " </dev/null | cat"));
        }
    }

    @Test
    void aTerminalNobodyHasHeardOfIsPaintedAllTheSame() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of())) {
            session.keys("Q");
            session.awaitPrompt();
            session.type("clear; TERM=never-heard-of-it " + session.command(MAIN));
            session.keys("Enter");
            session.await("Key board 80 x 24");
        }
    }

    @Test
    void withoutUtf8ThePictureIsAscii() throws IOException {
        try (TmuxSession session = started(80, 24, Map.of("LC_ALL", "C"))) {
            session.keys("Tab");
            String picture = session.await("last [TAB]");
            assertTrue(picture.chars().allMatch(c -> c < 0x7f), picture);
        }
    }

    private static boolean alternate(TmuxSession session) {
        try {
            return session.alternateOn();
        } catch (IOException failure) {
            throw new AssertionError(failure);
        }
    }

    private static TmuxSession started(int columns, int rows, Map<String, String> environment) throws IOException {
        TmuxSession session = TmuxSession.open(columns, rows, environment);
        session.run(MAIN);
        session.await("Key board " + columns + " x " + rows);
        return session;
    }

    private static void assertSane(TmuxSession session, String lineSettings) throws IOException {
        session.awaitPrompt();
        assertFalse(session.alternateOn());
        assertTrue(session.cursorShown());
        assertFalse(session.picture().contains("Key board"), session.picture());
        assertEquals(lineSettings, session.lineSettings());
        assertEquals("still a shell", session.ask("echo still a shell"));
    }
}
