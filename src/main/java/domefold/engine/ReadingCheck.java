package domefold.engine;

import domefold.outcome.Note;
import java.util.Optional;

/**
 * What a gate says about one reading.
 *
 * @param answer accepted, accepted but asked again, or not accepted
 * @param note one sentence where it is not plainly accepted: the limits, and the slip it looks like
 */
public record ReadingCheck(Answer answer, Optional<Note> note) {
    /** The three answers of a gate. */
    public enum Answer {
        /** Taken as it is. */
        ACCEPTED,
        /** Unusual: ask again; if it stays, keep it with the note. */
        QUERY,
        /** Outside what a body has: not taken. */
        REFUSED
    }

    static final ReadingCheck FINE = new ReadingCheck(Answer.ACCEPTED, Optional.empty());

    public boolean refused() {
        return answer == Answer.REFUSED;
    }

    public boolean queried() {
        return answer == Answer.QUERY;
    }
}
