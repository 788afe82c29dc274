package domefold.record;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Something that happened after a record was signed. An event never changes the record.
 *
 * @param id the record's id
 * @param version the version it was about
 * @param kind what happened
 * @param day the day it happened
 * @param note in words, possibly empty
 * @param by who entered it
 * @param at when it was entered
 * @param detailJson more about it as a JSON object, {@code {}} where there is nothing more
 */
public record RecordEvent(
        String id, int version, Kind kind, LocalDate day, String note, String by, Instant at, String detailJson) {

    /** What can happen. */
    public enum Kind {
        ORDERED("ordered"),
        BOOKED("booked"),
        DONE("done"),
        IMPLANTED("implanted");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }
}
