package domefold.choose;

import domefold.evidence.Constants;
import domefold.patient.Wishes;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** How much each criterion counts, 0 to 5. */
public record Weights(Map<Criterion, Double> byCriterion) {
    public Weights {
        Map<Criterion, Double> copy = new EnumMap<>(Criterion.class);
        copy.putAll(byCriterion);
        byCriterion = Collections.unmodifiableMap(copy);
    }

    /** Her weights; what she was not asked counts 0, and tissue margin, look and size count what the table says. */
    public static Weights of(Wishes wishes, Constants constants) {
        Map<Criterion, Double> weights = new EnumMap<>(Criterion.class);
        for (Criterion criterion : Criterion.values()) {
            weights.put(criterion, criterion.matter()
                    .map(matter -> (double) wishes.weights().getOrDefault(matter, 0))
                    .orElseGet(() -> criterion.ownWeight(constants)));
        }
        return new Weights(weights);
    }

    public double of(Criterion criterion) {
        return byCriterion.getOrDefault(criterion, 0.0);
    }

    public Weights with(Criterion criterion, double weight) {
        if (!(weight >= 0 && weight <= Wishes.HIGHEST_WEIGHT)) {
            throw new IllegalArgumentException("a weight is 0 to " + Wishes.HIGHEST_WEIGHT + ", got " + weight);
        }
        Map<Criterion, Double> copy = new EnumMap<>(Criterion.class);
        copy.putAll(byCriterion);
        copy.put(criterion, weight);
        return new Weights(copy);
    }
}
