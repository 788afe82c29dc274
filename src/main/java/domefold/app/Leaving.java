package domefold.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A word to whoever watches over the terminal that this process ended in order, by a key or a signal it could act on, and has put
 * the terminal back itself. {@code scripts/run} says where, and puts it back where the word does not come.
 */
final class Leaving {
    private static final String WHERE = "domefold.leaving";

    private Leaving() {}

    /** Has it said when this process ends, if somebody listens. */
    static void announce() {
        String where = System.getProperty(WHERE);
        if (where != null) {
            Runtime.getRuntime().addShutdownHook(new Thread(() -> say(Path.of(where)), "leaving"));
        }
    }

    private static void say(Path where) {
        try {
            Files.write(where, "left\n".getBytes(StandardCharsets.US_ASCII), StandardOpenOption.WRITE);
        } catch (IOException nobodyListens) {
            // Then nobody puts the terminal back a second time either.
        }
    }
}
