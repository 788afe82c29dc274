package domefold.canvas;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The only place that knows how wide text is, and how to cut and wrap it. */
public final class TextWidth {
    private static final Set<String> UNITS = Set.of("cm", "mL", "kg", "%", "cm2", "mL/cm");
    private static final Set<String> SIGNS = Set.of("±", "+-", "x", "×");
    private static final String BEHIND_A_UNIT = ",;:.)";

    private TextWidth() {}

    /**
     * The text in normalisation form C, a letter and its accents in one character. What has nothing to compose is given back as
     * it is: below U+0300 nothing is a mark, and punctuation, arrows, mathematical signs, lines, blocks and braille have no other
     * form (Unicode 15, UAX 15).
     */
    static String composed(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isComposed(text.charAt(i))) {
                return Normalizer.normalize(text, Normalizer.Form.NFC);
            }
        }
        return text;
    }

    private static boolean isComposed(char c) {
        return c < 0x300 || c >= 0x2010 && c <= 0x2027 || c >= 0x2190 && c <= 0x22ff || c >= 0x2500 && c <= 0x259f || c >= 0x2800 && c <= 0x28ff;
    }

    /** Cells the text takes. */
    public static int of(String text) {
        String composed = composed(text);
        return composed.codePointCount(0, composed.length());
    }

    /** True for characters that take exactly one cell: no controls, no combining marks, no wide scripts, no emoji. */
    public static boolean isSingleCell(int codePoint) {
        if (codePoint < 0x20 || (codePoint >= 0x7f && codePoint < 0xa0)) {
            return false;
        }
        if (codePoint < 0x1100) {
            int type = Character.getType(codePoint);
            return type != Character.NON_SPACING_MARK && type != Character.ENCLOSING_MARK
                    && type != Character.FORMAT;
        }
        return (codePoint >= 0x2010 && codePoint <= 0x2027) || (codePoint >= 0x2030 && codePoint <= 0x205e)
                || (codePoint >= 0x2070 && codePoint <= 0x20cf) || (codePoint >= 0x2100 && codePoint <= 0x22ff)
                || (codePoint >= 0x2500 && codePoint <= 0x25ff) || (codePoint >= 0x2700 && codePoint <= 0x2717)
                || (codePoint >= 0x2800 && codePoint <= 0x28ff) || (codePoint >= 0x1e00 && codePoint <= 0x1fff);
    }

    /** The text, or its beginning with an ellipsis, in at most {@code width} cells. */
    public static String cut(String text, int width, char ellipsis) {
        if (of(text) <= width) {
            return text;
        }
        if (width <= 0) {
            return "";
        }
        String composed = composed(text);
        int end = composed.offsetByCodePoints(0, width - 1);
        return composed.substring(0, end).stripTrailing() + ellipsis;
    }

    /** The text padded with blanks to that width; never cut. */
    public static String padRight(String text, int width) {
        return text + " ".repeat(Math.max(0, width - of(text)));
    }

    /** The text with blanks before it to that width; never cut. */
    public static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - of(text))) + text;
    }

    /**
     * The text in lines of at most {@code width} cells, broken at blanks, though not between a number and its unit; a longer
     * word is broken after a hyphen, else where it must be.
     */
    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        int limit = Math.max(1, width);
        for (String paragraph : text.split("\n", -1)) {
            if (of(paragraph) <= limit) {
                lines.add(paragraph);
                continue;
            }
            StringBuilder line = new StringBuilder();
            for (String word : held(paragraph, limit)) {
                String rest = word;
                if (!line.isEmpty() && of(line + " " + rest) > limit) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                while (line.isEmpty() && of(rest) > limit) {
                    int end = rest.offsetByCodePoints(0, limit);
                    int hyphen = rest.lastIndexOf('-', end - 1) + 1;
                    end = hyphen > end / 2 ? hyphen : end;
                    lines.add(rest.substring(0, end));
                    rest = rest.substring(end);
                }
                line.append(line.isEmpty() ? "" : " ").append(rest);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    /** The words, a number with its unit and with its error as one word where a line can hold them. */
    private static List<String> held(String paragraph, int limit) {
        List<String> words = new ArrayList<>();
        for (String word : words(paragraph)) {
            int last = words.size() - 1;
            if (last >= 0 && belongs(words.get(last), word) && of(words.get(last) + " " + word) <= limit) {
                words.set(last, words.get(last) + " " + word);
            } else {
                words.add(word);
            }
        }
        return words;
    }

    /** What stands between blanks; a first word that is empty where blanks stand before it. */
    private static List<String> words(String paragraph) {
        List<String> words = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= paragraph.length(); i++) {
            if (i == paragraph.length() || paragraph.charAt(i) == ' ') {
                if (i > from || i == 0) {
                    words.add(paragraph.substring(from, i));
                }
                from = i + 1;
            }
        }
        return words;
    }

    private static boolean belongs(String before, String word) {
        if (before.isEmpty() || word.isEmpty()) {
            return false;
        }
        boolean number = Character.isDigit(before.charAt(before.length() - 1));
        return number && (isUnit(word) || SIGNS.contains(word)) || Character.isDigit(word.charAt(0)) && isSigned(before);
    }

    private static boolean isUnit(String word) {
        int end = word.length();
        while (end > 0 && BEHIND_A_UNIT.indexOf(word.charAt(end - 1)) >= 0) {
            end--;
        }
        return UNITS.contains(word.substring(0, end));
    }

    /** A number and a sign behind it. */
    private static boolean isSigned(String words) {
        int blank = words.lastIndexOf(' ');
        return blank > 0 && words.charAt(blank - 1) >= '0' && words.charAt(blank - 1) <= '9'
                && SIGNS.contains(words.substring(blank + 1));
    }
}
