package domefold.records;

import domefold.device.Fill;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import domefold.record.Settlement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a list shows and searches of one case: its newest version and what happened since.
 *
 * @param day the day of the consult
 * @param author who signed or wrote it
 * @param amendments how many versions came after the first
 * @param happened events in the order they were entered
 * @param words everything that may be searched for, in lower case
 */
public record RecordHeader(
        String id,
        int version,
        RecordStatus status,
        boolean practice,
        LocalDate day,
        Instant savedAt,
        String author,
        int amendments,
        Optional<SideLine> left,
        Optional<SideLine> right,
        Optional<ExamDates> exams,
        List<Happening> happened,
        String words) {

    /** Newest consult first; within a day by code. */
    public static final Comparator<RecordHeader> NEWEST_FIRST =
            Comparator.comparing(RecordHeader::day).reversed().thenComparing(RecordHeader::id);

    public RecordHeader {
        happened = List.copyOf(happened);
    }

    /** What was settled on one side. */
    public record SideLine(String deviceId, String line, Fill fill, double nominalMl, double fillMl) {}

    /** Dates of exams as agreed on, the earliest and the latest reading of the schedule. */
    public record ExamDates(String scheduleId, String issuer, List<LocalDate> earliest, List<LocalDate> latest) {
        public ExamDates {
            earliest = List.copyOf(earliest);
            latest = List.copyOf(latest);
        }
    }

    /** Something that happened after signing. */
    public record Happening(RecordEvent.Kind kind, LocalDate day) {}

    /**
     * The header of a case.
     *
     * @param record its newest version
     * @param events what happened since
     */
    public static RecordHeader of(ConsultRecord record, List<RecordEvent> events) {
        List<Happening> happened = events.stream().sorted(Comparator.comparing(RecordEvent::at))
                .map(event -> new Happening(event.kind(), event.day())).toList();
        Optional<ExamDates> exams = record.followUp().map(plan -> new ExamDates(plan.scheduleId(), plan.issuer(),
                plan.densest().stream().map(reminder -> reminder.date()).toList(),
                plan.sparsest().stream().map(reminder -> reminder.date()).toList()));
        return of(record.id(), record.version(), record.status(), record.practice(), record.inputs().date(),
                record.authorship().savedAt(), record.authorship().author(), record.version() - 1,
                record.left().map(RecordHeader::line), record.right().map(RecordHeader::line), exams, happened);
    }

    /** A header from its parts; the searchable words follow from them. */
    public static RecordHeader of(String id, int version, RecordStatus status, boolean practice, LocalDate day,
            Instant savedAt, String author, int amendments, Optional<SideLine> left, Optional<SideLine> right,
            Optional<ExamDates> exams, List<Happening> happened) {
        return of(id, version, status, practice, day, savedAt, author, amendments, left, right, exams, happened,
                sharedWords(status, author, left, right, exams));
    }

    /** As above, with the words that it shares with like records made once for all of them. */
    public static RecordHeader of(String id, int version, RecordStatus status, boolean practice, LocalDate day,
            Instant savedAt, String author, int amendments, Optional<SideLine> left, Optional<SideLine> right,
            Optional<ExamDates> exams, List<Happening> happened, String sharedWords) {
        String words = id.toLowerCase(Locale.ROOT) + ' ' + day + sharedWords;
        for (Happening one : happened) {
            words = words + ' ' + one.kind().key();
        }
        return new RecordHeader(id, version, status, practice, day, savedAt, author, amendments, left, right, exams, happened,
                words);
    }

    /** The searchable words of everything but code, day and events, in lower case. */
    public static String sharedWords(RecordStatus status, String author, Optional<SideLine> left, Optional<SideLine> right,
            Optional<ExamDates> exams) {
        StringBuilder words = new StringBuilder(" ").append(status.words()).append(' ').append(author);
        left.ifPresent(line -> words.append(" left ").append(words(line)));
        right.ifPresent(line -> words.append(" right ").append(words(line)));
        exams.ifPresent(dates -> words.append(' ').append(dates.scheduleId()).append(' ').append(dates.issuer()));
        return words.toString().toLowerCase(Locale.ROOT);
    }

    public Optional<SideLine> side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** Where the case stands, in a word: the last thing that happened, else its status. */
    public String stands() {
        return happened.isEmpty() || !status.isFrozen() || status == RecordStatus.ENTERED_IN_ERROR ? status.words()
                : happened.get(happened.size() - 1).kind().key();
    }

    /** How many exams were entered as done. */
    public int examsDone() {
        return (int) happened.stream().filter(one -> one.kind() == RecordEvent.Kind.DONE).count();
    }

    private static SideLine line(Settlement settled) {
        return new SideLine(settled.device().id(), settled.device().line(), settled.device().fill(),
                settled.device().nominalMl(), settled.fillMl());
    }

    private static String words(SideLine line) {
        return line.deviceId() + " " + line.line() + " " + line.fill().key();
    }
}
