package domefold.outcome;

/**
 * A remark, a reason or a block: a stable code and a sentence with the numbers in it.
 *
 * @param code kebab-case, stable across versions, for example {@code width-over-ceiling}
 * @param text one sentence for a person
 */
public record Note(String code, String text) {
    public Note {
        if (!code.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("a code is kebab-case, got '" + code + "'");
        }
        if (text.isBlank()) {
            throw new IllegalArgumentException("note " + code + " says nothing");
        }
    }
}
