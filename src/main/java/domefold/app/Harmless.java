package domefold.app;

/** Text that a terminal only shows: control and direction characters other than line feeds become {@code ?}. */
final class Harmless {
    private Harmless() {}

    static String of(String text) {
        if (text.codePoints().allMatch(Harmless::isHarmless)) {
            return text;
        }
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(isHarmless(c) ? c : '?'));
        return out.toString();
    }

    private static boolean isHarmless(int codePoint) {
        int type = Character.getType(codePoint);
        return codePoint == '\n' || (type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR && type != Character.PARAGRAPH_SEPARATOR);
    }
}
