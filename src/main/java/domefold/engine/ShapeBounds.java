package domefold.engine;

import domefold.evidence.Constants;

/**
 * What volume a dome of a given width and projection can hold.
 *
 * <pre>
 *   cap             pi P (3 (D/2)^2 + P^2) / 6      D  diameter, cm     P  projection, cm
 *   half-ellipsoid  (pi / 6) D^2 P
 *   cylinder        (pi / 4) D^2 P                  above it a volume is impossible
 * </pre>
 *
 * Plane and solid geometry (GEO-01 to GEO-03); the usual ratio V / (D^2 P) is a proposal (GEO-04).
 */
public final class ShapeBounds {
    private ShapeBounds() {}

    /** What a row of a device list looks like. */
    public enum Plausibility {
        PLAUSIBLE,
        UNUSUAL,
        IMPOSSIBLE
    }

    public static double capMl(double diameterCm, double projectionCm) {
        double half = 0.5 * diameterCm;
        return Math.PI * projectionCm * (3 * half * half + projectionCm * projectionCm) / 6;
    }

    public static double halfEllipsoidMl(double diameterCm, double projectionCm) {
        return Math.PI / 6 * diameterCm * diameterCm * projectionCm;
    }

    public static double cylinderMl(double diameterCm, double projectionCm) {
        return Math.PI / 4 * diameterCm * diameterCm * projectionCm;
    }

    public static Plausibility of(double diameterCm, double projectionCm, double volumeMl, Constants constants) {
        if (Exact.above(volumeMl, cylinderMl(diameterCm, projectionCm))) {
            return Plausibility.IMPOSSIBLE;
        }
        double ratio = volumeMl / (diameterCm * diameterCm * projectionCm);
        boolean usual = !Exact.below(ratio, constants.value("GEO-04-LOW"))
                && !Exact.above(ratio, constants.value("GEO-04-HIGH"));
        return usual ? Plausibility.PLAUSIBLE : Plausibility.UNUSUAL;
    }
}
