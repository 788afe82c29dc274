package domefold.canvas;

/** What a piece of text is for. Only {@code domefold.terminal} turns roles into colours; each also differs without. */
public enum Role {
    /** Ordinary text, in the terminal's own colours. */
    BODY,
    /** The question being asked: the brightest thing on the glass. */
    QUESTION,
    /** What she typed. */
    ANSWER,
    /** Names of things: row labels, headings. */
    LABEL,
    /** Quiet remarks, units, hints, scales. */
    FAINT,
    /** The row or cell that has the focus. */
    SELECTED,
    /** Headline of a screen. */
    TITLE,
    /** A remark worth a second look. */
    CAUTION,
    /** Something refused or blocked. */
    REFUSED,
    /** Within limits. */
    FITS,
    /** Near a limit. */
    TIGHT,
    /** Outside a limit. */
    OUTSIDE,
    /** Drawn lengths and shapes, first series. */
    DRAWING,
    /** Drawn lengths and shapes, second series. */
    DRAWING_OTHER,
    /** The banner that says what is invented, or that this is practice. */
    BANNER
}
