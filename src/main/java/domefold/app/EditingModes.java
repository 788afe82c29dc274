package domefold.app;

import org.jline.terminal.Terminal;

/** What a line reader switches on in a terminal while it reads, and itself switches off only where the line was ended. */
final class EditingModes {
    /** Marked pastes, the cursor keys of applications and the keypad of applications. */
    private static final String OFF = "\u001b[?2004l\u001b[?1l\u001b>";

    private EditingModes() {}

    /** Called where a signal ends the program in the middle of a line. */
    static void off(Terminal terminal) {
        terminal.writer().print(OFF);
        terminal.writer().flush();
    }
}
