package domefold.outcome;

/**
 * Input that was not accepted: what, where and what would be right. Thrown by readers of files and typed text only; the
 * shell prints {@link #getMessage()} and ends with exit code 3. The engine returns notes instead.
 */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String code;
    private final String where;

    /**
     * @param code kebab-case, stable
     * @param where the place: a field path such as {@code left.baseWidthCm}, a line number, a file
     * @param text one sentence: what is wrong and what would be right
     */
    public Refusal(String code, String where, String text) {
        super(text);
        this.code = code;
        this.where = where;
    }

    public String code() {
        return code;
    }

    public String where() {
        return where;
    }
}
