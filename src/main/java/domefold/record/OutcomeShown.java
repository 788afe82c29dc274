package domefold.record;

import java.util.List;

/**
 * A published figure that was shown in the consult.
 *
 * @param outcome what happens, in words
 * @param year years after surgery
 * @param per100Low lowest over the cohorts
 * @param per100High highest over the cohorts
 * @param unit {@code patient} or {@code implant}: what the hundred counts
 * @param cohorts the cohorts behind it
 * @param status how the least sure of the figures came to us, as a status code; each cohort names its own
 */
public record OutcomeShown(
        String outcome, int year, double per100Low, double per100High, String unit, List<String> cohorts, String status) {

    public OutcomeShown {
        cohorts = List.copyOf(cohorts);
    }
}
