package domefold.export.fhir;

import domefold.patient.Side;

/** Where on the body, with codes read in HL7's published value sets (SNOMED CT). */
enum BodySite {
    LEFT("80248007", "Left breast structure", "Left breast"),
    RIGHT("73056007", "Right breast structure", "Right breast");

    static final String SYSTEM = "http://snomed.info/sct";

    private final String code;
    private final String display;
    private final String words;

    BodySite(String code, String display, String words) {
        this.code = code;
        this.display = display;
        this.words = words;
    }

    static BodySite of(Side side) {
        return side == Side.LEFT ? LEFT : RIGHT;
    }

    String code() {
        return code;
    }

    String display() {
        return display;
    }

    String words() {
        return words;
    }
}
