package domefold.followup.shown;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.evidence.Evidence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Outcomes of several devices side by side: one denominator, one year, one unit per row, a figure or "not known" in every
 * cell.
 *
 * @param year the year all figures are for
 * @param devices the columns
 * @param rows the outcomes, first those most asked about
 */
public record RiskTable(int year, List<Device> devices, List<Row> rows) {
    /** What all figures are out of. */
    public static final int DENOMINATOR = RiskFigure.DENOMINATOR;

    /**
     * One outcome over the devices.
     *
     * @param cells one per device, in order; empty means nothing comparable is published by that year
     */
    public record Row(String outcome, String unit, List<Optional<RiskFigure>> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public RiskTable {
        devices = List.copyOf(devices);
        rows = List.copyOf(rows);
    }

    public static RiskTable of(List<Device> devices, int year, Evidence evidence) {
        List<OutcomeRow> table = OutcomeRow.all(evidence);
        List<List<RiskFigure>> columns = Lists.map(devices, device -> RiskFigure.of(device, year, table));
        Set<List<String>> keys = new LinkedHashSet<>();
        columns.forEach(column -> column.forEach(figure -> keys.add(List.of(figure.outcome(), figure.unit()))));
        List<Row> rows = new ArrayList<>();
        for (List<String> key : keys) {
            rows.add(new Row(key.get(0), key.get(1), Lists.map(columns, column -> Lists.first(column,
                    figure -> figure.outcome().equals(key.get(0)) && figure.unit().equals(key.get(1))))));
        }
        rows.sort(OutcomeWords.order(Row::outcome, Row::unit));
        return new RiskTable(year, devices, rows);
    }

    /** A cell in words: both framings, the year, the cohorts and how they are known; or that it is not known. */
    public String words(Row row, int device) {
        Optional<RiskFigure> cell = row.cells().get(device);
        if (cell.isEmpty()) {
            return OutcomeWords.of(row.outcome()) + " by year " + year + ": not known for a device like this";
        }
        RiskFigure figure = cell.get();
        String who = figure.unit().equals("patient") ? "women" : "implants";
        String span = figure.rows().size() == 1 ? "one cohort" : "range over " + figure.rows().size() + " cohorts";
        return figure.words() + " by year " + year + ", per " + DENOMINATOR + " " + who + ": "
                + Framing.both(figure.per100()) + " (" + span + ": "
                + String.join("; ", Lists.map(figure.rows(), OutcomeRow::provenance)) + ")";
    }
}
