package domefold.canvas;

/**
 * The characters drawings are made of. {@link #ASCII} for terminals whose encoding or font has no box drawing; numbers
 * always stand beside a drawing, so nothing is lost.
 */
public record Glyphs(
        boolean unicode,
        char horizontal,
        char vertical,
        char teeLeft,
        char teeRight,
        char tick,
        char marker,
        char bullet,
        char ellipsis,
        char pointer,
        char dash,
        char plusMinus,
        char cross,
        char check,
        char shade,
        char full,
        char arrowDown,
        char arrowUp,
        char dot) {
    public static final Glyphs UNICODE = new Glyphs(true, '─', '│', '├', '┤', '┊', '▲', '•', '…', '▸', '–', '±', '×',
            '✓', '░', '█', '↓', '↑', '·');
    public static final Glyphs ASCII = new Glyphs(false, '-', '|', '|', '|', ':', '^', '*', '~', '>', '-', '+', 'x',
            'v', '/', '#', 'v', '^', '.');

    /** The text in characters this set can show. */
    public String spell(String text) {
        return unicode ? text : Spelling.ascii(text);
    }
}
