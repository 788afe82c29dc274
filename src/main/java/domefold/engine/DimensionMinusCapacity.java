package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * The fold by dimension minus capacity, for comparison only: it never sets a plan.
 *
 * <pre>
 *   I = s H + P              H  device height, cm     P  device projection, cm     s  DIM-03
 *   E = max(DIM-01, I - C)   C  stretched nipple to fold, cm     E  skin that is missing, cm
 * </pre>
 *
 * That E is the difference is read (DIM-01); what I and C are is from memory (DIM-03, DIM-04).
 */
public final class DimensionMinusCapacity {
    private DimensionMinusCapacity() {}

    /** The skin a device asks for, cm. */
    public static double dimensionCm(double heightCm, double projectionCm, Constants constants) {
        return constants.value("DIM-03") * heightCm + projectionCm;
    }

    /** How far below the present fold the new one would lie, cm. */
    public static double excessCm(double dimensionCm, double capacityCm, Constants constants) {
        return Math.max(constants.value("DIM-01"), dimensionCm - capacityCm);
    }

    public static Working working(double heightCm, double projectionCm, Constants constants) {
        return Working.by(constants.get("DIM-03"), "fold by dimension minus capacity, comparison only, unconfirmed",
                Figures.cm(constants.value("DIM-03")) + " x " + Figures.cm(heightCm) + " + " + Figures.cm(projectionCm),
                dimensionCm(heightCm, projectionCm, constants), "cm");
    }
}
