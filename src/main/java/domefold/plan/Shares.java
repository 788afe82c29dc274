package domefold.plan;

import domefold.patient.Measure;
import java.util.Optional;

/**
 * How often the verdict holds over the error draws.
 *
 * @param notOutside share in which the verdict is not "outside"
 * @param fits share in which it is "fits"
 * @param deciding the reading whose error moves the share of "fits" most; empty where none moves it
 */
record Shares(double notOutside, double fits, Optional<Measure> deciding) {
    static final Shares NEVER = new Shares(0, 0, Optional.empty());

    /**
     * Counts over the draws.
     *
     * @param lowOffsetMl band's low end less the starting volume; the band moves with the drawn volume
     * @param highOffsetMl band's high end less the starting volume
     * @param coverShare share of the fold pinch that covers the lower edge
     */
    static Shares of(SideContext side, DrawnSide drawn, DeviceGeometry geometry, VerdictRule rule, double lowOffsetMl,
            double highOffsetMl, double coverShare) {
        Counter counter = new Counter(drawn, geometry, rule, lowOffsetMl, highOffsetMl,
                side.numbers().has(SideNumbers.FOLD_PINCH) ? coverShare : 0);
        long both = counter.count(0);
        int fits = (int) both;
        int most = 0;
        Optional<Measure> deciding = Optional.empty();
        for (int k = 0; k < SideNumbers.VARYING.size(); k++) {
            boolean moves = side.numbers().sd[k] > 0 && (k != SideNumbers.FOLD_PINCH || !geometry.inRows());
            int change = moves ? Math.abs((int) counter.count(k + 1) - fits) : 0;
            if (change > most) {
                most = change;
                deciding = Optional.of(SideNumbers.VARYING.get(k));
            }
        }
        return new Shares((both >>> Integer.SIZE) / (double) drawn.draws, fits / (double) drawn.draws, deciding);
    }

    private record Counter(DrawnSide drawn, DeviceGeometry geometry, VerdictRule rule, double lowOffsetMl,
            double highOffsetMl, double coverShare) {

        /** Draws that are not outside in the upper half, draws that fit in the lower half. */
        long count(int variant) {
            double[] base = drawn.baseCm[variant];
            double[] ceiling = drawn.ceilingCm[variant];
            double[] limit = drawn.limitCm[variant];
            double[] volume = drawn.volumeMl[variant];
            double[] stretched = drawn.stretchedCm[variant];
            double[] pinch = drawn.foldPinchCm[variant];
            double width = geometry.device().widthCm();
            double nominal = geometry.device().nominalMl();
            boolean arc = !geometry.inRows() && coverShare > 0;
            double target = geometry.targetCm(0);
            int notOutside = 0;
            int fits = 0;
            for (int i = 0; i < base.length; i++) {
                double targetHere = arc ? target + coverShare * pinch[i] : target;
                int bits = rule.bits(width, nominal, base[i], ceiling[i], limit[i], volume[i] + lowOffsetMl,
                        volume[i] + highOffsetMl, targetHere - stretched[i]);
                notOutside += (bits & VerdictRule.OUTSIDE) == 0 ? 1 : 0;
                fits += bits == 0 ? 1 : 0;
            }
            return ((long) notOutside << Integer.SIZE) | fits;
        }
    }
}
