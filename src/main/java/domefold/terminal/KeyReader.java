package domefold.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import domefold.screen.Key;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Turns Lanterna's key strokes into the program's keys. Holds the first half of a character that arrives in two. */
final class KeyReader {
    private static final Map<KeyType, Key.Kind> KINDS = kinds();
    private char firstHalf;

    /** The key, or nothing for what is none: half a character, a mouse report, a sequence nobody knows. */
    Optional<Key> read(KeyStroke stroke) {
        boolean ctrl = stroke.isCtrlDown();
        boolean alt = stroke.isAltDown();
        if (stroke.getKeyType() == KeyType.Character) {
            return character(stroke.getCharacter(), ctrl, alt);
        }
        firstHalf = 0;
        Key.Kind kind = KINDS.get(stroke.getKeyType());
        return kind == null ? Optional.empty() : Optional.of(new Key(kind, 0, ctrl, alt));
    }

    private Optional<Key> character(char character, boolean ctrl, boolean alt) {
        if (Character.isHighSurrogate(character)) {
            firstHalf = character;
            return Optional.empty();
        }
        char before = firstHalf;
        firstHalf = 0;
        if (Character.isLowSurrogate(character)) {
            return before == 0 ? Optional.empty()
                    : Optional.of(new Key(Key.Kind.CHARACTER, Character.toCodePoint(before, character), ctrl, alt));
        }
        if (character < ' ' && !ctrl) {
            return Optional.empty();
        }
        return Optional.of(new Key(Key.Kind.CHARACTER, ctrl ? Character.toLowerCase(character) : character, ctrl, alt));
    }

    private static Map<KeyType, Key.Kind> kinds() {
        Map<KeyType, Key.Kind> kinds = new EnumMap<>(KeyType.class);
        kinds.put(KeyType.Enter, Key.Kind.ENTER);
        kinds.put(KeyType.Escape, Key.Kind.ESCAPE);
        kinds.put(KeyType.Tab, Key.Kind.TAB);
        kinds.put(KeyType.ReverseTab, Key.Kind.BACK_TAB);
        kinds.put(KeyType.Backspace, Key.Kind.BACKSPACE);
        kinds.put(KeyType.Delete, Key.Kind.DELETE);
        kinds.put(KeyType.ArrowLeft, Key.Kind.LEFT);
        kinds.put(KeyType.ArrowRight, Key.Kind.RIGHT);
        kinds.put(KeyType.ArrowUp, Key.Kind.UP);
        kinds.put(KeyType.ArrowDown, Key.Kind.DOWN);
        kinds.put(KeyType.Home, Key.Kind.HOME);
        kinds.put(KeyType.End, Key.Kind.END);
        kinds.put(KeyType.PageUp, Key.Kind.PAGE_UP);
        kinds.put(KeyType.PageDown, Key.Kind.PAGE_DOWN);
        for (int n = 1; n <= 10; n++) {
            kinds.put(KeyType.valueOf("F" + n), Key.Kind.valueOf("F" + n));
        }
        for (KeyType other : new KeyType[] {KeyType.Insert, KeyType.F11, KeyType.F12}) {
            kinds.put(other, Key.Kind.OTHER);
        }
        return kinds;
    }
}
