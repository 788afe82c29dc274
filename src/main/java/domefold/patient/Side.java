package domefold.patient;

/** The patient's own left or right. Always written as a word. */
public enum Side {
    LEFT,
    RIGHT;

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** The name used in files: {@code left} or {@code right}. */
    public String key() {
        return this == LEFT ? "left" : "right";
    }
}
