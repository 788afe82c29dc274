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
     */
    static Shares of(SideContext side, RankedSide ranks, int draws, DeviceGeometry geometry, double lowOffsetMl,
            double highOffsetMl) {
        double lowMl = geometry.device().nominalMl() - lowOffsetMl;
        double highMl = geometry.device().nominalMl() - highOffsetMl;
        int fits = ranks.fits(0, geometry, lowMl, highMl);
        int most = 0;
        Optional<Measure> deciding = Optional.empty();
        for (int k = 0; k < SideNumbers.VARYING.size(); k++) {
            boolean moves = side.numbers().sd[k] > 0 && (k != SideNumbers.FOLD_PINCH || !geometry.inRows());
            int change = moves ? Math.abs(ranks.fits(k + 1, geometry, lowMl, highMl) - fits) : 0;
            if (change > most) {
                most = change;
                deciding = Optional.of(SideNumbers.VARYING.get(k));
            }
        }
        return new Shares(ranks.notOutside(geometry, lowMl, highMl) / (double) draws, fits / (double) draws, deciding);
    }
}
