package domefold.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.time.ZoneOffset;

/** Where the detail of a defect goes, so that none of it reaches the screen. */
final class DefectLog {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS");

    private DefectLog() {}

    /** Writes the detail and returns the second half of a sentence that says where it is. */
    static String write(Console console, Throwable defect) {
        try {
            Path folder = folder(console);
            Files.createDirectories(folder);
            Path file = folder.resolve("defect-" + NAME.format(console.clock().instant().atOffset(ZoneOffset.UTC)) + ".log");
            StringWriter detail = new StringWriter();
            defect.printStackTrace(new PrintWriter(detail, true));
            Files.writeString(file, "domefold " + domefold.store.ProgramVersion.text() + ", Java "
                    + System.getProperty("java.version") + "\n" + detail);
            return "the detail is in " + file;
        } catch (IOException | RuntimeException failure) {
            return "the detail could not be logged";
        }
    }

    private static Path folder(Console console) {
        String home = console.environment().getOrDefault("DOMEFOLD_HOME", "");
        if (!home.isEmpty()) {
            return console.path(home).resolve("log");
        }
        String state = console.environment().getOrDefault("XDG_STATE_HOME", "");
        Path base = state.startsWith("/") ? Path.of(state) : console.userHome().resolve(".local").resolve("state");
        return base.resolve("domefold").resolve("log");
    }
}
