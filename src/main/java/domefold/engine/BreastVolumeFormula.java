package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Breast volume from four readings of its cone.
 *
 * <pre>
 *   V = (pi / d) p^2 (m + l + i - p)     p  breast projection, cm     m  medial radius, cm
 *                                        l  lateral radius, cm        i  inferior radius, cm     d  BVF-01
 * </pre>
 *
 * All readings above 0. Better for the difference between the sides than for the volume itself. Source: Qiao, Zhou and
 * Ling 1997, from memory.
 */
public final class BreastVolumeFormula {
    private BreastVolumeFormula() {}

    public static double ml(double projectionCm, double medialCm, double lateralCm, double inferiorCm,
            Constants constants) {
        return Math.PI / constants.value("BVF-01") * projectionCm * projectionCm
                * (medialCm + lateralCm + inferiorCm - projectionCm);
    }

    public static Working working(double projectionCm, double medialCm, double lateralCm, double inferiorCm,
            Constants constants) {
        return Working.by(constants.get("BVF-01"), "breast volume by formula", "(pi / "
                + Gate.figure(constants.value("BVF-01")) + ") x " + Figures.cm(projectionCm) + "^2 x ("
                + Figures.cm(medialCm) + " + " + Figures.cm(lateralCm) + " + " + Figures.cm(inferiorCm) + " - "
                + Figures.cm(projectionCm) + ")", ml(projectionCm, medialCm, lateralCm, inferiorCm, constants), "mL");
    }
}
