package domefold.followup.survival;

import domefold.outcome.Refusal;
import java.util.List;

/** Cohorts that may stand in one range: same outcome, unit, fill and way of looking. */
public record CohortSet(List<Cohort> cohorts) {

    /** @throws Refusal if two of them may not stand together */
    public CohortSet {
        cohorts = List.copyOf(cohorts);
        for (Cohort one : cohorts) {
            for (Cohort other : cohorts) {
                one.whyNotWith(other).ifPresent(why -> {
                    throw new Refusal("cohorts-differ", one.study() + ", " + other.study(), why);
                });
            }
        }
    }
}
