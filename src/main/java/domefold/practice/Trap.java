package domefold.practice;

/** What a case of level 3 hides. */
public enum Trap {
    AGE_BELOW_LABEL("age-below-label", "her age is below the label of the fill she asks for"),
    CONTRAINDICATION("contraindication", "her history holds a contraindication"),
    CONSTRICTED_BASE("constricted-base", "the base is constricted"),
    PTOSIS_FOR_LIFT("lift-to-discuss", "the ptosis is one for a lift"),
    WISH_BEYOND_BASE("wish-over-band", "the size wished is beyond what the base carries"),
    MIXED_METHODS("mixed-reading-methods", "readings by hand and by surface scan are mixed");

    private final String code;
    private final String words;

    Trap(String code, String words) {
        this.code = code;
        this.words = words;
    }

    /** The code of the warning it calls for. */
    public String code() {
        return code;
    }

    public String words() {
        return words;
    }
}
