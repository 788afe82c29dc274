package domefold.plan;

/**
 * The drawn limits of one side, in rank order where many devices ask, one set for each variant of the error (see
 * {@link DrawnSide}). A variant that leaves a quantity as it is shares its ranks.
 */
final class RankedSide {
    /** The dust that {@link domefold.engine.Exact} allows. */
    private static final double DUST = 1e-9;

    private final VerdictRule rule;
    private final int words;
    private final boolean folds;
    private final DrawSets base;
    private final DrawSets[] widest;
    private final DrawSets[] narrowest;
    private final DrawSets[] volume;
    private final DrawSets[] stretched;
    private final DrawSets[] stretchedLessCover;

    RankedSide(SideNumbers side, DrawnSide drawn, VerdictRule rule, double coverShare, int devices) {
        this.rule = rule;
        words = DrawSets.words(drawn.draws);
        folds = side.has(SideNumbers.STRETCHED);
        int variants = drawn.baseCm.length;
        base = DrawSets.of(drawn.baseCm[0], devices);
        widest = new DrawSets[variants];
        narrowest = new DrawSets[variants];
        volume = new DrawSets[variants];
        stretched = new DrawSets[variants];
        stretchedLessCover = new DrawSets[variants];
        double cover = side.has(SideNumbers.FOLD_PINCH) ? coverShare : 0;
        for (int v = 0; v < variants; v++) {
            boolean sameWidth = v > 0 && drawn.ceilingCm[v] == drawn.ceilingCm[0];
            widest[v] = sameWidth ? widest[0] : DrawSets.of(widest(drawn, v), devices);
            narrowest[v] = sameWidth ? narrowest[0] : DrawSets.of(drawn.ceilingCm[v], devices);
            volume[v] = v > 0 && drawn.volumeMl[v] == drawn.volumeMl[0] ? volume[0]
                    : DrawSets.of(drawn.volumeMl[v], devices);
            if (folds) {
                boolean sameFold = v > 0 && drawn.stretchedCm[v] == drawn.stretchedCm[0];
                stretched[v] = sameFold ? stretched[0] : DrawSets.of(drawn.stretchedCm[v], devices);
                boolean sameCover = sameFold && drawn.foldPinchCm[v] == drawn.foldPinchCm[0];
                stretchedLessCover[v] = sameCover ? stretchedLessCover[0] : cover == 0 ? stretched[v]
                        : DrawSets.of(lessCover(drawn.stretchedCm[v], drawn.foldPinchCm[v], cover), devices);
            }
        }
    }

    /** Widest device that is not tight or outside for its width, per draw. */
    private double[] widest(DrawnSide drawn, int v) {
        double[] cm = new double[drawn.draws];
        for (int i = 0; i < cm.length; i++) {
            cm[i] = Math.min(drawn.limitCm[v][i], drawn.baseCm[v][i] + rule.overBaseCm);
        }
        return cm;
    }

    private static double[] lessCover(double[] stretchedCm, double[] foldPinchCm, double cover) {
        double[] cm = new double[stretchedCm.length];
        for (int i = 0; i < cm.length; i++) {
            cm[i] = stretchedCm[i] - cover * foldPinchCm[i];
        }
        return cm;
    }

    /**
     * Draws of a variant in which the device fits.
     *
     * @param lowMl starting volume up to which the device is not below the band
     * @param highMl starting volume from which it is not above the band
     */
    int fits(int v, DeviceGeometry geometry, double lowMl, double highMl) {
        double widthCm = geometry.device().widthCm();
        return count(widest[v].below(widthCm - DUST), narrowest[v].atMost(widthCm + rule.narrowCm + DUST),
                volume[v].below(highMl - DUST), volume[v].atMost(lowMl + DUST), fold(v, geometry, rule.loweringTightCm));
    }

    /** Draws with error in every reading in which the device is not outside. */
    int notOutside(DeviceGeometry geometry, double lowMl, double highMl) {
        double widthCm = geometry.device().widthCm();
        return count(base.below(widthCm - rule.overBaseCm - DUST), null,
                volume[0].below(highMl - rule.volumeSlackMl - DUST), volume[0].atMost(lowMl + rule.volumeSlackMl + DUST),
                fold(0, geometry, rule.loweringOutsideCm));
    }

    /** Draws in which the fold would go down too far; null where that is not judged. */
    private long[] fold(int v, DeviceGeometry geometry, double loweringCm) {
        double target = geometry.targetCm(0);
        if (!folds || Double.isNaN(target)) {
            return null;
        }
        return (geometry.inRows() ? stretched : stretchedLessCover)[v].below(target - loweringCm - DUST);
    }

    /** Draws inside both "at most" sets and outside all "too" sets; a set that is null says nothing. */
    private int count(long[] tooNarrowBase, long[] wideEnough, long[] tooSmall, long[] smallEnough, long[] tooShort) {
        int count = 0;
        for (int w = 0; w < words; w++) {
            long set = smallEnough[w] & ~tooSmall[w] & ~tooNarrowBase[w];
            if (wideEnough != null) {
                set &= wideEnough[w];
            }
            if (tooShort != null) {
                set &= ~tooShort[w];
            }
            count += Long.bitCount(set);
        }
        return count;
    }
}
