package domefold.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The world as the commands see it.
 *
 * @param out standard output
 * @param err standard error
 * @param environment variables
 * @param folder what relative paths are relative to
 * @param clock the day and time
 * @param terminal whether both ends are a terminal
 * @param encoding what a reader of text output expects; JSON is UTF-8 always
 * @param in standard input, read by the line face alone and only where there is no terminal to edit a line on
 */
public record Console(OutputStream out, OutputStream err, Map<String, String> environment, Path folder, Clock clock,
        boolean terminal, Charset encoding, InputStream in) {

    /** Nothing on standard input. */
    Console(OutputStream out, OutputStream err, Map<String, String> environment, Path folder, Clock clock, boolean terminal,
            Charset encoding) {
        this(out, err, environment, folder, clock, terminal, encoding, InputStream.nullInputStream());
    }

    /** This process's own. */
    static Console ofProcess() {
        return new Console(new java.io.FileOutputStream(java.io.FileDescriptor.out),
                new java.io.FileOutputStream(java.io.FileDescriptor.err), System.getenv(), Path.of(""),
                new LateClock(), TerminalCheck.isThere(), encodingOf(System.getProperty("native.encoding")),
                new java.io.FileInputStream(java.io.FileDescriptor.in));
    }

    private static Charset encodingOf(String name) {
        return name != null && Charset.isSupported(name) ? Charset.forName(name) : StandardCharsets.US_ASCII;
    }

    /** A text answer; what the encoding lacks is spelled in ASCII, and nothing in it can steer a terminal. */
    void text(String text) {
        write(out, encoded(text).getBytes(textEncoding()));
    }

    /** A JSON answer. */
    void json(String json) {
        write(out, json.getBytes(StandardCharsets.UTF_8));
    }

    /** Bytes of a file for another program. */
    void bytes(byte[] content) {
        write(out, content);
    }

    /** A result in the form asked for; only that form is made. */
    void answer(boolean asJson, Supplier<String> text, Supplier<String> json) {
        if (asJson) {
            json(json.get());
        } else {
            text(text.get());
        }
    }

    /** One sentence on standard error. */
    void say(String sentence) {
        write(err, encoded(sentence.strip().replaceAll("\\s*\\R\\s*", " ") + "\n").getBytes(textEncoding()));
    }

    private String encoded(String text) {
        String plain = Harmless.of(text);
        return textEncoding() == StandardCharsets.UTF_8 ? plain : domefold.canvas.Spelling.ascii(plain);
    }

    private Charset textEncoding() {
        return encoding.equals(StandardCharsets.UTF_8) ? StandardCharsets.UTF_8 : StandardCharsets.US_ASCII;
    }

    private static void write(OutputStream to, byte[] bytes) {
        try {
            to.write(bytes);
            to.flush();
        } catch (IOException failure) {
            if (String.valueOf(failure.getMessage()).contains("Broken pipe")) {
                throw new ReaderGone();
            }
            throw new UncheckedIOException(failure);
        }
    }

    /** The user's home folder as the environment names it; where that is no absolute path, as the system does. */
    Path userHome() {
        String said = environment.getOrDefault("HOME", "");
        return Path.of(said.startsWith("/") ? said : System.getProperty("user.home"));
    }

    /** The same for a path that was typed as one. */
    Path path(Path typed) {
        return folder.resolve(typed);
    }

    /** A path as typed, made absolute. */
    Path path(String typed) {
        return folder.resolve(typed);
    }
}
