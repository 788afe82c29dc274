package domefold.plan;

import domefold.engine.ErrorDraws;
import domefold.outcome.Band;
import domefold.patient.Measure;
import java.util.Arrays;

/**
 * One side under the reading error: what its limits would be had each reading come out a little differently. Variant 0
 * has error in every reading; variant k + 1 has none in reading k, which is how the reading that matters most is found.
 *
 * <p>A drawn length or pinch is never below 0, a drawn fill stays between 0 and 100 percent. The volume band keeps its
 * width and moves with the drawn starting volume.
 */
final class DrawnSide {
    private static final double PERCENT = 100;

    final int draws;
    final double[][] baseCm;
    final double[][] ceilingCm;
    final double[][] limitCm;
    final double[][] volumeMl;
    final double[][] stretchedCm;
    final double[][] foldPinchCm;

    DrawnSide(SideNumbers side, VerdictRule rule, ErrorDraws errors) {
        this(side, rule, errors, new double[side.value.length]);
    }

    /**
     * The same where variant k + 1 keeps a share of the error in reading k.
     *
     * @param kept that share of the error SD, 0 to 1
     */
    DrawnSide(SideNumbers side, VerdictRule rule, ErrorDraws errors, double[] kept) {
        draws = errors.size();
        int readings = side.value.length;
        double[][] drawn = new double[readings][];
        double[][] other = new double[readings][];
        for (int k = 0; k < readings; k++) {
            drawn[k] = drawn(side, k, errors, 1);
            other[k] = drawn(side, k, errors, kept[k]);
        }
        baseCm = new double[readings + 1][];
        ceilingCm = new double[readings + 1][];
        limitCm = new double[readings + 1][];
        volumeMl = new double[readings + 1][];
        stretchedCm = new double[readings + 1][];
        foldPinchCm = new double[readings + 1][];
        for (int variant = 0; variant <= readings; variant++) {
            double[][] use = drawn.clone();
            if (variant > 0) {
                use[variant - 1] = other[variant - 1];
            }
            fill(variant, use, side, rule);
        }
    }

    private void fill(int variant, double[][] use, SideNumbers side, VerdictRule rule) {
        int without = variant - 1;
        baseCm[variant] = use[SideNumbers.BASE];
        stretchedCm[variant] = use[SideNumbers.STRETCHED];
        foldPinchCm[variant] = use[SideNumbers.FOLD_PINCH];
        boolean width = variant == 0 || without <= SideNumbers.LATERAL;
        boolean volume = variant == 0 || without == SideNumbers.BASE || without == SideNumbers.SKIN
                || without == SideNumbers.STRETCHED || without == SideNumbers.FILL;
        ceilingCm[variant] = width ? new double[draws] : ceilingCm[0];
        limitCm[variant] = width ? new double[draws] : limitCm[0];
        volumeMl[variant] = volume ? new double[draws] : volumeMl[0];
        for (int i = 0; i < draws; i++) {
            if (width) {
                ceilingCm[variant][i] = side.ceilingCm(use[SideNumbers.BASE][i], use[SideNumbers.MEDIAL][i],
                        use[SideNumbers.LATERAL][i]);
                limitCm[variant][i] = rule.widthLimitCm(use[SideNumbers.BASE][i], ceilingCm[variant][i]);
            }
            if (volume) {
                volumeMl[variant][i] = side.volumeMl(use[SideNumbers.BASE][i], use[SideNumbers.SKIN][i],
                        use[SideNumbers.STRETCHED][i], use[SideNumbers.FILL][i]);
            }
        }
    }

    private static double[] drawn(SideNumbers side, int k, ErrorDraws errors, double share) {
        double highest = SideNumbers.VARYING.get(k) == Measure.PARENCHYMAL_FILL ? PERCENT : Double.POSITIVE_INFINITY;
        double[] values = new double[errors.size()];
        double sd = share * side.sd[k];
        if (sd == 0) {
            Arrays.fill(values, Math.min(Math.max(side.value[k], 0), highest));
            return values;
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.min(Math.max(side.value[k] + sd * errors.z(k, i), 0), highest);
        }
        return values;
    }

    /** Percentiles of the drawn starting volume, on the line between order statistics. */
    Band volumePercentiles(double lowPercent, double highPercent) {
        double[] sorted = volumeMl[0].clone();
        Arrays.sort(sorted);
        return new Band(percentile(sorted, lowPercent), percentile(sorted, highPercent));
    }

    private static double percentile(double[] sorted, double percent) {
        double at = percent / PERCENT * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
