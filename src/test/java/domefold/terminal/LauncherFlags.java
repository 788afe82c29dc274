package domefold.terminal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What {@code scripts/run} gives to Java, asked of the scripts themselves. */
public final class LauncherFlags {
    private LauncherFlags() {}

    /** @param word the program's first, empty where there is none */
    public static List<String> list(String word) {
        try {
            Process shell = new ProcessBuilder("bash", "-c", ". scripts/lib.sh && set_java_flags \"$1\" && printf '%s\\n' \"${java_flags[@]}\"",
                    "flags", word).redirectError(ProcessBuilder.Redirect.INHERIT).start();
            String flags = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (flags.isBlank()) {
                throw new IllegalStateException("scripts/lib.sh names no flags");
            }
            return flags.lines().toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
