package domefold.records;

import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a booking is for. A booking entered before the operation, for a day before the first exam may be held, is for the
 * operation; every other one is for imaging.
 */
public final class Bookings {
    private Bookings() {}

    /** Whether a booking entered now for that day would be for the operation. */
    public static boolean isForOperation(RecordHeader header, LocalDate day) {
        boolean operated = header.happened().stream().anyMatch(one -> one.kind() == RecordEvent.Kind.IMPLANTED);
        return !operated && isBeforeFirstExam(header, day);
    }

    /** The day the operation was last booked for. */
    public static Optional<LocalDate> operation(RecordHeader header) {
        Optional<LocalDate> booked = Optional.empty();
        for (RecordHeader.Happening one : header.happened()) {
            if (one.kind() == RecordEvent.Kind.IMPLANTED) {
                return booked;
            }
            if (one.kind() == RecordEvent.Kind.BOOKED && isBeforeFirstExam(header, one.day())) {
                booked = Optional.of(one.day());
            }
        }
        return booked;
    }

    /** The day imaging is booked for; a booking stands until an exam is entered as done after it. */
    public static Optional<LocalDate> imaging(RecordHeader header) {
        Optional<LocalDate> booked = Optional.empty();
        boolean operated = false;
        for (RecordHeader.Happening one : header.happened()) {
            operated |= one.kind() == RecordEvent.Kind.IMPLANTED;
            if (one.kind() == RecordEvent.Kind.DONE) {
                booked = Optional.empty();
            } else if (one.kind() == RecordEvent.Kind.BOOKED && (operated || !isBeforeFirstExam(header, one.day()))) {
                booked = Optional.of(one.day());
            }
        }
        return booked;
    }

    /** Cases whose operation is booked for that day, in the order of the list. */
    public static List<RecordHeader> operatedOn(List<RecordHeader> headers, LocalDate day) {
        return headers.stream().filter(header -> !header.practice() && header.status().isFrozen()
                && header.status() != RecordStatus.ENTERED_IN_ERROR)
                .filter(header -> operation(header).filter(day::equals).isPresent()).toList();
    }

    private static boolean isBeforeFirstExam(RecordHeader header, LocalDate day) {
        return header.exams().isEmpty() || header.exams().get().earliest().isEmpty()
                || day.isBefore(header.exams().get().earliest().get(0));
    }
}
