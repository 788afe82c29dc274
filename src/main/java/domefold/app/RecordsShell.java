package domefold.app;

import domefold.outcome.Refusal;
import domefold.screen.records.DueScreen;
import domefold.screen.records.RecordsScreen;
import domefold.store.Stored;
import domefold.terminal.FullScreen;
import domefold.terminal.Tty;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;

/**
 * The coordinator's shell: the commands of {@code domefold records} without those two words, edited, recalled and completed;
 * {@code list} and {@code calendar} open on the full screen. What was typed stays in memory.
 */
final class RecordsShell {
    private static final String PROMPT = "records> ";
    private static final List<String> LEAVING = List.of("leave", "quit", "exit");

    private final Workbench bench;
    private final Tty tty;
    private final RecordsEffects effects;
    private final ShellWords words;
    private final DefaultParser parser = new DefaultParser();
    private final LineReader reader;
    private final Pager pager;

    RecordsShell(Workbench bench, Tty tty) {
        this.bench = bench;
        this.tty = tty;
        this.effects = new RecordsEffects(bench);
        this.words = new ShellWords(bench.homes());
        parser.setEscapeChars(null);
        this.reader = LineReaderBuilder.builder().terminal(tty.jline()).appName("domefold").parser(parser).completer(words)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.AUTO_FRESH_LINE, false)
                .variable(LineReader.BELL_STYLE, "none").build();
        this.pager = new Pager(bench.console(), tty);
    }

    /** Until it is left. */
    int run() throws IOException {
        bench.console().text("Records. `find WORDS`, `show ID`, `order ID`, `due`; `list` opens the list,\n"
                + "`help` names the rest, `leave` leaves.\n");
        while (true) {
            // Said anew, because a list on the full screen says its own.
            tty.whenEnded(() -> EditingModes.off(tty.jline()));
            try {
                List<String> typed = new ArrayList<>(parser.parse(reader.readLine(PROMPT), 0).words());
                typed.removeIf(String::isBlank);
                if (!typed.isEmpty() && LEAVING.contains(typed.get(0))) {
                    return Exit.DONE;
                }
                if (!typed.isEmpty()) {
                    carryOut(typed);
                }
            } catch (UserInterruptException abandoned) {
                if (abandoned.getPartialLine().isEmpty()) {
                    return Exit.DONE;
                }
            } catch (EndOfFileException end) {
                return Exit.DONE;
            }
        }
    }

    private void carryOut(List<String> typed) throws IOException {
        String first = typed.get(0);
        List<String> rest = typed.subList(1, typed.size());
        if (first.equals("list")) {
            new FullScreen(tty).run(effects.screen(String.join(" ", rest), Optional.empty()), effects);
        } else if (first.equals("calendar")) {
            calendar(rest);
        } else if (first.equals("help")) {
            command(List.of("--help"));
        } else {
            command(words.isCommand(first) ? toFile(typed) : found(typed));
        }
        words.forget();
    }

    /** Anything that is no command is looked for. */
    private static List<String> found(List<String> typed) {
        List<String> line = new ArrayList<>(typed);
        line.add(0, "find");
        return line;
    }

    private void calendar(List<String> rest) throws IOException {
        try {
            YearMonth month = rest.isEmpty() ? YearMonth.now(bench.console().clock()) : Days.month(rest.get(0));
            RecordsScreen list = effects.screen("", Optional.empty());
            new FullScreen(tty).run(DueScreen.of(list, month), effects);
        } catch (WrongUsage wrong) {
            bench.console().say(wrong.getMessage());
        }
    }

    /** An export without a file would be written over the shell. */
    private List<String> toFile(List<String> typed) throws IOException {
        int as = typed.indexOf("--as");
        if (!typed.get(0).equals("export") || typed.contains("--out") || as < 0 || as + 1 >= typed.size() || typed.size() < 4) {
            return typed;
        }
        try {
            String id = typed.get(1).startsWith("-") ? typed.get(typed.size() - 1) : typed.get(1);
            Stored stored = new RecordRoom(bench.homes()).newest(id);
            List<String> line = new ArrayList<>(typed);
            line.add("--out");
            line.add(RecordOut.fileName(stored, typed.get(as + 1)));
            return line;
        } catch (Refusal saidByTheCommand) {
            return typed;
        }
    }

    private void command(List<String> typed) {
        List<String> arguments = new ArrayList<>(typed);
        arguments.add(0, "records");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Console console = bench.console();
        Console captured = new Console(out, console.err(), console.environment(), console.folder(), console.clock(), true,
                console.encoding(), console.in());
        CommandShell.run(arguments.toArray(String[]::new), captured,
                new Domefold(captured, new FacesInShell(tty), Optional.of(bench.homes())));
        pager.show(out.toString(StandardCharsets.UTF_8));
    }
}
