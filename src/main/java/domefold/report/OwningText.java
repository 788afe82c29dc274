package domefold.report;

import domefold.basics.Lists;
import domefold.device.Fill;
import domefold.outcome.Numbers;
import domefold.plan.Candidate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Exams and published outcomes of the devices shown, once per fill, the cohorts behind them below. */
final class OwningText {
    private OwningText() {}

    static void write(Page page, List<Candidate> shown) {
        page.heading("What owning it asks");
        if (Lists.all(shown, one -> one.followUp().isEmpty())) {
            page.hanging("  - ", "No imaging schedule is chosen, so no exam is counted.");
            return;
        }
        for (Fill fill : Fill.values()) {
            Set<String> lines = new LinkedHashSet<>();
            Map<String, Set<String>> cohorts = new LinkedHashMap<>();
            for (Candidate.FollowUp plan : plans(shown, fill)) {
                lines.add(plan.text() + " Exams to year " + plan.horizonYears() + ": "
                        + range(String.valueOf(plan.examsLow()), String.valueOf(plan.examsHigh())) + ".");
                for (Candidate.Outcome outcome : plan.outcomes()) {
                    lines.add(line(outcome));
                    outcome.cohorts().forEach(cohort ->
                            cohorts.computeIfAbsent(cohort, unused -> new LinkedHashSet<>()).add(outcome.outcome()));
                }
            }
            if (!lines.isEmpty()) {
                page.line("  " + fill.key());
                lines.forEach(text -> page.hanging("  - ", text));
                cohorts.forEach((cohort, outcomes) -> page.hanging("      ", cohort + ": " + String.join(", ", outcomes)));
            }
        }
    }

    /** Devices of one kind share one plan, which need not be told twice. */
    private static List<Candidate.FollowUp> plans(List<Candidate> shown, Fill fill) {
        Set<Candidate.FollowUp> told = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Candidate.FollowUp> plans = new ArrayList<>();
        for (Candidate one : shown) {
            if (one.device().fill() == fill) {
                one.followUp().filter(told::add).ifPresent(plans::add);
            }
        }
        return plans;
    }

    private static String line(Candidate.Outcome outcome) {
        List<String> keys = Lists.map(outcome.cohorts(), cohort -> cohort.split(",")[0]);
        return outcome.outcome() + " by year " + outcome.year() + ": "
                + range(Numbers.per100(outcome.per100Low()), Numbers.per100(outcome.per100High())) + " per 100 "
                + outcome.unit() + "s (" + String.join(", ", keys) + ")";
    }

    private static String range(String low, String high) {
        return low.equals(high) ? low : low + " to " + high;
    }
}
