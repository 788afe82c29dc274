package domefold.line;

import java.util.Optional;

/** What keeps a line from being looked at: a pipe may hold anything. */
final class LineCheck {
    private static final int LONGEST_LINE = 1000;

    private LineCheck() {}

    /** Why the line is left out; empty where it can be read. */
    static Optional<String> against(String line) {
        if (line.length() > LONGEST_LINE) {
            return Optional.of("That line is longer than " + LONGEST_LINE + " characters; it was left out.");
        }
        return line.codePoints().anyMatch(c -> c == 0xfffd || Character.isISOControl(c) && c != '\t')
                ? Optional.of("That line holds characters that cannot be read; it was left out.") : Optional.empty();
    }
}
