package domefold.plan;

/** How a device stands against one side's limits. */
public enum Verdict {
    FITS("fits"),
    TIGHT("tight"),
    OUTSIDE("outside");

    private final String key;

    Verdict(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    /** The stricter of two. */
    public Verdict and(Verdict other) {
        return ordinal() >= other.ordinal() ? this : other;
    }
}
