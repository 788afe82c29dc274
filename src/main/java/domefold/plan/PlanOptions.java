package domefold.plan;

/**
 * How a plan is computed, apart from the case.
 *
 * @param widthSchool how wide a device the surgeon accepts
 * @param draws error draws; a power of two spreads evenly
 * @param seed fixes the draws, so that the answer is the same every time
 */
public record PlanOptions(WidthSchool widthSchool, int draws, long seed) {
    public static final PlanOptions DEFAULT = new PlanOptions(WidthSchool.CEILING_AND_WIDENING, 1024, 20260304L);

    public PlanOptions {
        if (draws < 2) {
            throw new IllegalArgumentException("a band needs at least two draws, got " + draws);
        }
    }

    public PlanOptions with(WidthSchool school) {
        return new PlanOptions(school, draws, seed);
    }
}
