package domefold.followup.survival;

import domefold.followup.shown.Comparability;
import domefold.followup.shown.OutcomeRow;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The points of one study for one outcome, one unit and one way of looking.
 *
 * @param points published points usable for a fit, one per year, by year
 */
public record Cohort(String study, String outcome, String unit, String indication, String detection, String fillWords,
        List<OutcomeRow> points) {
    public Cohort {
        points = List.copyOf(points);
    }

    /** All cohorts of the table that have a usable point with a year. */
    public static List<Cohort> of(List<OutcomeRow> rows) {
        Map<List<String>, List<OutcomeRow>> groups = new LinkedHashMap<>();
        for (OutcomeRow row : rows) {
            if (row.year().isPresent() && Comparability.whyUnusable(row).isEmpty()) {
                groups.computeIfAbsent(List.of(row.study(), row.outcome(), row.unit(), row.indication(), row.detection(),
                        row.fillWords()), key -> new ArrayList<>()).add(row);
            }
        }
        List<Cohort> cohorts = new ArrayList<>();
        groups.forEach((key, group) -> cohorts.add(new Cohort(key.get(0), key.get(1), key.get(2), key.get(3), key.get(4),
                key.get(5), onePerYear(group))));
        return List.copyOf(cohorts);
    }

    /** Of two points for one year the final one stands before an interim one, and else the higher one. */
    private static List<OutcomeRow> onePerYear(List<OutcomeRow> rows) {
        Map<Double, OutcomeRow> byYear = new LinkedHashMap<>();
        Comparator<OutcomeRow> better = Comparator.comparing((OutcomeRow row) -> !row.note().contains("interim"))
                .thenComparing(row -> row.percent().orElseThrow());
        for (OutcomeRow row : rows) {
            byYear.merge(row.year().getAsDouble(), row, (a, b) -> better.compare(a, b) >= 0 ? a : b);
        }
        return byYear.values().stream().sorted(Comparator.comparingDouble(row -> row.year().getAsDouble())).toList();
    }

    /** The curve through its points; empty with fewer than two, or where they do not rise. */
    public Optional<PointFit> fit() {
        List<PointFit.Point> usable = points.stream().filter(row -> row.percent().orElseThrow() > 0).map(Cohort::point).toList();
        boolean rising = usable.size() > 1
                && usable.get(usable.size() - 1).share() > usable.get(0).share();
        return rising ? Optional.of(PointFit.of(usable)) : Optional.empty();
    }

    private static PointFit.Point point(OutcomeRow row) {
        Optional<Band> interval = row.hasConfidenceInterval()
                ? row.intervalPercent().map(band -> new Band(band.low() / 100, band.high() / 100)) : Optional.empty();
        return new PointFit.Point(row.year().orElseThrow(), row.percent().orElseThrow() / 100, interval);
    }

    /** True when a point came from memory: the fit is then shown as unverified. */
    public boolean unverified() {
        return points.stream().anyMatch(row -> row.status().isMemory());
    }

    /** True when every woman was due for MRI. */
    public boolean scheduledMri() {
        return points.stream().allMatch(Comparability::scheduledMri);
    }

    /** Empty when both may stand in one range; else why not. */
    public Optional<String> whyNotWith(Cohort other) {
        if (!outcome.equals(other.outcome)) {
            return Optional.of(study + " and " + other.study + ": different outcomes");
        }
        if (!unit.equals(other.unit)) {
            return Optional.of(study + " counts per " + unit + ", " + other.study + " per " + other.unit
                    + ": the two are never mixed");
        }
        if (!fillWords.equals(other.fillWords)) {
            return Optional.of(study + " and " + other.study + ": different fills");
        }
        if (outcome.equals("rupture") && scheduledMri() != other.scheduledMri()) {
            return Optional.of(study + " and " + other.study + ": detection differs, only one had scheduled MRI");
        }
        return Optional.empty();
    }
}
