package domefold.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The version this program was built as; it travels into every plan and record. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /** For example {@code 0.1.0}. */
    public static String text() {
        try {
            byte[] bytes = Shipped.bytes("version.txt")
                    .orElseThrow(() -> new IllegalStateException("the program was built without version.txt"));
            return new String(bytes, StandardCharsets.UTF_8).strip();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
