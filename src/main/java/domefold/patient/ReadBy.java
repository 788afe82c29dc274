package domefold.patient;

/** How a reading was taken. The two do not mix: a scan reads widths wider and nipple to fold shorter than a hand does. */
public enum ReadBy {
    HAND("hand"),
    SURFACE_SCAN("surface-scan");

    private final String key;

    ReadBy(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
