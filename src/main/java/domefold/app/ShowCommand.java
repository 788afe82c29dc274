package domefold.app;

import domefold.record.RecordEvent;
import domefold.report.HappenedText;
import domefold.store.RecordDiff;
import domefold.store.Stored;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "show", description = {"One record: its summary and what happened since, or with json the file itself.", ""},
        footer = {"", "Example: domefold records show K-2041"})
final class ShowCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "ID", description = "The case code.")
    private String id;

    @Option(names = "--version-number", paramLabel = "N", converter = NumberConverter.class,
            description = "An earlier version; the newest without it.")
    private int number;

    @Mixin
    private As as;

    ShowCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        RecordRoom room = new RecordRoom(root.homes());
        Stored stored = room.version(id, number);
        if (as.json()) {
            root.console().bytes(Files.readAllBytes(stored.file()));
        } else {
            root.console().text(text(room, stored));
        }
        return Exit.DONE;
    }

    static final class NumberConverter extends WholeConverter {
        NumberConverter() {
            super(1, Integer.MAX_VALUE);
        }
    }

    /** The summary, then what is beside the record: events, and versions that lost a clash. */
    static String text(RecordRoom room, Stored stored) throws IOException {
        String id = stored.record().id();
        List<RecordEvent> events = room.shelf().events(id);
        StringBuilder out = new StringBuilder(ConsultSaving.summary(stored.loaded()));
        out.append(HappenedText.events(events));
        for (Stored other : room.shelf().conflicts(id)) {
            out.append(HappenedText.clash(other.file().getFileName().toString(), other.record(),
                    RecordDiff.between(stored.record(), other.record())));
        }
        return out.toString();
    }
}
