package domefold.device;

/** Projection to width, five classes from flat to tall, in the trade's own words. */
public enum Profile {
    LOW("low"),
    MODERATE("moderate"),
    MODERATE_PLUS("moderate-plus"),
    FULL("full"),
    EXTRA_FULL("extra-full");

    private final String key;

    Profile(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
