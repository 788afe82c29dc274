package domefold.screen;

/**
 * One key press.
 *
 * @param kind which key
 * @param codePoint the character for {@link Kind#CHARACTER}, else 0
 * @param ctrl with Ctrl held
 * @param alt with Alt held
 */
public record Key(Kind kind, int codePoint, boolean ctrl, boolean alt) {
    /** The keys the program knows. */
    public enum Kind {
        CHARACTER, ENTER, ESCAPE, TAB, BACK_TAB, BACKSPACE, DELETE, LEFT, RIGHT, UP, DOWN, HOME, END, PAGE_UP,
        PAGE_DOWN, F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, OTHER
    }

    public static Key of(Kind kind) {
        return new Key(kind, 0, false, false);
    }

    public static Key character(int codePoint) {
        return new Key(Kind.CHARACTER, codePoint, false, false);
    }

    public static Key ctrl(char letter) {
        return new Key(Kind.CHARACTER, letter, true, false);
    }

    public boolean is(Kind wanted) {
        return kind == wanted && !ctrl && !alt;
    }

    /** True for that letter with Ctrl held. */
    public boolean isCtrl(char letter) {
        return kind == Kind.CHARACTER && ctrl && codePoint == letter;
    }

    /** True for a plain printable character. */
    public boolean isText() {
        return kind == Kind.CHARACTER && !ctrl && !alt && codePoint >= 0x20;
    }
}
