package domefold.export;

import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import domefold.record.FollowUp;
import domefold.record.RecordStatus;
import domefold.sheet.Allowed;
import domefold.sheet.DayText;
import java.util.List;

/**
 * Reminders for a calendar (RFC 5545, RFC 7986). They say that a visit is due and for which case, never why: no name, no
 * operation, no device. Every stamp and id comes from the record, so the same record gives the same bytes, and a later version
 * updates the entries of an earlier one.
 */
public final class FollowUpCalendar {
    private static final String WARN_BEFORE = "-P4W";

    private FollowUpCalendar() {}

    /** Which of the two readings of a schedule the entries stand for. */
    public enum Reading {
        EARLIEST,
        LATEST
    }

    /** The reminders of one record. */
    public static String of(ConsultRecord record, Reading reading) {
        return of(List.of(record), reading);
    }

    /**
     * The reminders of several records in one calendar.
     *
     * @throws Refusal if one of them is an invented patient's, or if there is no date at all: the standard knows no empty
     *     calendar
     */
    public static String of(List<ConsultRecord> records, Reading reading) {
        records.forEach(Allowed::toLeave);
        if (records.stream().allMatch(record -> record.followUp().map(plan -> stands(plan, reading).isEmpty()).orElse(true))) {
            throw new Refusal("no-reminders", records.size() == 1 ? records.get(0).id() : "calendar",
                    (records.size() == 1 ? "case " + records.get(0).id() + " has" : "these records have")
                            + " no follow-up dates to put in a calendar; they come with the schedule that is settled");
        }
        IcsText out = new IcsText().line("BEGIN", "VCALENDAR").line("VERSION", "2.0")
                .text("PRODID", "-//Domefold//Domefold//EN").line("CALSCALE", "GREGORIAN").text("NAME", "Follow-up visits");
        for (ConsultRecord record : records) {
            record.followUp().ifPresent(plan -> entries(record, plan, reading, out));
        }
        return out.line("END", "VCALENDAR").toString();
    }

    private static List<FollowUp.Reminder> stands(FollowUp plan, Reading reading) {
        return reading == Reading.EARLIEST ? plan.densest() : plan.sparsest();
    }

    private static void entries(ConsultRecord record, FollowUp plan, Reading reading, IcsText out) {
        List<FollowUp.Reminder> stands = stands(plan, reading);
        List<FollowUp.Reminder> other = reading == Reading.EARLIEST ? plan.sparsest() : plan.densest();
        for (int i = 0; i < stands.size(); i++) {
            FollowUp.Reminder reminder = stands.get(i);
            out.line("BEGIN", "VEVENT").line("UID", reminder.uid().toString())
                    .moment("DTSTAMP", record.authorship().savedAt())
                    .moment("LAST-MODIFIED", record.authorship().savedAt())
                    .line("SEQUENCE", Integer.toString(record.version() - 1))
                    .day("DTSTART", reminder.date())
                    .text("SUMMARY", "Follow-up visit due, case " + record.id())
                    .text("DESCRIPTION", window(reading, i < other.size() ? other.get(i) : null) + "Schedule "
                            + plan.scheduleId() + ".")
                    .line("CLASS", "PRIVATE").line("TRANSP", "TRANSPARENT")
                    .line("STATUS", record.status() == RecordStatus.ENTERED_IN_ERROR ? "CANCELLED" : "CONFIRMED");
            out.line("BEGIN", "VALARM").line("ACTION", "DISPLAY").text("DESCRIPTION", "Follow-up visit due")
                    .line("TRIGGER;RELATED=START", WARN_BEFORE).line("END", "VALARM").line("END", "VEVENT");
        }
    }

    private static String window(Reading reading, FollowUp.Reminder other) {
        if (other == null) {
            return "";
        }
        return reading == Reading.EARLIEST ? "Not later than " + DayText.of(other.date()) + ". "
                : "Not before " + DayText.of(other.date()) + ". ";
    }
}
