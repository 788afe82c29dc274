package domefold.screen;

/**
 * What lies over a room until Esc.
 *
 * @param kind which
 * @param scroll how far it is scrolled
 */
public record Overlay(Kind kind, Scrolled scroll) {
    public static final Overlay NONE = new Overlay(Kind.NONE, Scrolled.START);

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
        return new Overlay(kind, Scrolled.START);
    }
}
