package domefold.choose;

import domefold.plan.Candidate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A candidate with its value in each criterion; a criterion that cannot be told for it is absent.
 *
 * @param candidate the device
 * @param values in the criteria's own units
 */
public record Profiled(Candidate candidate, Map<Criterion, Double> values) {
    public Profiled {
        Map<Criterion, Double> copy = new EnumMap<>(Criterion.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
    }

    public OptionalDouble value(Criterion criterion) {
        Double value = values.get(criterion);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    public String id() {
        return candidate.device().id();
    }
}
