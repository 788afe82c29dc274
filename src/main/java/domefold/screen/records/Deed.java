package domefold.screen.records;

import domefold.outcome.Refusal;
import domefold.record.RecordEvent;
import domefold.records.RecordHeader;
import domefold.screen.Effect;
import java.time.DateTimeException;
import java.time.LocalDate;

/** What can be done to the record in focus; each is asked for once more, beside the two facts that name the record. */
enum Deed {
    PRINT("Print the clinical summary (PDF) into", "pdf", "pdf", null),
    PRINT_ORDER("Print the order sheet (PDF) into", "order", "pdf", null),
    ORDERED("Ordered on", "", "", RecordEvent.Kind.ORDERED),
    BOOKED("Booked for", "", "", RecordEvent.Kind.BOOKED),
    DONE("Imaging done on", "", "", RecordEvent.Kind.DONE);

    private final String words;
    private final String format;
    private final String ending;
    private final RecordEvent.Kind kind;

    Deed(String words, String format, String ending, RecordEvent.Kind kind) {
        this.words = words;
        this.format = format;
        this.ending = ending;
        this.kind = kind;
    }

    String words() {
        return words;
    }

    /** What stands on the line at first. A booking has no day that could be guessed. */
    String proposal(RecordHeader header, LocalDate today) {
        if (kind == null) {
            return header.id().replaceAll("[^A-Za-z0-9_-]", "_") + "-v" + header.version() + "-" + format + "." + ending;
        }
        return kind == RecordEvent.Kind.BOOKED ? "" : today.toString();
    }

    /**
     * What the shell is asked for.
     *
     * @throws Refusal if the line is no day or no file name
     */
    Effect effect(RecordHeader header, String typed) {
        String line = typed.strip();
        if (kind == null) {
            if (line.isEmpty()) {
                throw new Refusal("no-file", "file", "Name a file.");
            }
            return new Effect.WriteRecord(header.id(), format, line);
        }
        try {
            return new Effect.MarkRecord(header.id(), kind, LocalDate.parse(line));
        } catch (DateTimeException wrong) {
            throw new Refusal("no-day", "day", "Write the day as 2026-03-20.");
        }
    }
}
