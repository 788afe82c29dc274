package domefold.choose;

import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.plan.Candidate;
import domefold.plan.Doubt;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Her order under the reading error: who comes first how often, and between which places a device moves.
 *
 * <p>In each draw the order is of the devices that are outside on neither side in that draw. Of the criteria the margin to
 * the width ceiling and the ripple rank move with the readings; the pocket stays as planned. A shared place counts for all
 * who share it.
 *
 * @param standings the order as it stands, first place first
 * @param others devices that come first in some draw and are outside as it stands, most often first
 */
public record OrderDoubt(List<Standing> standings, List<Standing> others) {
    private static final double TIE = 1e-9;
    private static final double PERCENT = 100;

    public OrderDoubt {
        standings = List.copyOf(standings);
        others = List.copyOf(others);
    }

    /**
     * One device.
     *
     * @param id the device
     * @param rank its place as it stands; 0 where it is outside as it stands
     * @param first share of the draws in which it comes first
     * @param outside share of the draws in which it is outside
     * @param ranks its places over the draws in which it is not, from the 5th to the 95th percentile
     */
    public record Standing(String id, int rank, double first, double outside, Band ranks) {}

    /** The order of a plan under its draws; empty where a side has no band or no device is possible. */
    public static Optional<OrderDoubt> of(Plan plan, Doubt doubt, Weights weights, Constants constants) {
        if (!doubt.judged()) {
            return Optional.empty();
        }
        List<Profiled> rows = CriteriaTable.of(plan, constants, Optional.empty()).stream()
                .filter(row -> everPossible(row.candidate())).toList();
        List<Profiled> possible = rows.stream()
                .filter(row -> Placed.both(row.candidate()) != Verdict.OUTSIDE).toList();
        if (possible.isEmpty()) {
            return Optional.empty();
        }
        List<Criterion> counting = Order.counting(possible, weights);
        double[][] scores = new DrawnScores(plan, doubt, weights, counting, constants).of(rows);
        return Optional.of(standings(rows, scores, Order.of(possible, weights, constants), constants));
    }

    /** False where the device is outside in every draw and as it stands. */
    private static boolean everPossible(Candidate candidate) {
        return Placed.both(candidate) != Verdict.OUTSIDE
                || candidate.left().stability().orElse(0) > 0 && candidate.right().stability().orElse(0) > 0;
    }

    private static OrderDoubt standings(List<Profiled> rows, double[][] scores, List<Order.Place> order,
            Constants constants) {
        int draws = scores[0].length;
        double[] best = new double[draws];
        Arrays.fill(best, Double.NEGATIVE_INFINITY);
        for (double[] score : scores) {
            for (int i = 0; i < draws; i++) {
                best[i] = Math.max(best[i], score[i]);
            }
        }
        double[][] sorted = sorted(scores, draws);
        List<Standing> standings = new ArrayList<>();
        List<Standing> others = new ArrayList<>();
        for (int d = 0; d < scores.length; d++) {
            String id = rows.get(d).id();
            int rank = order.stream().filter(place -> place.row().id().equals(id)).mapToInt(Order.Place::rank).findFirst().orElse(0);
            Standing standing = standing(id, rank, scores[d], best, sorted, constants);
            if (rank > 0) {
                standings.add(standing);
            } else if (standing.first() > 0) {
                others.add(standing);
            }
        }
        standings.sort(Comparator.comparingInt(Standing::rank));
        others.sort(Comparator.comparingDouble(Standing::first).reversed());
        return new OrderDoubt(standings, others);
    }

    /** Scores of each draw, rising; a device outside in a draw is at its low end. */
    private static double[][] sorted(double[][] scores, int draws) {
        double[][] sorted = new double[draws][scores.length];
        for (int i = 0; i < draws; i++) {
            for (int d = 0; d < scores.length; d++) {
                sorted[i][d] = scores[d][i];
            }
            Arrays.sort(sorted[i]);
        }
        return sorted;
    }

    private static Standing standing(String id, int rank, double[] score, double[] best, double[][] sorted,
            Constants constants) {
        int draws = score.length;
        int first = 0;
        int in = 0;
        int[] ranks = new int[draws];
        for (int i = 0; i < draws; i++) {
            if (score[i] == Double.NEGATIVE_INFINITY) {
                continue;
            }
            first += score[i] >= best[i] - TIE ? 1 : 0;
            ranks[in++] = 1 + above(sorted[i], score[i] + TIE);
        }
        Arrays.sort(ranks, 0, in);
        Band band = in == 0 ? new Band(0, 0) : new Band(at(ranks, in, constants.value("VOL-BAND-LOW")),
                at(ranks, in, constants.value("VOL-BAND-HIGH")));
        return new Standing(id, rank, first / (double) draws, 1 - in / (double) draws, band);
    }

    private static int at(int[] sorted, int length, double percent) {
        return sorted[(int) Math.round(percent / PERCENT * (length - 1))];
    }

    /** How many are above the limit. */
    private static int above(double[] rising, double limit) {
        int low = 0;
        int high = rising.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rising[middle] <= limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return rising.length - low;
    }

    /** Share of the draws in which the first place stays first; the least where several share it. */
    public double firstStaysFirst() {
        return standings.stream().filter(s -> s.rank() == 1).mapToDouble(Standing::first).min().orElse(0);
    }

    /** For example "first in her order stays first in 41 of 100 draws and lies on place 1 to 9; …". */
    public String text() {
        Standing first = standings.get(0);
        String also = Stream.concat(standings.stream().skip(1), others.stream())
                .filter(s -> s.first() >= 0.05).sorted(Comparator.comparingDouble(Standing::first).reversed()).limit(3)
                .map(s -> s.id() + " in " + per100(s.first())).collect(Collectors.joining(", "));
        return first.id() + ", first in her order, comes first in " + per100(first.first()) + " of 100 draws of the reading"
                + " error, lies on place " + Figures.of(first.ranks().low(), 0, 0) + " to "
                + Figures.of(first.ranks().high(), 0, 0) + " while it is possible, and is outside in "
                + per100(first.outside()) + (also.isEmpty() ? "" : "; also first: " + also);
    }

    private static String per100(double share) {
        return Figures.of(PERCENT * share, 0, 0);
    }
}
