package domefold.plan;

/** How wide a device the surgeon accepts without calling it tight. None of them goes beyond the base width. */
public enum WidthSchool {
    /** Up to the ceiling and the widening VERDICT-BASE-WIDENED. */
    CEILING_AND_WIDENING("ceiling-and-widening"),
    /** Up to the ceiling. */
    CEILING("ceiling"),
    /** Up to the base width less VERDICT-SCHOOL-BASE-LESS. */
    BASE_LESS("base-less");

    private final String key;

    WidthSchool(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
