package domefold.app;

import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import domefold.records.Bookings;
import domefold.records.RecordHeader;
import domefold.sheet.Allowed;
import domefold.store.Stored;
import java.io.IOException;
import java.time.LocalDate;

/** Marks a record ordered, booked or done: an event beside it, never a change of it. */
final class RecordMarks {
    private final Console console;
    private final RecordRoom room;

    RecordMarks(Console console, RecordRoom room) {
        this.console = console;
        this.room = room;
    }

    /** What can be marked; {@code implanted} needs more than a day. */
    static RecordEvent.Kind kind(String typed) {
        for (RecordEvent.Kind kind : RecordEvent.Kind.values()) {
            if (kind.key().equals(typed) && kind != RecordEvent.Kind.IMPLANTED) {
                return kind;
            }
        }
        throw new WrongUsage("'" + typed + "' cannot be marked; write ordered, booked or done");
    }

    /**
     * Writes the event and says in a sentence what it means.
     *
     * @throws Refusal for a record that may not be ordered, booked or done
     */
    String mark(Stored stored, RecordEvent.Kind kind, LocalDate day, String note, String by) throws IOException {
        ConsultRecord record = stored.record();
        RecordHeader header = room.header(stored);
        if (kind == RecordEvent.Kind.ORDERED) {
            Allowed.toOrder(record);
        }
        Allowed.toLeave(record);
        standing(record);
        room.store(console.environment()).addEvent(new RecordEvent(record.id(), record.version(), kind, day, note, by,
                console.clock().instant(), "{}"));
        return record.id() + ": " + words(header, kind, day) + ", entered by " + by + ".";
    }

    private static void standing(ConsultRecord record) {
        if (record.status() == RecordStatus.ENTERED_IN_ERROR) {
            throw new Refusal("entered-in-error", record.id(), "case " + record.id()
                    + " was entered in error; nothing is marked on it");
        }
    }

    private static String words(RecordHeader header, RecordEvent.Kind kind, LocalDate day) {
        return switch (kind) {
            case BOOKED -> (Bookings.isForOperation(header, day) ? "operation" : "imaging") + " booked for " + day;
            case DONE -> "imaging exam " + (header.examsDone() + 1) + " done on " + day;
            default -> kind.key() + " on " + day;
        };
    }
}
