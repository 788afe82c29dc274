package domefold.device;

/** The outside of the shell. */
public enum Surface {
    SMOOTH("smooth"),
    TEXTURED("textured");

    private final String key;

    Surface(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
