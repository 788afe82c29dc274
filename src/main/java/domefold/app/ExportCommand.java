package domefold.app;

import domefold.store.AtomicFile;
import domefold.store.Stored;
import java.nio.file.Path;
import java.util.Iterator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "export", description = {"One record in another format: text or pdf (clinical summary), patient and order"
        + " (sheets, PDF), ics (reminders), fhir (bundle), json (the record itself).", ""},
        footer = {"", "Example: domefold records export K-2041 --as ics --out reminders.ics"})
final class ExportCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "ID", description = "The case code.")
    private String id;

    @Option(names = "--as", paramLabel = "FORMAT", required = true, completionCandidates = Formats.class,
            description = "text, pdf, patient, order, ics, fhir or json.")
    private String format;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to; a file of that name is replaced. Otherwise standard"
            + " output.")
    private Path out;

    /** What the completion script offers. */
    static final class Formats implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return RecordOut.formats().iterator();
        }
    }

    ExportCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Stored stored = new RecordRoom(root.homes()).newest(id);
        byte[] bytes = RecordOut.bytes(stored, format);
        if (out == null) {
            root.console().bytes(bytes);
        } else {
            Path file = root.console().path(out);
            AtomicFile.replace(file, bytes);
            root.console().say("written: " + file);
        }
        return Exit.DONE;
    }
}
