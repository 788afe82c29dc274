package domefold.app;

import domefold.line.Completing;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Lines from a pipe, a file, or a terminal without cursor movement, each after its prompt. */
final class PipedLines implements LineInput {
    private static final int MOST_BYTES = 8192;

    private final Console console;
    private final InputStream bytes;
    private final boolean echo;
    private boolean first = true;

    /**
     * @param echo true where nobody sees what was typed, so that what is printed reads as a conversation
     */
    PipedLines(Console console, boolean echo) {
        this.console = console;
        this.bytes = new BufferedInputStream(console.in());
        this.echo = echo;
    }

    @Override
    public Optional<String> next(Completing at) throws IOException {
        console.text(LineFace.PROMPT);
        Optional<String> line = line();
        if (echo) {
            console.text(line.map(PipedLines::shown).orElse("") + "\n");
        } else if (line.isEmpty()) {
            console.text("\n");
        }
        return line;
    }

    /** What lies beyond the longest line is read and dropped, so that no input fills the memory. */
    private Optional<String> line() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int next = bytes.read();
        if (next < 0) {
            return Optional.empty();
        }
        for (; next >= 0 && next != '\n'; next = bytes.read()) {
            if (line.size() < MOST_BYTES) {
                line.write(next);
            }
        }
        String text = line.toString(charset()).replaceFirst("\r$", "");
        String clean = first && text.startsWith("\uFEFF") ? text.substring(1) : text;
        first = false;
        return Optional.of(clean);
    }

    private Charset charset() {
        return console.encoding().equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : console.encoding();
    }

    private static String shown(String line) {
        return line.length() > 200 ? line.substring(0, 200) + "…" : line;
    }
}
