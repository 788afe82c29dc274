package domefold.shell;

import domefold.evidence.Constants;

/**
 * Breast volume from readings, V = (pi / BVF-01) mp^2 (mr + lr + ir - mp): projection and medial, lateral and inferior
 * radius in cm. From memory (BVF-01); of use for the difference between sides rather than for itself.
 */
public final class BreastVolume {
    private BreastVolume() {}

    public static double byRadiiMl(
            double projectionCm, double medialCm, double lateralCm, double inferiorCm, Constants constants) {
        return Math.PI / constants.value("BVF-01") * projectionCm * projectionCm
                * (medialCm + lateralCm + inferiorCm - projectionCm);
    }
}
