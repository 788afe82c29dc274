package domefold.choose;

import domefold.evidence.Constants;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan's devices by what matters to her.
 *
 * @param rows every candidate with its criteria, by device id
 * @param places its place among those outside on neither side
 * @param dominated which of those another beats, by which and in what
 */
public record ByWishes(Map<String, Profiled> rows, Map<String, Order.Place> places, Map<String, Dominance.Dominated> dominated) {

    public static ByWishes of(Plan plan, Constants constants) {
        List<Profiled> rows = CriteriaTable.of(plan, constants, Optional.empty());
        Weights weights = Weights.of(plan.of().wishes(), constants);
        List<Profiled> possible = rows.stream().filter(row -> Placed.both(row.candidate()) != Verdict.OUTSIDE).toList();
        Map<String, Order.Place> places = new HashMap<>();
        Order.of(possible, weights, constants).forEach(place -> places.put(place.row().id(), place));
        Map<String, Profiled> byId = new HashMap<>();
        rows.forEach(row -> byId.put(row.id(), row));
        return new ByWishes(byId, places, Dominance.of(possible, Order.counting(possible, weights)));
    }
}
