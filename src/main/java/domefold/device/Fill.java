package domefold.device;

/** What fills the shell. */
public enum Fill {
    SALINE("saline"),
    GEL("gel");

    private final String key;

    Fill(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
