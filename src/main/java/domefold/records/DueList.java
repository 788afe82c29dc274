package domefold.records;

import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Who is due for imaging in a month, those who are late included. The dates are the ones agreed on and saved; nothing is
 * counted anew. The next exam of a case is the first that was not yet entered as done.
 */
public final class DueList {
    private static final Comparator<Due> LATEST_FIRST =
            Comparator.comparing(Due::how).thenComparing(Due::lastDay).thenComparing(due -> due.header().id());

    private DueList() {}

    /** How an exam stands in the month asked for. */
    public enum How {
        OVERDUE("overdue"),
        CLOSES("last month"),
        OPENS("from this month"),
        OPEN("may be booked");

        private final String words;

        How(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * An exam that is due.
     *
     * @param exam which exam, 1 for the first
     * @param firstDay earliest day by the schedule
     * @param lastDay latest day by the schedule; the earliest again where the schedule has no later reading
     * @param booked the day it is booked for, if it is
     * @param implanted false where no operation was entered, so that the dates may be premature
     */
    public record Due(RecordHeader header, int exam, String scheduleId, String issuer, LocalDate firstDay, LocalDate lastDay,
            How how, Optional<LocalDate> booked, boolean implanted) {

        /** Why it stands on the list, in a sentence. */
        public String reason() {
            String window = firstDay.equals(lastDay) ? "due " + firstDay : "due " + firstDay + " to " + lastDay;
            return "exam " + exam + " by schedule " + scheduleId + " (" + issuer + "), " + window + ", " + how.words()
                    + booked.map(day -> ", booked for " + day).orElse("")
                    + (implanted ? "" : ", no operation entered");
        }
    }

    /** What is due in that month: overdue first, then what must be done within it, then what may be. */
    public static List<Due> of(List<RecordHeader> headers, YearMonth month) {
        List<Due> due = new ArrayList<>();
        for (RecordHeader header : headers) {
            boolean counts = !header.practice() && header.status().isFrozen()
                    && header.status() != RecordStatus.ENTERED_IN_ERROR;
            if (counts && header.exams().isPresent()) {
                next(header, header.exams().get(), month).ifPresent(due::add);
            }
        }
        due.sort(LATEST_FIRST);
        return List.copyOf(due);
    }

    private static Optional<Due> next(RecordHeader header, RecordHeader.ExamDates dates, YearMonth month) {
        int index = header.examsDone();
        if (index >= dates.earliest().size()) {
            return Optional.empty();
        }
        LocalDate first = dates.earliest().get(index);
        LocalDate last = index < dates.latest().size() && dates.latest().get(index).isAfter(first)
                ? dates.latest().get(index) : first;
        if (first.isAfter(month.atEndOfMonth())) {
            return Optional.empty();
        }
        How how = last.isBefore(month.atDay(1)) ? How.OVERDUE
                : !last.isAfter(month.atEndOfMonth()) ? How.CLOSES
                : first.isBefore(month.atDay(1)) ? How.OPEN : How.OPENS;
        boolean implanted = header.happened().stream().anyMatch(one -> one.kind() == RecordEvent.Kind.IMPLANTED);
        return Optional.of(new Due(header, index + 1, dates.scheduleId(), dates.issuer(), first, last, how, Bookings.imaging(header),
                implanted));
    }
}
