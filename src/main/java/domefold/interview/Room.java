package domefold.interview;

/** The rooms of a consult, in order. */
public enum Room {
    WHO("Who", "who she is"),
    WISH("Wish", "what she wishes"),
    FRAME("Frame", "the frame"),
    COVER("Cover", "what covers the device"),
    FOLD("Fold", "nipple and fold"),
    SIDES("Sides", "two sides"),
    LIMITS("Limits", "what the tissues allow"),
    DEVICES("Devices", "devices side by side"),
    SETTLE("Settle", "what is settled"),
    RECORD("Record", "the summary");

    private final String title;
    private final String words;

    Room(String title, String words) {
        this.title = title;
        this.words = words;
    }

    public String title() {
        return title;
    }

    public String words() {
        return words;
    }

    /** True for the rooms in which the program asks one question after another before anything is laid out. */
    public boolean asks() {
        return ordinal() < LIMITS.ordinal() || this == SETTLE;
    }
}
