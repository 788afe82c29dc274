package domefold.store;

import domefold.outcome.Refusal;
import domefold.patient.Case;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32C;

/** The lines of a journal. */
final class JournalText {
    private static final int DIGITS = 8;

    private JournalText() {}

    static String line(Journal.Start start) {
        JsonOut out = new JsonOut(false);
        out.object(() -> {
            out.text("format", Journal.FORMAT).text("startedAt", start.startedAt().toString())
                    .bool("practice", start.practice()).text("about", start.about());
            start.start().ifPresent(first -> out.object("case", () -> CaseWriter.fields(out, first)));
        });
        return checked(out.text());
    }

    static String line(Journal.Entry entry) {
        JsonOut out = new JsonOut(false);
        out.object(() -> out.text("at", entry.at().toString()).text("what", entry.what()).text("question", entry.question())
                .text("text", entry.text()));
        return checked(out.text());
    }

    private static String checked(String json) {
        return crc(json.strip()) + " " + json;
    }

    private static String crc(String json) {
        CRC32C crc = new CRC32C();
        crc.update(json.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().toHexDigits((int) crc.getValue());
    }

    /** The JSON of a line, without its line feed; empty where the check does not agree. */
    private static Optional<Fields> json(String line) {
        if (line.length() <= DIGITS + 1 || line.charAt(DIGITS) != ' '
                || !crc(line.substring(DIGITS + 1)).equals(line.substring(0, DIGITS))) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Fields(JsonText.object(line.substring(DIGITS + 1), "journal"), "journal", any -> {}));
        } catch (Refusal broken) {
            return Optional.empty();
        }
    }

    /** The first line; empty where it is torn or another format's. */
    static Optional<Journal.Start> start(String line) {
        try {
            return json(line).filter(fields -> fields.text("format").equals(Optional.of(Journal.FORMAT)))
                    .map(fields -> new Journal.Start(fields.needInstant("startedAt"), fields.needBool("practice"),
                            fields.object("case").map(JournalText::caseOf), fields.needText("about")));
        } catch (Refusal other) {
            return Optional.empty();
        }
    }

    private static Case caseOf(Fields fields) {
        return CaseReader.read(fields, false);
    }

    /** A later line; empty where it is torn. */
    static Optional<Journal.Entry> entry(String line) {
        try {
            return json(line).map(fields -> new Journal.Entry(fields.needInstant("at"), fields.needText("what"),
                    fields.needText("question"), fields.needText("text")));
        } catch (Refusal other) {
            return Optional.empty();
        }
    }
}
