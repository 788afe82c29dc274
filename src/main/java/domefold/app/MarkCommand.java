package domefold.app;

import domefold.record.RecordEvent;
import domefold.store.AnswerJson;
import domefold.store.Stored;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "mark", description = {"Enters that a case was ordered, is booked, or that an imaging exam was done. The"
        + " record itself never changes.", ""},
        footer = {"", "Example: domefold records mark K-2041 booked --on 2026-03-20"})
final class MarkCommand implements Runner {
    private final Domefold root;

    @Parameters(index = "0", paramLabel = "ID", description = "The case code.")
    private String id;

    @Parameters(index = "1", paramLabel = "ordered|booked|done", completionCandidates = KindWords.class,
            description = "What happened. A booking before the operation and before the first exam may be held is for the"
                    + " operation, any other for imaging.")
    private String what;

    @Option(names = "--on", paramLabel = "DATE", description = "The day; today without it. A booking needs it.")
    private String on;

    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "In words; no name is needed.")
    private String note;

    @Mixin
    private By by;

    @Mixin
    private As as;

    /** What the completion script offers: all but the one that {@code implanted} enters. */
    static final class KindWords implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stream.of(RecordEvent.Kind.values()).filter(kind -> kind != RecordEvent.Kind.IMPLANTED)
                    .map(RecordEvent.Kind::key).iterator();
        }
    }

    MarkCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        RecordEvent.Kind kind = RecordMarks.kind(what);
        if (on == null && kind == RecordEvent.Kind.BOOKED) {
            throw new WrongUsage("a booking has a day: --on 2026-03-20");
        }
        LocalDate day = on == null ? LocalDate.now(root.console().clock()) : Days.day(on);
        RecordRoom room = new RecordRoom(root.homes());
        Stored stored = room.newest(id);
        if (!as.json()) {
            root.console().say(RecordFacts.of(room.header(stored)));
        }
        String said = new RecordMarks(root.console(), room).mark(stored, kind, day, note, by.name(root.console()));
        root.console().answer(as.json(), () -> said + "\n", () -> AnswerJson.text(json(stored, kind, day, said)));
        return Exit.DONE;
    }

    private static Map<String, Object> json(Stored stored, RecordEvent.Kind kind, LocalDate day, String said) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-mark/1");
        json.put("id", stored.record().id());
        json.put("version", stored.version());
        json.put("kind", kind.key());
        json.put("day", day);
        json.put("text", said);
        return json;
    }
}
