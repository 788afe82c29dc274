package domefold.app;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;

/** One command line run inside the test, on a fixed day, with a home of its own. */
record Cli(int exit, String out, String err) {
    static final Clock DAY = Clock.fixed(Instant.parse("2026-03-04T10:15:30Z"), ZoneOffset.UTC);

    static Cli run(Path home, String... args) {
        return run(home, StandardCharsets.UTF_8, args);
    }

    /** The command with that on its standard input. */
    static Cli piped(Path home, Charset encoding, byte[] input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = CommandShell.run(args, new Console(out, err, Map.of("DOMEFOLD_HOME", home.toString()), Path.of(""), DAY,
                false, encoding, new ByteArrayInputStream(input)));
        return new Cli(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static Cli run(Path home, Charset encoding, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = CommandShell.run(args, console(home, out, err, encoding));
        return new Cli(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static Console console(Path home, OutputStream out, OutputStream err, Charset encoding) {
        return new Console(out, err, Map.of("DOMEFOLD_HOME", home.toString()), Path.of(""), DAY, false, encoding);
    }

    /** A standard output that cannot be written. */
    static OutputStream failing(String reason) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(reason);
            }
        };
    }
}
