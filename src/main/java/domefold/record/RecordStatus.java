package domefold.record;

/** Where one version of a record stands. Only a draft may be replaced. */
public enum RecordStatus {
    DRAFT("draft", "draft"),
    SIGNED("signed", "signed"),
    AMENDED("amended", "amended"),
    ENTERED_IN_ERROR("entered-in-error", "entered in error");

    private final String key;
    private final String words;

    RecordStatus(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** The word used in files. */
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** True once a version may never change again. */
    public boolean isFrozen() {
        return this != DRAFT;
    }
}
