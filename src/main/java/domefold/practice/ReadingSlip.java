package domefold.practice;

/** The slips of reading that the drill plants. */
public enum ReadingSlip {
    SIDES_SWAPPED("sides-swapped", "left and right are swapped"),
    MILLIMETRES("mm-for-cm", "a length is in mm where cm are asked"),
    HEIGHT_WEIGHT_EXCHANGED("height-weight-exchanged", "height and weight are exchanged"),
    STRETCHED_SHORTER("stretched-below-resting", "stretched is shorter than resting"),
    SCAN_MIXED("mixed-reading-methods", "surface scan and hand are mixed");

    private final String code;
    private final String words;

    ReadingSlip(String code, String words) {
        this.code = code;
        this.words = words;
    }

    public String code() {
        return code;
    }

    public String words() {
        return words;
    }
}
