package domefold.app;

import domefold.export.Exports;
import domefold.export.pdf.Paper;
import domefold.store.AtomicFile;
import domefold.store.Stored;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "export", description = {"One record in another format: pdf (clinical summary), patient and order (sheets,"
        + " PDF), ics (reminders), fhir (bundle).", ""},
        footer = {"", "Example: domefold records export K-2041 --as ics --out reminders.ics"})
final class ExportCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "ID", description = "The case code.")
    private String id;

    @Option(names = "--as", paramLabel = "FORMAT", required = true, description = "pdf, patient, order, ics or fhir.")
    private String format;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to; a file of that name is replaced. Otherwise standard"
            + " output.")
    private String out;

    ExportCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Exports.Format asked = Exports.Format.of(format);
        Stored stored = new RecordRoom(root.homes()).newest(id);
        byte[] bytes = Exports.of(stored.record(), stored.loaded().sha256(), asked, Paper.A4);
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
