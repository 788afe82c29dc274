package domefold.app;

import java.lang.reflect.InvocationTargetException;

/** Whether somebody sits in front of it. */
final class TerminalCheck {
    private static final int CONSOLE_WITHOUT_TERMINAL = 22;

    private TerminalCheck() {}

    /** True when standard input and output are both a terminal. */
    static boolean isThere() {
        java.io.Console console = System.console();
        if (console == null || Runtime.version().feature() < CONSOLE_WITHOUT_TERMINAL) {
            return console != null;
        }
        try {
            // From Java 22 on there is a console without a terminal too, and a method that tells them apart.
            return (Boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException failure) {
            return false;
        }
    }
}
