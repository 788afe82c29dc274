package domefold.report;

import domefold.record.Amendment.FieldChange;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.sheet.DayText;
import java.util.List;

/** What lies beside a record: what happened since, and versions that lost a clash of two workstations. */
public final class HappenedText {
    private HappenedText() {}

    /** Every event, oldest first; nothing where there is none. */
    public static String events(List<RecordEvent> events) {
        if (events.isEmpty()) {
            return "";
        }
        Page page = new Page();
        page.line("").line("What happened since");
        for (RecordEvent event : events) {
            page.hanging(DayText.of(event.day()) + "  ", event.kind().key() + (event.note().isBlank() ? "" : ": " + event.note())
                    + " (entered by " + event.by() + ", " + DayText.of(event.at()) + ")");
        }
        return page.text();
    }

    /**
     * The other version of a clash, with every field in which it differs.
     *
     * @param file its file, beside the record
     * @param changes from the record shown above to the other one
     */
    public static String clash(String file, ConsultRecord other, List<FieldChange> changes) {
        Page page = new Page();
        page.line("").line("Saved from elsewhere at the same time");
        page.paragraph(0, "Another workstation saved " + (other.authorship().author().isBlank() ? "" : "by "
                + other.authorship().author() + ", ") + DayText.of(other.authorship().savedAt())
                + "; nothing of it is lost, it lies beside the record as " + file + ".");
        if (changes.isEmpty()) {
            page.paragraph(0, "Both say the same.");
        }
        for (FieldChange change : changes) {
            page.hanging("  ", change.field() + ": above " + said(change.before()) + ", there " + said(change.after()));
        }
        return page.text();
    }

    private static String said(String value) {
        return value.isEmpty() ? "nothing" : "'" + value + "'";
    }
}
