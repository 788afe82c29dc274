package domefold.choose;

import domefold.evidence.Constants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The order her weights give.
 *
 * <pre>
 *   score = sum(w u) / sum(w)      w  weight of a criterion, 0 to 5
 *                                  u  its value as a share of the better end of its stated range
 * </pre>
 *
 * over the criteria with a weight above 0. A criterion that can't be told for a device counts as its worse end for that
 * device, and {@link #unknown} names it; so no device ever changes the order of two others. Scores closer than 1e-9 are a
 * tie and share a rank. The order is a help to look, never a recommendation.
 */
public final class Order {
    private static final double TIE = 1e-9;

    private Order() {}

    /**
     * One place in the order.
     *
     * @param rank 1 for the first; ties share it
     * @param score 0 to 1
     */
    public record Place(int rank, double score, Profiled row) {}

    /** The criteria that count: weighed above 0 and known for any row. */
    public static List<Criterion> counting(List<Profiled> rows, Weights weights) {
        List<Criterion> counting = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            if (weights.of(criterion) > 0 && rows.stream().anyMatch(row -> row.value(criterion).isPresent())) {
                counting.add(criterion);
            }
        }
        return counting;
    }

    /** The criteria that count and can't be told for this row. */
    public static List<Criterion> unknown(Profiled row, List<Criterion> counting) {
        return counting.stream().filter(criterion -> row.value(criterion).isEmpty()).toList();
    }

    /** Score of one row over those criteria; 0 where none counts. */
    public static double score(Profiled row, List<Criterion> counting, Weights weights, Constants constants) {
        double sum = 0;
        double weight = 0;
        for (Criterion criterion : counting) {
            double w = weights.of(criterion);
            OptionalDouble value = row.value(criterion);
            sum += value.isPresent() ? w * criterion.scaled(value.getAsDouble(), constants) : 0;
            weight += w;
        }
        return weight == 0 ? 0 : sum / weight;
    }

    /** All rows, highest score first, ties in the order given. */
    public static List<Place> of(List<Profiled> rows, Weights weights, Constants constants) {
        List<Criterion> counting = counting(rows, weights);
        List<Place> scored = new ArrayList<>();
        for (Profiled row : rows) {
            scored.add(new Place(0, score(row, counting, weights, constants), row));
        }
        scored.sort(Comparator.comparingDouble(Place::score).reversed());
        List<Place> ranked = new ArrayList<>();
        double groupScore = Double.NaN;
        int groupRank = 0;
        for (int i = 0; i < scored.size(); i++) {
            Place place = scored.get(i);
            if (!(Math.abs(place.score() - groupScore) <= TIE)) {
                groupRank = i + 1;
                groupScore = place.score();
            }
            ranked.add(new Place(groupRank, place.score(), place.row()));
        }
        return ranked;
    }
}
