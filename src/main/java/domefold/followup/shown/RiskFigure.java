package domefold.followup.shown;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.evidence.Status;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One outcome by one year as a range over comparable cohorts.
 *
 * @param outcome code of the table
 * @param year years after the operation
 * @param per100 lowest and highest published estimate per 100
 * @param unit {@code patient} or {@code implant}, never mixed
 * @param rows the published points behind the range
 */
public record RiskFigure(String outcome, int year, Band per100, String unit, List<OutcomeRow> rows) {
    public static final int DENOMINATOR = 100;

    public RiskFigure {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a figure without a published point");
        }
    }

    /** Every outcome published by that year for cohorts comparable to the device, most asked about first. */
    public static List<RiskFigure> of(Device device, int year, List<OutcomeRow> table) {
        Map<String, List<OutcomeRow>> byOutcomeAndUnit = new LinkedHashMap<>();
        for (OutcomeRow row : table) {
            if (row.year().isPresent() && row.year().getAsDouble() == year
                    && Comparability.whyNot(row, device).isEmpty()) {
                byOutcomeAndUnit.computeIfAbsent(row.outcome() + "|" + row.unit(), key -> new ArrayList<>()).add(row);
            }
        }
        List<RiskFigure> figures = new ArrayList<>(Lists.map(byOutcomeAndUnit.values(), rows -> of(year, withoutSupersededLocks(rows))));
        figures.sort(OutcomeWords.order(RiskFigure::outcome, RiskFigure::unit));
        return List.copyOf(figures);
    }

    private static RiskFigure of(int year, List<OutcomeRow> rows) {
        double low = Lists.least(rows, row -> row.percent().orElseThrow());
        double high = Lists.most(rows, row -> row.percent().orElseThrow());
        return new RiskFigure(rows.get(0).outcome(), year, new Band(low, high), rows.get(0).unit(), rows);
    }

    /** Where a cohort has a final and an interim point for the same thing, the final one stands. */
    private static List<OutcomeRow> withoutSupersededLocks(List<OutcomeRow> rows) {
        return Lists.where(rows, row -> !interim(row) || !Lists.any(rows, other -> other.study().equals(row.study()) && !interim(other)));
    }

    private static boolean interim(OutcomeRow row) {
        return row.note().contains("interim");
    }

    /** How the least sure of its points came to us. */
    public Status status() {
        return Collections.max(Lists.map(rows, OutcomeRow::status));
    }

    /** True when a point came from memory. */
    public boolean restsOnMemory() {
        return Lists.any(rows, row -> row.status().isMemory());
    }

    /** True when a cohort behind it had both surfaces, or a surface that is not named. */
    public boolean mixesSurfaces() {
        return Lists.any(rows, row -> row.surfaceWords().equals("mixed")
                || (row.surfaceWords().contains("smooth") && row.surfaceWords().contains("textured")));
    }

    public String words() {
        return OutcomeWords.of(outcome);
    }
}
