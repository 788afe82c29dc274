package domefold.device;

/**
 * Something wrong with a device list, or worth a question.
 *
 * @param line the line in the file, counted from 1; 0 for the file as a whole
 * @param code kebab-case, stable
 * @param severity a fault keeps the list from being used; a query is for the office to look at
 * @param text one sentence: what is wrong and what would be right
 */
public record CatalogueFinding(int line, String code, Severity severity, String text) {
    /** Fault or query. */
    public enum Severity {
        FAULT("fault"),
        QUERY("query");

        private final String key;

        Severity(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    static CatalogueFinding fault(int line, String code, String text) {
        return new CatalogueFinding(line, code, Severity.FAULT, text);
    }

    static CatalogueFinding query(int line, String code, String text) {
        return new CatalogueFinding(line, code, Severity.QUERY, text);
    }

    public boolean isFault() {
        return severity == Severity.FAULT;
    }
}
