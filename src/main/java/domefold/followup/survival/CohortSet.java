package domefold.followup.survival;

import domefold.device.Device;
import domefold.followup.shown.Comparability;
import domefold.followup.shown.OutcomeRow;
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

    /** Cohorts comparable to a first operation with that device that fix a curve for the outcome, counted per woman. */
    public static CohortSet comparable(Device device, String outcome, List<OutcomeRow> rows) {
        List<OutcomeRow> comparable = rows.stream().filter(row -> row.outcome().equals(outcome)
                && row.unit().equals("patient") && Comparability.whyNot(row, device).isEmpty()).toList();
        return new CohortSet(Cohort.of(comparable).stream().filter(cohort -> cohort.fit().isPresent()).toList());
    }
}
