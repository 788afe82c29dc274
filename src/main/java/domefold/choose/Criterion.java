package domefold.choose;

import domefold.evidence.Constants;
import domefold.patient.Wishes.Matter;
import java.util.Optional;

/**
 * What devices are compared by. Each has a unit, a direction and a stated range that turns it into 0 (the worse end) to
 * 1 (the better end); the range is fixed, so that adding a device never reorders the others.
 */
public enum Criterion {
    TISSUE_MARGIN("margin to the width ceiling", "cm", true, null),
    LOOK("projection to width, off the look wished", "ratio", false, null),
    SIZE("off the size wished", "mL", false, null),
    SCAR("opening", "cm", false, Matter.SHORT_SCAR),
    SOFTNESS("softness class", "class", true, Matter.SOFT_FEEL),
    IMAGING("exams to the horizon", "exams", false, Matter.FEW_IMAGING_VISITS),
    EXCHANGE("ease of exchange", "class", true, Matter.EASY_EXCHANGE),
    ADJUSTMENT("step between sizes", "mL", false, Matter.FINE_ADJUSTMENT),
    EDGES("ripple rank under this cover", "rank", false, Matter.HIDDEN_EDGES),
    COST("devices and imaging to the horizon", "currency", false, Matter.LOW_COST);

    private final String words;
    private final String unit;
    private final boolean moreIsBetter;
    private final Matter matter;

    Criterion(String words, String unit, boolean moreIsBetter, Matter matter) {
        this.words = words;
        this.unit = unit;
        this.moreIsBetter = moreIsBetter;
        this.matter = matter;
    }

    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }

    public boolean moreIsBetter() {
        return moreIsBetter;
    }

    /** The wish that weighs it; empty for what the tissues, the look and the size ask for. */
    public Optional<Matter> matter() {
        return Optional.ofNullable(matter);
    }

    private String id() {
        return "CRIT-" + name().replace('_', '-');
    }

    /** Value at the low end of the stated range, constant {@code CRIT-…-LOW}. */
    public double low(Constants constants) {
        return constants.value(id() + "-LOW");
    }

    /** Value at the high end of the stated range, constant {@code CRIT-…-HIGH}. */
    public double high(Constants constants) {
        return constants.value(id() + "-HIGH");
    }

    /** Differences up to this are not worth a word, constant {@code CRIT-…-EVEN}. */
    public double evenBelow(Constants constants) {
        return constants.value(id() + "-EVEN");
    }

    /** The weight where no wish gives one, constant {@code CRIT-…-WEIGHT}. */
    double ownWeight(Constants constants) {
        return constants.value(id() + "-WEIGHT");
    }

    /**
     * The value as a share of the better end.
     *
     * <pre>
     *   u = (x - low) / (high - low), held to 0..1;  1 - u where less is better
     * </pre>
     */
    public double scaled(double value, Constants constants) {
        double share = (value - low(constants)) / (high(constants) - low(constants));
        double held = Math.max(0, Math.min(1, share));
        return moreIsBetter ? held : 1 - held;
    }
}
