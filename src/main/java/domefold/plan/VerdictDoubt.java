package domefold.plan;

import domefold.outcome.Figures;
import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How sure a verdict is under the reading error, and what reading again would buy.
 *
 * @param side whose verdict
 * @param verdict as it stands
 * @param fits share of the draws in which it is "fits"
 * @param tight share in which it is "tight"
 * @param outside share in which it is "outside"
 * @param again what one more take of each reading would do; most bought first
 */
public record VerdictDoubt(Side side, Verdict verdict, double fits, double tight, double outside, List<Again> again) {
    private static final double ONE_IN_A_HUNDRED = 0.01;

    public VerdictDoubt {
        again = again.stream().sorted(Comparator.comparingDouble(Again::changes)).toList();
    }

    /**
     * One more take of a reading.
     *
     * @param measure the reading
     * @param changes share of the draws in which the verdict would still change with the smaller error SD
     */
    public record Again(Measure measure, double changes) {}

    /** Share of the draws in which the verdict is another one. */
    public double changes() {
        return switch (verdict) {
            case FITS -> tight + outside;
            case TIGHT -> fits + outside;
            case OUTSIDE -> fits + tight;
        };
    }

    /** What a take buys: the share of the draws in which the verdict no longer changes. */
    public double bought(Again take) {
        return changes() - take.changes();
    }

    /** The reading worth taking again: the one that buys most, if it buys one draw in a hundred. */
    public Optional<Again> worthwhile() {
        return again.stream().findFirst().filter(take -> bought(take) >= ONE_IN_A_HUNDRED);
    }

    /** For example "LEFT tight: fits in 38, tight in 55, outside in 7 of 100; …". */
    public String text() {
        String shares = side + " " + verdict.key() + ": under the reading error it fits in " + per100(fits) + ", is tight in "
                + per100(tight) + " and outside in " + per100(outside) + " of 100";
        return shares + worthwhile().map(take -> "; " + take.measure().words() + " read once more, the verdict would change in "
                + per100(take.changes()) + " of 100 instead of " + per100(changes()))
                .orElse("; no single reading taken once more changes that by much");
    }

    private static String per100(double share) {
        return Figures.of(100 * share, 0, 0);
    }
}
