package domefold.patient;

/** Ptosis by nipple and gland against the fold. {@code GLANDULAR} is what some texts call pseudoptosis. */
public enum Ptosis {
    NONE("none"),
    GLANDULAR("glandular"),
    GRADE_I("I"),
    GRADE_II("II"),
    GRADE_III("III");

    private final String key;

    Ptosis(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
