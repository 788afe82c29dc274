package domefold.practice.exercise;

import java.util.List;

/**
 * What came of a typed line.
 *
 * @param exercise the exercise after it; the same where nothing changed
 * @param kind what kind of line it was
 * @param lines what to say, possibly nothing
 */
public record Said(Exercise exercise, Kind kind, List<String> lines) {
    /** What a line turned out to be. */
    public enum Kind {
        /** Taken, or moved; the line is done with. */
        DONE,
        /** Not accepted; the line stays for mending. */
        REFUSED,
        /** Help was asked for. */
        HELP,
        /** The plan was handed in and marked. */
        COMMITTED
    }

    public Said {
        lines = List.copyOf(lines);
    }
}
