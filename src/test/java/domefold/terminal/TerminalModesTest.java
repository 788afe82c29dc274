package domefold.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalModesTest {
    @Test
    void coloursFollowTheEnvironment() {
        assertEquals(ColourMode.ANSI_16, colour(Map.of("TERM", "xterm")));
        assertEquals(ColourMode.ANSI_16, colour(Map.of("TERM", "vt525")));
        assertEquals(ColourMode.ANSI_16, colour(Map.of("TERM", "an-unknown-name")));
        for (String one : new String[] {"vt100", "vt220", "vt320-w", "xterm-mono", "linux-m"}) {
            assertEquals(ColourMode.NONE, colour(Map.of("TERM", one)), one);
        }
        assertEquals(ColourMode.INDEXED_256, colour(Map.of("TERM", "tmux-256color")));
        assertEquals(ColourMode.RGB, colour(Map.of("TERM", "xterm-256color", "COLORTERM", "truecolor")));
        assertEquals(ColourMode.RGB, colour(Map.of("TERM", "xterm", "COLORTERM", "24bit")));
        assertEquals(ColourMode.NONE, colour(Map.of("TERM", "dumb", "COLORTERM", "truecolor")));
        assertEquals(ColourMode.NONE, colour(Map.of()));
    }

    @Test
    void noColourCountsOnlyWhenItIsNotEmpty() {
        assertEquals(ColourMode.NONE, colour(Map.of("TERM", "xterm-256color", "NO_COLOR", "0")));
        assertEquals(ColourMode.INDEXED_256, colour(Map.of("TERM", "xterm-256color", "NO_COLOR", "")));
    }

    @Test
    void charactersFollowTheFirstLocaleVariableThatIsNotEmpty() {
        assertTrue(TerminalModes.detect(Map.of("TERM", "xterm", "LANG", "en_GB.UTF-8")).utf8());
        assertTrue(TerminalModes.detect(Map.of("TERM", "xterm", "LC_ALL", "", "LC_CTYPE", "C.utf8", "LANG", "C")).utf8());
        assertFalse(TerminalModes.detect(Map.of("TERM", "xterm", "LC_ALL", "C", "LANG", "en_GB.UTF-8")).utf8());
        assertFalse(TerminalModes.detect(Map.of("TERM", "linux", "LANG", "en_GB.UTF-8")).utf8());
        assertFalse(TerminalModes.detect(Map.of("TERM", "xterm")).utf8());
    }

    @Test
    void theGroundIsTakenFromTheTerminalWhereItSays() {
        assertEquals(Ground.LIGHT, ground("COLORFGBG", "0;15"));
        assertEquals(Ground.LIGHT, ground("COLORFGBG", "0;default;7"));
        assertEquals(Ground.DARK, ground("COLORFGBG", "15;0"));
        assertEquals(Ground.DARK, ground("COLORFGBG", "15;8"));
        assertEquals(Ground.UNKNOWN, ground("COLORFGBG", "x;"));
        assertEquals(Ground.UNKNOWN, ground("COLORFGBG", "15;default"));
        assertEquals(Ground.UNKNOWN, TerminalModes.detect(Map.of("TERM", "xterm")).ground());
        assertEquals(Ground.DARK, TerminalModes.detect(Map.of("TERM", "linux")).ground());
    }

    @Test
    void whatTheUserSaysOfTheGroundStandsAboveTheTerminal() {
        assertEquals(Ground.LIGHT, ground("DOMEFOLD_GROUND", "light"));
        assertEquals(Ground.DARK, ground("DOMEFOLD_GROUND", "Dark"));
        assertEquals(Ground.DARK, TerminalModes.detect(Map.of("TERM", "xterm", "COLORFGBG", "0;15", "DOMEFOLD_GROUND", "dark")).ground());
        assertEquals(Ground.LIGHT, TerminalModes.detect(Map.of("TERM", "linux", "DOMEFOLD_GROUND", "light")).ground());
        assertFalse(TerminalModes.detect(Map.of("TERM", "xterm", "LC_ALL", "C.UTF-8", "DOMEFOLD_ASCII", "1")).utf8());
    }

    private static Ground ground(String name, String value) {
        return TerminalModes.detect(Map.of("TERM", "xterm", name, value)).ground();
    }

    @Test
    void aDumbTerminalIsNotPainted() {
        assertFalse(TerminalModes.detect(Map.of("TERM", "dumb")).fullScreen());
        assertFalse(TerminalModes.detect(Map.of()).fullScreen());
        assertTrue(TerminalModes.detect(Map.of("TERM", "screen")).fullScreen());
    }

    private static ColourMode colour(Map<String, String> environment) {
        return TerminalModes.detect(environment).colour();
    }
}
