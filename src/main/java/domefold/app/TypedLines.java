package domefold.app;

import domefold.line.LineConsult;
import domefold.terminal.Tty;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;

/**
 * Lines typed on a terminal: edited, recalled, completed. What was typed stays in memory; it is about a patient, and the
 * journal alone keeps it.
 */
final class TypedLines implements LineInput {
    private final Tty tty;
    private final LineReader reader;
    private final Deque<String> pasted = new ArrayDeque<>();
    private LineConsult at;

    TypedLines(Tty tty) {
        this.tty = tty;
        DefaultParser words = new DefaultParser();
        words.setEscapeChars(null);
        words.setQuoteChars(new char[0]);
        this.reader = LineReaderBuilder.builder().terminal(tty.jline()).appName("domefold").parser(words)
                .completer((reading, line, candidates) -> at.completions(line.line().substring(0, line.cursor()))
                        .forEach(word -> candidates.add(new Candidate(word))))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.HISTORY_IGNORE_SPACE, false)
                .option(LineReader.Option.AUTO_FRESH_LINE, false)
                .variable(LineReader.BELL_STYLE, "none")
                .build();
    }

    /** Ctrl-C and Ctrl-D on an empty line leave. */
    @Override
    public Optional<String> next(LineConsult consult) {
        at = consult;
        if (!pasted.isEmpty()) {
            return Optional.of(pasted.removeFirst());
        }
        try {
            List<String> lines = reader.readLine(LineFace.PROMPT).lines().toList();
            if (lines.size() > 1) {
                pasted.addAll(lines.subList(1, lines.size()));
            }
            return Optional.of(lines.isEmpty() ? "" : lines.get(0));
        } catch (UserInterruptException | EndOfFileException leaving) {
            return Optional.empty();
        }
    }

    @Override
    public void close() throws IOException {
        tty.close();
    }
}
