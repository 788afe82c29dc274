package domefold.engine;

import domefold.evidence.Constants;

/**
 * What a difference in natural volume asks for.
 *
 * <pre>
 *   d = |left - right|, mL     d &lt; ASY-10 same devices;  d &gt; ASY-12 different ones;  between, ends included, discuss
 * </pre>
 *
 * Our own proposal: no measured threshold of what can be seen exists.
 */
public enum AsymmetryClass {
    SAME("the same device on both sides"),
    DISCUSS("discuss whether the devices should differ"),
    DIFFERENT("different volumes or profiles");

    private final String words;

    AsymmetryClass(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public static AsymmetryClass of(double leftMl, double rightMl, Constants constants) {
        double difference = Math.abs(leftMl - rightMl);
        if (Exact.below(difference, constants.value("ASY-10"))) {
            return SAME;
        }
        return Exact.above(difference, constants.value("ASY-12")) ? DIFFERENT : DISCUSS;
    }

    /** Natural volume and device together, mL (ASY-13). */
    public static double totalMl(double naturalMl, double deviceMl) {
        return naturalMl + deviceMl;
    }
}
