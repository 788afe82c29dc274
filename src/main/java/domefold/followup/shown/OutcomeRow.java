package domefold.followup.shown;

import domefold.basics.Lists;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.outcome.Band;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One published point: how many of a cohort had an outcome by a year.
 *
 * @param study cohort key of the table, for example {@code GEL-A}
 * @param fillWords {@code saline}, {@code gel} or {@code mixed}
 * @param participants number followed; empty where not printed
 * @param detection how the outcome was looked for; decides what may share a range
 * @param outcome code of the table, for example {@code contracture_III_IV}
 * @param unit {@code patient}, {@code implant}, {@code breast} or {@code not stated}
 * @param year years after the operation; empty where not stated
 * @param percent the published estimate, 0 to 100; empty where only a range is printed
 * @param intervalPercent what is printed as low and high
 * @param intervalKind {@code ci95} or another kind; a range is no confidence interval
 */
public record OutcomeRow(
        String study,
        String fillWords,
        String surfaceWords,
        OptionalInt participants,
        String indication,
        String detection,
        String outcome,
        String unit,
        OptionalDouble year,
        OptionalDouble percent,
        Optional<Band> intervalPercent,
        String intervalKind,
        String estimator,
        String source,
        Status status,
        String note) {

    /** All rows, the unusable ones included, in table order. */
    public static List<OutcomeRow> all(Evidence evidence) {
        return evidence.once(All.class, of -> new All(Lists.map(of.table("outcomes").rows(), OutcomeRow::of))).rows();
    }

    private record All(List<OutcomeRow> rows) {}

    private static OutcomeRow of(Table.Row row) {
        OptionalDouble lo = row.number("lo");
        OptionalDouble hi = row.number("hi");
        String n = row.text("n");
        return new OutcomeRow(row.text("study"), row.text("fill"), row.text("surface"),
                n.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(n)), row.text("indication"),
                row.text("detection"), row.text("outcome"), row.text("unit"), row.number("year"), row.number("percent"),
                lo.isPresent() && hi.isPresent() ? Optional.of(new Band(lo.getAsDouble(), hi.getAsDouble())) : Optional.empty(),
                row.text("interval_kind"), row.text("estimator"), row.text("source"), Status.of(row.text("status")),
                row.text("note"));
    }

    /** The country, where the cohort key names a national registry; elsewhere our table does not record it. */
    public Optional<String> country() {
        if (study.startsWith("DK-")) {
            return Optional.of("Denmark");
        }
        return study.startsWith("AU-REG") ? Optional.of("Australia") : Optional.empty();
    }

    /** True when the interval is a 95 % confidence interval and not some other range. */
    public boolean hasConfidenceInterval() {
        return intervalPercent.isPresent() && intervalKind.equals("ci95");
    }

    /** Cohort, size, indication, country, how looked for, source and status in one line. */
    public String provenance() {
        return study + ", " + (participants.isPresent() ? participants.getAsInt() + " followed" : "number not printed") + ", "
                + indication + ", " + country().orElse("country not recorded") + ", " + detection + "; " + source + " ("
                + status.words() + ")";
    }
}
