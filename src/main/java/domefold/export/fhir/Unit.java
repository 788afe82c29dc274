package domefold.export.fhir;

/** The units that leave the house, each with its UCUM code; case counts: {@code ML} would be a megalitre. */
enum Unit {
    CM("cm", "cm"),
    ML("mL", "mL"),
    KG("kg", "kg"),
    PERCENT("%", "%"),
    YEARS("years", "a");

    static final String SYSTEM = "http://unitsofmeasure.org";

    private final String words;
    private final String code;

    Unit(String words, String code) {
        this.words = words;
        this.code = code;
    }

    static Unit of(String words) {
        for (Unit unit : values()) {
            if (unit.words.equals(words)) {
                return unit;
            }
        }
        throw new IllegalArgumentException("no unit " + words);
    }

    String words() {
        return words;
    }

    String code() {
        return code;
    }
}
