package domefold.choose;

import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Doubt;
import domefold.plan.Plan;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The scores of {@link Order} in each draw of the reading error.
 *
 * <pre>
 *   margin_i = min over sides of (ceiling_i - width)
 *   edges_i  = edges exp(-(c_i - c) / c0)       c   the thinner cover of the two sides, cm: RIP-PINCH-SHARE x upper
 *                                                   pinch, plus RIP-MUSCLE-COVER under muscle;  c0  RIP-COVER-LENGTH
 * </pre>
 */
final class DrawnScores {
    private final Doubt doubt;
    private final List<Criterion> counting;
    private final Weights weights;
    private final Constants constants;
    private final double[] ceilingCm;
    private final double[] thinning;
    private final double allWeights;

    DrawnScores(Plan plan, Doubt doubt, Weights weights, List<Criterion> counting, Constants constants) {
        this.doubt = doubt;
        this.counting = counting;
        this.weights = weights;
        this.constants = constants;
        ceilingCm = least(doubt.ceilingCm(Side.LEFT), doubt.ceilingCm(Side.RIGHT));
        thinning = counting.contains(Criterion.EDGES) ? thinning(plan) : new double[0];
        allWeights = counting.stream().mapToDouble(weights::of).sum();
    }

    private static double[] least(double[] one, double[] other) {
        double[] least = new double[one.length];
        for (int i = 0; i < least.length; i++) {
            least[i] = Math.min(one[i], other[i]);
        }
        return least;
    }

    /** The factor on every ripple index, draw by draw. */
    private double[] thinning(Plan plan) {
        double[] left = coverCm(plan, Side.LEFT);
        double[] right = coverCm(plan, Side.RIGHT);
        double now = Math.min(coverCm(plan, Side.LEFT, pinchCm(plan, Side.LEFT)),
                coverCm(plan, Side.RIGHT, pinchCm(plan, Side.RIGHT)));
        double[] factor = least(left, right);
        for (int i = 0; i < factor.length; i++) {
            factor[i] = Math.exp((now - factor[i]) / constants.value("RIP-COVER-LENGTH"));
        }
        return factor;
    }

    private double[] coverCm(Plan plan, Side side) {
        double[] cover = doubt.upperPinchCm(side).clone();
        for (int i = 0; i < cover.length; i++) {
            cover[i] = coverCm(plan, side, cover[i]);
        }
        return cover;
    }

    private double coverCm(Plan plan, Side side, double pinchCm) {
        boolean under = plan.side(side).pocket().map(Pocket::underMuscle).orElse(false);
        return constants.value("RIP-PINCH-SHARE") * pinchCm + (under ? constants.value("RIP-MUSCLE-COVER") : 0);
    }

    private static double pinchCm(Plan plan, Side side) {
        return plan.of().side(side).readings().value(Measure.UPPER_PINCH).orElse(Double.NaN);
    }

    /** A row per device; minus infinity in the draws in which it is outside. */
    double[][] of(List<Profiled> rows) {
        return rows.stream().map(this::of).toArray(double[][]::new);
    }

    private double[] of(Profiled row) {
        Candidate candidate = row.candidate();
        boolean[] allowed = doubt.allowed(candidate);
        double fixed = 0;
        for (Criterion criterion : counting) {
            if (criterion != Criterion.TISSUE_MARGIN && criterion != Criterion.EDGES) {
                OptionalDouble value = row.value(criterion);
                fixed += value.isPresent() ? weights.of(criterion) * criterion.scaled(value.getAsDouble(), constants) : 0;
            }
        }
        Scaled margin = scaled(Criterion.TISSUE_MARGIN);
        Scaled edges = scaled(Criterion.EDGES);
        double widthCm = candidate.device().widthCm();
        OptionalDouble ripple = row.value(Criterion.EDGES);
        double[] scores = new double[allowed.length];
        for (int i = 0; i < scores.length; i++) {
            if (!allowed[i]) {
                scores[i] = Double.NEGATIVE_INFINITY;
                continue;
            }
            double sum = fixed;
            if (margin.weight() > 0) {
                sum += margin.weight() * margin.share(ceilingCm[i] - widthCm);
            }
            if (edges.weight() > 0 && ripple.isPresent()) {
                sum += edges.weight() * edges.share(ripple.getAsDouble() * thinning[i]);
            }
            scores[i] = allWeights == 0 ? 0 : sum / allWeights;
        }
        return scores;
    }

    private Scaled scaled(Criterion criterion) {
        return new Scaled(counting.contains(criterion) ? weights.of(criterion) : 0, criterion.low(constants),
                criterion.high(constants), criterion.moreIsBetter());
    }

    /** {@link Criterion#scaled} with its constants at hand. */
    private record Scaled(double weight, double low, double high, boolean moreIsBetter) {
        double share(double value) {
            double held = Math.max(0, Math.min(1, (value - low) / (high - low)));
            return moreIsBetter ? held : 1 - held;
        }
    }
}
