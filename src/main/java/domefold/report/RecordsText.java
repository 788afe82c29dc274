package domefold.report;

import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.records.DueList;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import java.time.YearMonth;
import java.util.List;

/** Lists of records, to read. */
public final class RecordsText {
    private RecordsText() {}

    /** Records found, newest consult first. */
    public static String found(List<RecordHeader> found, String nothing) {
        Page page = new Page();
        if (found.isEmpty()) {
            return page.paragraph(0, nothing).text();
        }
        page.line(Numbers.count(found.size(), "record", "records"));
        RecordList.warning(found).ifPresent(warning -> page.paragraph(0, warning));
        for (RecordHeader header : found) {
            page.blank().ends(header.id() + (header.practice() ? "  PRACTICE" : ""), header.day() + "  version "
                    + header.version() + ", " + header.stands());
            for (Side side : Side.values()) {
                page.hanging("  " + (side == Side.LEFT ? "LEFT   " : "RIGHT  "), header.side(side)
                        .map(line -> line.deviceId() + ", " + line.fill().key() + ", filled to " + Numbers.ml(line.fillMl()))
                        .orElse("nothing settled"));
            }
        }
        return page.text();
    }

    /**
     * Who is due for imaging.
     *
     * @param all every record, among which they were looked for
     */
    public static String due(YearMonth month, List<DueList.Due> due, RecordList all) {
        Page page = new Page();
        if (all.isEmpty()) {
            return page.paragraph(0, RecordList.NONE_YET).text();
        }
        page.line("Imaging due in " + month + ": " + Numbers.count(due.size(), "record", "records"));
        due.forEach(one -> page.blank().line(one.header().id()).paragraph(2, one.reason()));
        return page.text();
    }
}
