package domefold.practice;

/** How a decision stands. */
public enum Standing {
    INSIDE("inside the limits"),
    DEFENSIBLE("defensible"),
    OUTSIDE("outside"),
    /** The engine has no limit to hold it against; it counts neither way. */
    UNMARKED("not marked");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
