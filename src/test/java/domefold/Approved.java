package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Text that a person has looked at and approved, one file each under {@code src/test/resources/approved}.
 *
 * <p>A missing picture fails, a different one fails; only {@code -Dapproved.update=true} writes, and then the person
 * who ran it reads the difference before committing it. What was found instead lies under {@code target/approved}.
 */
public final class Approved {
    private static final Path PICTURES = Path.of("src/test/resources/approved");
    private static final Path FOUND = Path.of("target/approved");

    private Approved() {}

    /** Fails unless the text is the approved picture of that name, for example {@code limits-80x24}. */
    public static void check(String name, String text) {
        if (!name.matches("[a-z0-9][a-z0-9.-]*")) {
            throw new IllegalArgumentException("a picture's name is lower case with dashes, got '" + name + "'");
        }
        Path picture = PICTURES.resolve(name + ".txt");
        try {
            if (Boolean.getBoolean("approved.update")) {
                write(picture, text);
                return;
            }
            if (!Files.exists(picture)) {
                write(FOUND.resolve(name + ".txt"), text);
                fail("no approved picture " + picture + "; look at " + FOUND.resolve(name + ".txt")
                        + ", then run with -Dapproved.update=true");
            }
            String approved = Files.readString(picture);
            if (!approved.equals(text)) {
                write(FOUND.resolve(name + ".txt"), text);
                assertEquals(approved, text, picture.toString());
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }
}
