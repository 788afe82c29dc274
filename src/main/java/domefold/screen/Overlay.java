package domefold.screen;

/**
 * What lies over a room until Esc.
 *
 * @param kind which
 * @param scroll rows scrolled down
 */
public record Overlay(Kind kind, int scroll) {
    public static final Overlay NONE = new Overlay(Kind.NONE, 0);

    /** The overlays there are. */
    public enum Kind {
        NONE,
        /** How the reading in question is taken. */
        HELP,
        /** The working behind the limits, with sources. */
        WORKING,
        /** The answers so far. */
        SUMMARY,
        /** Every key that works. */
        KEYS,
        /** Pairs of devices for two sides that differ; {@code scroll} is the pair in focus. */
        PAIRS,
        /** How sure verdicts and order are, and what a second reading would buy. */
        DOUBT
    }

    static Overlay of(Kind kind) {
        return new Overlay(kind, 0);
    }
}
