package domefold.shell;

import domefold.evidence.Constants;

/**
 * An empty shell rolled up: a flattened double sheet as wide as its meridian L from pole to pole,
 * <pre>
 *   d = sqrt(8 t L / (pi phi)),  slit = q d / (2 (1 + e))
 * </pre>
 * t wall thickness, phi packing, e stretch of the opening; q = pi for one roll, (pi + 2) / sqrt 2 for a scroll rolled from
 * both sides (two touching circles of the same area in one band). All but the geometry is assumed.
 *
 * @param diameterCm of a single roll
 * @param singleSlitCm opening for a single roll
 * @param scrollSlitCm opening for a scroll
 * @param thickScrollSlitCm opening for a scroll of a thick shell
 */
public record RolledShell(double diameterCm, double singleSlitCm, double scrollSlitCm, double thickScrollSlitCm) {
    private static final double SCROLL = (Math.PI + 2) / Math.sqrt(2);

    public static RolledShell of(double meridianCm, Constants constants) {
        double thin = diameterCm(constants.value("ROLL-THICKNESS"), meridianCm, constants);
        double thick = diameterCm(constants.value("ROLL-THICKNESS-HIGH"), meridianCm, constants);
        double stretch = 2 * (1 + constants.value("INC-STRETCH"));
        return new RolledShell(thin, Math.PI * thin / stretch, SCROLL * thin / stretch, SCROLL * thick / stretch);
    }

    private static double diameterCm(double thicknessCm, double meridianCm, Constants constants) {
        return Math.sqrt(8 * thicknessCm * meridianCm / (Math.PI * constants.value("ROLL-PACKING")));
    }

    /** Pole-to-pole meridian of a listed dome: quarter-ellipse and base radius. */
    public static double meridianCm(double widthCm, double projectionCm) {
        return EllipseArc.quarterCm(widthCm / 2, projectionCm) + widthCm / 2;
    }
}
