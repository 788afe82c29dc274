package domefold.app;

/** Text that a terminal only shows: control and direction characters other than line feeds become {@code ?}. */
final class Harmless {
    private Harmless() {}

    static String of(String text) {
        if (isHarmless(text)) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(isHarmless(c) ? c : '?'));
        return out.toString();
    }

    /** Line by line, so that what looks at a line is compiled while there are lines to look at. */
    private static boolean isHarmless(String text) {
        int from = 0;
        while (from < text.length()) {
            int end = text.indexOf('\n', from);
            end = end < 0 ? text.length() : end;
            if (!isHarmless(text, from, end)) {
                return false;
            }
            from = end + 1;
        }
        return true;
    }

    private static boolean isHarmless(String text, int from, int to) {
        int codePoint;
        for (int i = from; i < to; i += Character.charCount(codePoint)) {
            codePoint = text.codePointAt(i);
            if (!isHarmless(codePoint)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isHarmless(int codePoint) {
        if (codePoint >= ' ' && codePoint <= '~') {
            return true;
        }
        int type = Character.getType(codePoint);
        return codePoint == '\n' || (type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR && type != Character.PARAGRAPH_SEPARATOR);
    }
}
