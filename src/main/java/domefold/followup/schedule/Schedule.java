package domefold.followup.schedule;

import domefold.basics.Lists;
import domefold.device.Fill;
import domefold.evidence.Status;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One issuer's advice on imaging women who have no symptom.
 *
 * @param id stable name, for example {@code US-2020}
 * @param version the issuer's version and its dates, as text
 * @param fills the fills it speaks about
 * @param fillWords the fill as the table words it, which may be narrower than {@code fills}
 * @param rule what it asks of a woman without symptoms, in words
 * @param cycle first exam and interval; empty where it states none
 * @param fixedYears the exam years where it names them one by one
 * @param modality how the exam is done
 * @param symptomaticAction what it says to do about a symptom; empty where it says nothing
 * @param superseded true when a later version replaced it
 */
public record Schedule(
        String id,
        String jurisdiction,
        String issuer,
        String version,
        Set<Fill> fills,
        String fillWords,
        String rule,
        Optional<Cycle> cycle,
        List<Integer> fixedYears,
        String modality,
        String symptomaticAction,
        boolean superseded,
        String source,
        Status status,
        String note) {

    /** First exam and interval, each from earliest or shortest to latest or longest, in whole years. */
    public record Cycle(int firstLowYears, int firstHighYears, int intervalLowYears, int intervalHighYears) {
        public Cycle {
            if (firstLowYears < 1 || firstLowYears > firstHighYears || intervalLowYears < 1
                    || intervalLowYears > intervalHighYears) {
                throw new IllegalArgumentException("a cycle runs from low to high and takes at least a year");
            }
        }
    }

    public Schedule {
        fills = Set.copyOf(fills);
        fixedYears = List.copyOf(fixedYears);
    }

    public boolean covers(Fill fill) {
        return fills.contains(fill);
    }

    /** True when exam years follow from it. */
    public boolean statesExams() {
        return cycle.isPresent() || !fixedYears.isEmpty();
    }

    /** Earliest first exam, then the shortest interval: exam years not past the horizon. */
    List<Integer> densestYears(int horizonYears) {
        return cycle.map(c -> count(c.firstLowYears(), c.intervalLowYears(), horizonYears))
                .orElseGet(() -> fixedTo(horizonYears));
    }

    /** Latest first exam, then the longest interval: exam years not past the horizon. */
    List<Integer> sparsestYears(int horizonYears) {
        return cycle.map(c -> count(c.firstHighYears(), c.intervalHighYears(), horizonYears))
                .orElseGet(() -> fixedTo(horizonYears));
    }

    private List<Integer> fixedTo(int horizonYears) {
        return Lists.where(fixedYears, year -> year <= horizonYears);
    }

    private static List<Integer> count(int first, int interval, int horizonYears) {
        List<Integer> years = new ArrayList<>();
        for (int year = first; year <= horizonYears; year += interval) {
            years.add(year);
        }
        return List.copyOf(years);
    }
}
