package domefold.plan;

import domefold.evidence.Constants;

/**
 * The comparisons behind a verdict, as bits of an int, on unrounded values and strict as written.
 *
 * <pre>
 *   outside   w &gt; B + WID-01;  v &gt; high + s;  v &lt; low - s;  L &gt; VERDICT-LOWERING-OUTSIDE
 *   tight     w &gt; limit of the width school;  w &lt; C - VERDICT-WIDTH-NARROW;  v outside the band;
 *             L &gt; VERDICT-LOWERING-TIGHT
 *   w  device width, cm    B  base width, cm    C  width ceiling, cm    v  volume, mL    L  fold lowering, cm
 *   s  VERDICT-VOLUME, mL
 * </pre>
 *
 * A value that is not known is NaN and raises no bit. Thresholds are our own proposals unless their row says otherwise.
 */
final class VerdictRule {
    static final int WIDTH_OVER_BASE = 1;
    static final int VOLUME_FAR_ABOVE = 1 << 1;
    static final int VOLUME_FAR_BELOW = 1 << 2;
    static final int LOWERING_LARGE = 1 << 3;
    static final int BASE_WIDENED = 1 << 4;
    static final int WIDTH_NARROW = 1 << 5;
    static final int VOLUME_ABOVE = 1 << 6;
    static final int VOLUME_BELOW = 1 << 7;
    static final int LOWERING = 1 << 8;
    static final int OUTSIDE = WIDTH_OVER_BASE | VOLUME_FAR_ABOVE | VOLUME_FAR_BELOW | LOWERING_LARGE;

    /** The dust that {@link domefold.engine.Exact} allows, inlined. */
    private static final double DUST = 1e-9;

    final double overBaseCm;
    final double widenedCm;
    final double narrowCm;
    final double baseLessCm;
    final double volumeSlackMl;
    final double loweringTightCm;
    final double loweringOutsideCm;
    final WidthSchool school;

    VerdictRule(Constants constants, WidthSchool school) {
        this.school = school;
        overBaseCm = constants.value("WID-01");
        widenedCm = constants.value("VERDICT-BASE-WIDENED");
        narrowCm = constants.value("VERDICT-WIDTH-NARROW");
        baseLessCm = constants.value("VERDICT-SCHOOL-BASE-LESS");
        volumeSlackMl = constants.value("VERDICT-VOLUME");
        loweringTightCm = constants.value("VERDICT-LOWERING-TIGHT");
        loweringOutsideCm = constants.value("VERDICT-LOWERING-OUTSIDE");
    }

    /** Widest device that is not tight for its width, cm. */
    double widthLimitCm(double baseCm, double ceilingCm) {
        return switch (school) {
            case CEILING_AND_WIDENING -> ceilingCm + widenedCm;
            case CEILING -> ceilingCm;
            case BASE_LESS -> baseCm - baseLessCm;
        };
    }

    /** The bits that are raised. */
    int bits(double widthCm, double volumeMl, double baseCm, double ceilingCm, double limitCm, double lowMl,
            double highMl, double loweringCm) {
        int bits = 0;
        if (widthCm > baseCm + overBaseCm + DUST) {
            bits |= WIDTH_OVER_BASE;
        } else if (widthCm > limitCm + DUST) {
            bits |= BASE_WIDENED;
        }
        if (widthCm < ceilingCm - narrowCm - DUST) {
            bits |= WIDTH_NARROW;
        }
        if (volumeMl > highMl + DUST) {
            bits |= volumeMl > highMl + volumeSlackMl + DUST ? VOLUME_FAR_ABOVE : VOLUME_ABOVE;
        } else if (volumeMl < lowMl - DUST) {
            bits |= volumeMl < lowMl - volumeSlackMl - DUST ? VOLUME_FAR_BELOW : VOLUME_BELOW;
        }
        if (loweringCm > loweringTightCm + DUST) {
            bits |= loweringCm > loweringOutsideCm + DUST ? LOWERING_LARGE : LOWERING;
        }
        return bits;
    }

    static Verdict verdict(int bits) {
        return (bits & OUTSIDE) != 0 ? Verdict.OUTSIDE : bits != 0 ? Verdict.TIGHT : Verdict.FITS;
    }
}
