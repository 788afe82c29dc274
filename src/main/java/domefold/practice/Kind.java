package domefold.practice;

/** The kinds of asymmetry of the published series, each with its row in {@code sizing-rules.csv}. */
public enum Kind {
    NIPPLE_POSITION("ASY-03", "nipple position"),
    VOLUME("ASY-04", "volume"),
    FOLD_POSITION("ASY-05", "fold position"),
    BASE_CONSTRICTION("ASY-06", "base constriction"),
    PTOSIS("ASY-07", "ptosis"),
    AREOLA("ASY-08", "areola size"),
    CHEST_WALL("ASY-09", "chest wall");

    private final String ruleId;
    private final String words;

    Kind(String ruleId, String words) {
        this.ruleId = ruleId;
        this.words = words;
    }

    /** The row that gives its share of women. */
    public String ruleId() {
        return ruleId;
    }

    public String words() {
        return words;
    }
}
