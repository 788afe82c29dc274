package domefold.terminal;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Standard error while the screen is painted: held back, so that no library writes across it, and printed afterwards. */
final class HeldErrors {
    private final PrintStream before = System.err;
    private final ByteArrayOutputStream held = new ByteArrayOutputStream();

    HeldErrors() {
        System.setErr(new PrintStream(held, true, StandardCharsets.UTF_8));
    }

    void release() {
        System.setErr(before);
        before.print(held.toString(StandardCharsets.UTF_8));
        before.flush();
    }
}
