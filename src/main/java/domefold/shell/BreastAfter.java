package domefold.shell;

import domefold.device.Device;
import domefold.evidence.Constants;
import domefold.outcome.Band;

/**
 * The breast after, by one volume-conserving half-ellipsoid: for trend and ranking, not a prediction (about 1 cm either
 * way).
 * <pre>
 *   before: P0 = 6 Vb / (pi BW^2)
 *   after:  W = max(BW, D + kappa pinch), P1 = 6 [Vb (1 - c) + V] / (pi W^2), gain = P1 - P0
 *   lower pole: lambda = q(P1, W/2) / q(P0, BW/2), q a quarter of an ellipse
 *   upper share: s(u) = 1/2 + (u sqrt(1 - u^2) + asin u) / pi of each half-ellipse whose middle lies u half widths above
 *   the nipple, device and gland weighted by their areas pi D P / 4 and pi W P1 / 4 less that
 * </pre>
 * kappa AFT-COVER-SHARE, c AFT-ATROPHY, lambda_max AFT-POLE-STRETCH: assumed. Lengths cm, volumes mL, pinch medial plus
 * lateral, so that half of each double layer covers its edge.
 *
 * @param widthCm breast width after
 * @param projectionBeforeCm projection before, from the breast's volume
 * @param projectionAfterCm projection after
 * @param poleArcRatio lower-pole arc after over before
 * @param upperShareBefore share of the side profile above the nipple, before
 * @param upperShareAfter after
 * @param upperPercentBand after, with the device placed low and high
 */
public record BreastAfter(
        double widthCm,
        double projectionBeforeCm,
        double projectionAfterCm,
        double poleArcRatio,
        double upperShareBefore,
        double upperShareAfter,
        Band upperPercentBand,
        double poleStretchLimit) {

    public static BreastAfter of(
            double breastVolumeMl, double baseWidthCm, double edgePinchCm, Device device, Constants constants) {
        return of(breastVolumeMl, baseWidthCm, edgePinchCm, device.widthCm(), device.projectionCm(), device.nominalMl(),
                constants);
    }

    static BreastAfter of(double breastVolumeMl, double baseWidthCm, double edgePinchCm, double deviceWidthCm,
            double deviceProjectionCm, double deviceMl, Constants constants) {
        double before = halfEllipsoidProjection(breastVolumeMl, baseWidthCm);
        double width = widthAfterCm(baseWidthCm, deviceWidthCm, edgePinchCm, constants);
        double gland = breastVolumeMl * (1 - constants.value("AFT-ATROPHY"));
        double after = halfEllipsoidProjection(gland + deviceMl, width);
        double ratio = EllipseArc.quarterCm(after, width / 2) / EllipseArc.quarterCm(before, baseWidthCm / 2);
        Shares shares = new Shares(deviceWidthCm, deviceProjectionCm, width, after, constants.value("AFT-GLAND-ABOVE"));
        double low = shares.above(constants.value("AFT-DEVICE-ABOVE-LOW"));
        double high = shares.above(constants.value("AFT-DEVICE-ABOVE-HIGH"));
        return new BreastAfter(width, before, after, ratio,
                halfEllipseAbove(constants.value("AFT-GLAND-ABOVE") / (baseWidthCm / 2)),
                shares.above(constants.value("AFT-DEVICE-ABOVE")),
                new Band(100 * Math.min(low, high), 100 * Math.max(low, high)), constants.value("AFT-POLE-STRETCH"));
    }

    /** Gain in projection by the composite, for trend. */
    public double gainCm() {
        return projectionAfterCm - projectionBeforeCm;
    }

    /** How far the fold comes down where the arc asks for more than the skin gives. */
    public double foldLoweringCm(double nippleToFoldCm) {
        return Math.max(0, poleArcRatio - poleStretchLimit) * nippleToFoldCm;
    }

    /** Nipple to fold after, without the lowering: the reading times the ratio, the skin's limit at most. */
    public double nippleToFoldCm(double nippleToFoldCm) {
        return Math.min(poleArcRatio, poleStretchLimit) * nippleToFoldCm;
    }

    /** Breast width after: the base, or the device with part of its cover where that is wider. */
    public static double widthAfterCm(
            double baseWidthCm, double deviceWidthCm, double edgePinchCm, Constants constants) {
        return Math.max(baseWidthCm, deviceWidthCm + constants.value("AFT-COVER-SHARE") * edgePinchCm);
    }

    /** How much further forward the breast comes: RES-02-LOW to RES-02-HIGH per cent of the device's projection. */
    public static Band projectionGainCm(double deviceProjectionCm, Constants constants) {
        return new Band(constants.value("RES-02-LOW") / 100 * deviceProjectionCm,
                constants.value("RES-02-HIGH") / 100 * deviceProjectionCm);
    }

    /** Gap between the breasts after: the gap now less the mean widening of the two sides. */
    public static double gapAfterCm(double gapCm, double leftWideningCm, double rightWideningCm) {
        return gapCm - (leftWideningCm + rightWideningCm) / 2;
    }

    static double halfEllipsoidProjection(double volumeMl, double widthCm) {
        return 6 * volumeMl / (Math.PI * widthCm * widthCm);
    }

    /** Share of a half-ellipse above a point u half widths below its middle; u from -1 to 1. */
    static double halfEllipseAbove(double u) {
        double inside = Math.max(-1, Math.min(1, u));
        return 0.5 + (inside * Math.sqrt(1 - inside * inside) + Math.asin(inside)) / Math.PI;
    }

    private record Shares(
            double deviceWidthCm, double deviceProjectionCm, double widthCm, double projectionCm, double glandAboveCm) {
        double above(double deviceAboveCm) {
            double device = Math.PI * deviceWidthCm * deviceProjectionCm / 4;
            double gland = Math.max(0, Math.PI * widthCm * projectionCm / 4 - device);
            return (device * halfEllipseAbove(deviceAboveCm / (deviceWidthCm / 2))
                    + gland * halfEllipseAbove(glandAboveCm / (widthCm / 2))) / (device + gland);
        }
    }
}
