package domefold.app;

import domefold.terminal.Tty;
import java.util.List;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;

/** Shows text by the height of the terminal. */
final class Pager {
    private static final int LEAST_ROWS = 5;

    private final Console console;
    private final Tty tty;
    private final LineReader reader;

    Pager(Console console, Tty tty) {
        this.console = console;
        this.tty = tty;
        this.reader = LineReaderBuilder.builder().terminal(tty.jline()).appName("domefold")
                .variable(LineReader.DISABLE_HISTORY, true).option(LineReader.Option.AUTO_FRESH_LINE, false)
                .variable(LineReader.BELL_STYLE, "none").build();
    }

    /** A page at a time; {@code q} or Ctrl-C leaves the rest. */
    void show(String text) {
        List<String> lines = text.replace("\r", "").lines().toList();
        int page = Math.max(LEAST_ROWS, tty.jline().getHeight() - 1);
        for (int from = 0; from < lines.size(); from += page) {
            int to = Math.min(lines.size(), from + page);
            console.text(String.join("\n", lines.subList(from, to)) + "\n");
            if (to < lines.size() && !goesOn(lines.size() - to)) {
                return;
            }
        }
    }

    private boolean goesOn(int left) {
        try {
            return !reader.readLine("-- " + left + " more lines: Enter goes on, q leaves -- ").strip().startsWith("q");
        } catch (UserInterruptException | EndOfFileException leaving) {
            return false;
        }
    }
}
