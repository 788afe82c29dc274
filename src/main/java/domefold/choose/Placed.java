package domefold.choose;

import domefold.evidence.Constants;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan with the order her weights give to the devices that are outside on neither side.
 *
 * @param plan the plan
 * @param places by device id
 */
record Placed(Plan plan, Map<String, Order.Place> places) {
    static Placed of(Plan plan, Constants constants) {
        List<Profiled> possible = CriteriaTable.of(plan, constants, Optional.empty()).stream()
                .filter(row -> both(row.candidate()) != Verdict.OUTSIDE).toList();
        Map<String, Order.Place> places = new HashMap<>();
        Order.of(possible, Weights.of(plan.of().wishes(), constants), constants)
                .forEach(place -> places.put(place.row().id(), place));
        return new Placed(plan, places);
    }

    /** The stricter of both sides' verdicts. */
    static Verdict both(Candidate candidate) {
        return candidate.left().verdict().and(candidate.right().verdict());
    }

    /** For example {@code 3 of 24}. */
    String place(String id) {
        Order.Place place = places.get(id);
        return place == null ? "not ordered: outside" : place.rank() + " of " + places.size();
    }
}
