package domefold.app;

import domefold.records.RecordHeader;
import domefold.sheet.DayText;

/** The two facts said before anything is done to a record: which case of which day, and where it stands. */
final class RecordFacts {
    private RecordFacts() {}

    static String of(RecordHeader header) {
        return "case " + header.id() + ", consult of " + DayText.both(header.day()) + "; version " + header.version() + ", "
                + header.stands() + (header.practice() ? ", PRACTICE" : "");
    }
}
