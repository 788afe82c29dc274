package domefold.patient;

/** The plane the device lies in. */
public enum Pocket {
    SUBGLANDULAR("subglandular", false),
    SUBFASCIAL("subfascial", false),
    DUAL_PLANE("dual-plane", true),
    SUBMUSCULAR("submuscular", true);

    private final String key;
    private final boolean underMuscle;

    Pocket(String key, boolean underMuscle) {
        this.key = key;
        this.underMuscle = underMuscle;
    }

    public String key() {
        return key;
    }

    /** True where muscle covers the upper device. */
    public boolean underMuscle() {
        return underMuscle;
    }
}
