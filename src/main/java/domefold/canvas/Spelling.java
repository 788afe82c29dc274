package domefold.canvas;

import java.text.Normalizer;

/** Spells text for terminals that show ASCII only. */
public final class Spelling {
    private Spelling() {}

    /** The text in ASCII: dashes and minus as a hyphen, {@code ±} as {@code +-}, accents dropped, the rest as {@code ?}. */
    public static String ascii(String text) {
        if (text.chars().allMatch(c -> c < 0x7f)) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFD).codePoints().forEach(c -> out.append(ascii(c)));
        return out.toString();
    }

    private static String ascii(int codePoint) {
        if (codePoint < 0x7f) {
            return Character.toString(codePoint);
        }
        if (Character.getType(codePoint) == Character.NON_SPACING_MARK) {
            return "";
        }
        return switch (codePoint) {
            case '–', '—', '−', '‐', '‑', '─' -> "-";
            case '±' -> "+-";
            case '×' -> "x";
            case '·', '•' -> "*";
            case '…' -> "~";
            case '≤' -> "<=";
            case '≥' -> ">=";
            case '≈' -> "~";
            case '→' -> "->";
            case '←' -> "<-";
            case '’', '‘' -> "'";
            case '“', '”', '„' -> "\"";
            case '²' -> "2";
            case '³' -> "3";
            case '½' -> "1/2";
            case 'µ', 'μ' -> "u";
            case '°' -> " deg";
            case 'ß' -> "ss";
            case 'æ' -> "ae";
            case 'ø' -> "o";
            case '│', '┊' -> "|";
            case '✓' -> "v";
            case '↓' -> "v";
            case '↑' -> "^";
            case '▸' -> ">";
            case 0xa0, 0x2009, 0x202f -> " ";
            default -> "?";
        };
    }
}
