package domefold.store;

import java.nio.file.Path;

/** Foreign text made fit for a sentence: short, and without anything a terminal would obey. */
final class Shown {
    private static final int LONGEST = 40;

    private Shown() {}

    /** In quotes, cut after 40 characters. */
    static String quoted(String text) {
        return "\"" + plain(text.codePointCount(0, text.length()) <= LONGEST
                ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "...") + "\"";
    }

    static String path(Path path) {
        return plain(path.toString());
    }

    /** Control and format characters (line breaks, escapes, reversed writing) as blanks. */
    static String plain(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().map(c -> switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE, Character.UNASSIGNED -> ' ';
            default -> c;
        }).forEach(out::appendCodePoint);
        return out.toString();
    }
}
