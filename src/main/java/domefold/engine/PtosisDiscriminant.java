package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Ptosis by two vertical distances.
 *
 * <pre>
 *   ptotic if S &gt; a B + b     S  vertical surface distance, cm     B  vertical base distance, cm
 *                             a  PTO-09-SLOPE                      b  PTO-09-OFFSET, cm
 * </pre>
 *
 * Source: Fujiwara 2017, East Asian women. Strict; classified unrounded.
 */
public final class PtosisDiscriminant {
    private PtosisDiscriminant() {}

    public static double limitCm(double verticalBaseCm, Constants constants) {
        return constants.value("PTO-09-SLOPE") * verticalBaseCm + constants.value("PTO-09-OFFSET");
    }

    public static boolean ptotic(double verticalSurfaceCm, double verticalBaseCm, Constants constants) {
        return Exact.above(verticalSurfaceCm, limitCm(verticalBaseCm, constants));
    }

    public static Working working(double verticalSurfaceCm, double verticalBaseCm, Constants constants) {
        return Working.by(constants.get("PTO-09-SLOPE"), "ptosis discriminant, limit of the surface distance",
                Figures.cm(constants.value("PTO-09-SLOPE")) + " x " + Figures.cm(verticalBaseCm) + " + "
                        + Figures.cm(constants.value("PTO-09-OFFSET")) + " against " + Figures.cm(verticalSurfaceCm),
                limitCm(verticalBaseCm, constants), "cm");
    }
}
