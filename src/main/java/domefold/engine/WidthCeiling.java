package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Width ceiling of a device.
 *
 * <pre>
 *   C = B - c (m + l)       C  width ceiling, cm      B  base width, cm
 *                           m  medial pinch, cm       l  lateral pinch, cm
 *                           c  WID-02: a pinch is a double layer, so half of it covers the edge
 * </pre>
 *
 * Without both pinches only the rule of thumb WID-03 is left, a band. Source: tissue-matched planning, wide teaching use.
 */
public final class WidthCeiling {
    private WidthCeiling() {}

    /** The ceiling from both pinches, cm. */
    public static double cm(double baseCm, double medialPinchCm, double lateralPinchCm, Constants constants) {
        return baseCm - constants.value("WID-02") * (medialPinchCm + lateralPinchCm);
    }

    /** The band of the rule of thumb, for a base width alone, cm. */
    public static Band ruleOfThumbCm(double baseCm, Constants constants) {
        return new Band(baseCm - constants.value("WID-03-HIGH"), baseCm - constants.value("WID-03-LOW"));
    }

    /** Error SD of the ceiling from both pinches, cm. */
    public static double sdCm(double baseSdCm, double medialSdCm, double lateralSdCm, Constants constants) {
        double share = constants.value("WID-02");
        return Math.sqrt(baseSdCm * baseSdCm + share * share * (medialSdCm * medialSdCm + lateralSdCm * lateralSdCm));
    }

    /** The working of {@link #cm}. */
    public static Working working(double baseCm, double medialPinchCm, double lateralPinchCm, Constants constants) {
        return Working.by(constants.get("WID-02"), "width ceiling", Figures.cm(baseCm) + " - "
                        + Figures.cm(constants.value("WID-02")) + " x (" + Figures.cm(medialPinchCm) + " + "
                        + Figures.cm(lateralPinchCm) + ")",
                cm(baseCm, medialPinchCm, lateralPinchCm, constants), "cm");
    }

    /** The working of the stricter end of {@link #ruleOfThumbCm}, which the plan then uses. */
    public static Working workingWithoutPinches(double baseCm, Constants constants) {
        Band band = ruleOfThumbCm(baseCm, constants);
        return Working.by(constants.get("WID-03-HIGH"), "width ceiling, rule of thumb", Figures.cm(baseCm) + " - "
                + Figures.cm(constants.value("WID-03-LOW")) + " to " + Figures.cm(constants.value("WID-03-HIGH"))
                + " = " + Figures.cm(band.low()) + " to " + Figures.cm(band.high()) + "; the narrower end is used",
                band.low(), "cm");
    }
}
