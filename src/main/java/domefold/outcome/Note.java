package domefold.outcome;

/**
 * A remark, a reason or a block: a stable code and a sentence with the numbers in it.
 *
 * @param code kebab-case, stable across versions, for example {@code width-over-ceiling}
 * @param text one sentence for a person
 */
public record Note(String code, String text) {
    public Note {
        if (!isKebabCase(code)) {
            throw new IllegalArgumentException("a code is kebab-case, got '" + code + "'");
        }
        if (text.isBlank()) {
            throw new IllegalArgumentException("note " + code + " says nothing");
        }
    }

    /** Small letters and digits, with single hyphens between them. A plan makes thousands of notes, so no pattern is compiled. */
    private static boolean isKebabCase(String code) {
        boolean inWord = false;
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            boolean letter = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            if (!letter && !(c == '-' && inWord)) {
                return false;
            }
            inWord = letter;
        }
        return inWord;
    }
}
