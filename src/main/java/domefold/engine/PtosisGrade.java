package domefold.engine;

import domefold.evidence.Evidence;
import domefold.patient.Ptosis;

/**
 * Ptosis grade from where nipple and gland stand against the fold. The scheme uses no centimetres.
 *
 * <pre>
 *   nipple at the fold                              grade I       PTO-01
 *   nipple below, above the lowest contour          grade II      PTO-02
 *   nipple below, at the lowest contour             grade III     PTO-03
 *   nipple above, gland below                       glandular     PTO-04
 * </pre>
 */
public final class PtosisGrade {
    private PtosisGrade() {}

    /** Where the nipple stands. */
    public enum Nipple {
        ABOVE_FOLD,
        AT_FOLD,
        BELOW_FOLD,
        AT_LOWEST_CONTOUR
    }

    public static Ptosis of(Nipple nipple, boolean glandBelowFold) {
        return switch (nipple) {
            case AT_FOLD -> Ptosis.GRADE_I;
            case BELOW_FOLD -> Ptosis.GRADE_II;
            case AT_LOWEST_CONTOUR -> Ptosis.GRADE_III;
            case ABOVE_FOLD -> glandBelowFold ? Ptosis.GLANDULAR : Ptosis.NONE;
        };
    }

    /** What the grade means, in a sentence, and for a lift. */
    public static String words(Ptosis grade) {
        return switch (grade) {
            case NONE -> "no ptosis";
            case GLANDULAR -> "glandular ptosis (nipple above the fold, gland below it): a device with or without fold"
                    + " lowering may do";
            case GRADE_I -> "ptosis grade I (nipple at the fold): a device with or without fold lowering may be enough";
            case GRADE_II -> "ptosis grade II (nipple below the fold, above the lowest contour): discuss a lift, with or"
                    + " without a device";
            case GRADE_III -> "ptosis grade III (nipple below the fold, at the lowest contour): discuss a lift, with or"
                    + " without a device";
        };
    }

    /** The row behind the meaning: PTO-06 for grades that want a lift discussed, PTO-07 for the milder ones. */
    public static SizingRule rule(Ptosis grade, Evidence evidence) {
        return SizingRule.of(wantsLift(grade) ? "PTO-06" : "PTO-07", evidence);
    }

    /** True for grades II and III. */
    public static boolean wantsLift(Ptosis grade) {
        return grade == Ptosis.GRADE_II || grade == Ptosis.GRADE_III;
    }
}
