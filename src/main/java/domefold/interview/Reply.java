package domefold.interview;

import java.util.List;

/**
 * What came of a typed line.
 *
 * @param interview the interview after it; the same where nothing changed
 * @param kind what kind of line it was
 * @param lines what to say, possibly nothing
 */
public record Reply(Interview interview, Kind kind, List<String> lines) {
    /** What a line turned out to be. */
    public enum Kind {
        /** An answer, taken; to be journalled. */
        TAKEN,
        /** An answer that was not accepted; the line stays for mending. */
        REFUSED,
        /** Another question has the floor now. */
        MOVED,
        /** The last answer was taken back, or given again; to be journalled. */
        UNDONE,
        /** An explanation was asked for. */
        HELP,
        /** The working was asked for. */
        WHY,
        /** The answers so far were asked for. */
        SUMMARY
    }

    public Reply {
        lines = List.copyOf(lines);
    }
}
