package domefold.app;

import domefold.line.Completing;
import domefold.terminal.Job;
import domefold.terminal.Tty;
import java.io.IOError;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jline.keymap.KeyMap;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;

/**
 * Lines typed on a terminal: edited, recalled, completed. What was typed stays in memory; it is about a patient, and the
 * journal alone keeps it.
 */
final class TypedLines implements LineInput {
    private final Tty tty;
    private final LineReader reader;
    private final Deque<String> pasted = new ArrayDeque<>();
    private final Attributes found;
    private volatile boolean interrupted;
    private volatile boolean takenDown;
    private Completing at;

    TypedLines(Tty tty) {
        this.tty = tty;
        // Kept between lines too: a key pressed while an answer is printed would else be taken by the line discipline.
        this.found = tty.jline().enterRawMode();
        tty.jline().handle(Terminal.Signal.INT, signal -> interrupted = true);
        tty.whenEnded(() -> {
            takenDown = true;
            EditingModes.off(tty.jline());
            tty.jline().setAttributes(found);
        });
        this.reader = LineReaderBuilder.builder().terminal(tty.jline()).appName("domefold")
                .parser(LineSoFar.parser(typed -> at.completion(typed).from()))
                .completer((reading, line, candidates) -> at.completion(line.line().substring(0, line.cursor())).words()
                        .forEach(word -> candidates.add(new Candidate(word))))
                .option(LineReader.Option.CASE_INSENSITIVE, true)
                .option(LineReader.Option.COMPLETE_MATCHER_TYPO, false)
                .option(LineReader.Option.AUTO_GROUP, false)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.HISTORY_IGNORE_SPACE, false)
                .option(LineReader.Option.AUTO_FRESH_LINE, false)
                .variable(LineReader.BELL_STYLE, "none")
                .build();
        reader.getWidgets().put("suspend", this::suspend);
        reader.getKeyMaps().get(LineReader.MAIN).bind(new Reference("suspend"), KeyMap.ctrl('Z'));
    }

    /** Gives the terminal back and stops the job, as Ctrl-Z would have; the reader draws its line again afterwards. */
    private boolean suspend() {
        tty.jline().setAttributes(found);
        try {
            Job.stop();
        } catch (IOException cannotStop) {
            // Without a program for it this goes on as if the key had not been pressed.
        }
        tty.jline().enterRawMode();
        reader.callWidget(LineReader.REDRAW_LINE);
        reader.callWidget(LineReader.REDISPLAY);
        return true;
    }

    /** Ctrl-C leaves, and Ctrl-D on an empty line. */
    @Override
    public Optional<String> next(Completing face) {
        at = face;
        if (interrupted) {
            return Optional.empty();
        }
        if (!pasted.isEmpty()) {
            String line = pasted.removeFirst();
            tty.jline().writer().println(LineFace.PROMPT + Harmless.of(line));
            tty.jline().flush();
            return Optional.of(line);
        }
        try {
            List<String> lines = reader.readLine(LineFace.PROMPT).lines().toList();
            if (lines.size() > 1) {
                pasted.addAll(lines.subList(1, lines.size()));
            }
            return Optional.of(lines.isEmpty() ? "" : lines.get(0));
        } catch (UserInterruptException | EndOfFileException leaving) {
            return Optional.empty();
        } catch (RuntimeException | IOError failure) {
            if (takenDown) {
                return Optional.empty();
            }
            throw failure;
        }
    }

    @Override
    public void close() throws IOException {
        if (!takenDown) {
            tty.jline().setAttributes(found);
            tty.whenEnded(() -> {});
        }
        tty.close();
    }
}
