package domefold.basics;

/** Numbers as they are written, looked at letter by letter: the first regular expression of a process costs it milliseconds. */
public final class Digits {
    private Digits() {}

    /** True for digits, and perhaps a point and digits behind it; no sign, no blank. */
    public static boolean isDecimal(String text) {
        return isDecimal(text, Integer.MAX_VALUE);
    }

    /** {@link #isDecimal(String)} with at most so many digits before the point and as many behind it. */
    public static boolean isDecimal(String text, int mostDigits) {
        int point = text.indexOf('.');
        int end = point < 0 ? text.length() : point;
        return end <= mostDigits && areDigits(text, 0, end)
                && (point < 0 || text.length() - point - 1 <= mostDigits && areDigits(text, point + 1, text.length()));
    }

    /** True for a day written as {@code 2026-03-04}, whether or not a calendar has it. */
    public static boolean isDay(String text) {
        return text.length() == "2026-03-04".length() && text.charAt(4) == '-' && text.charAt(7) == '-'
                && areDigits(text, 0, 4) && areDigits(text, 5, 7) && areDigits(text, 8, 10);
    }

    private static boolean areDigits(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return from < to;
    }
}
