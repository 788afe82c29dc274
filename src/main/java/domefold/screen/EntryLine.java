package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;

/**
 * A line being typed.
 *
 * @param text what stands there
 * @param cursor code units before the cursor
 */
public record EntryLine(String text, int cursor) {
    public static final EntryLine EMPTY = new EntryLine("", 0);
    private static final int LONGEST = 400;

    public static EntryLine of(String text) {
        return new EntryLine(text, text.length());
    }

    public boolean isEmpty() {
        return text.isBlank();
    }

    /** Draws it in that many cells; a longer line moves left so that its cursor stays in sight. */
    void draw(Canvas canvas, int column, int row, int width) {
        int at = canvas.text(column, row, "> ", Role.QUESTION);
        int room = width - 3;
        int skip = Math.max(0, cursor - room);
        canvas.text(at, row, text.substring(skip, Math.min(text.length(), skip + room)), Role.ANSWER);
        canvas.cursor(at + cursor - skip, row);
    }

    /** The line after that key, the same line where the key is none of an editor's. */
    public EntryLine onKey(Key key) {
        if (key.isText() && text.length() < LONGEST) {
            String typed = new String(Character.toChars(key.codePoint()));
            return new EntryLine(text.substring(0, cursor) + typed + text.substring(cursor), cursor + typed.length());
        }
        if (key.isCtrl('u')) {
            return new EntryLine(text.substring(cursor), 0);
        }
        if (key.isCtrl('w')) {
            int from = text.substring(0, cursor).stripTrailing().lastIndexOf(' ') + 1;
            return new EntryLine(text.substring(0, from) + text.substring(cursor), from);
        }
        return switch (key.kind()) {
            case BACKSPACE -> cursor == 0 ? this : removed(text.offsetByCodePoints(cursor, -1), cursor);
            case DELETE -> cursor == text.length() ? this : removed(cursor, text.offsetByCodePoints(cursor, 1));
            case LEFT -> cursor == 0 ? this : new EntryLine(text, text.offsetByCodePoints(cursor, -1));
            case RIGHT -> cursor == text.length() ? this : new EntryLine(text, text.offsetByCodePoints(cursor, 1));
            case HOME -> new EntryLine(text, 0);
            case END -> new EntryLine(text, text.length());
            default -> this;
        };
    }

    private EntryLine removed(int from, int to) {
        return new EntryLine(text.substring(0, from) + text.substring(to), from);
    }
}
