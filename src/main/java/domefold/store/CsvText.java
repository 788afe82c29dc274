package domefold.store;

import domefold.basics.Lists;
import domefold.evidence.Table;
import java.util.ArrayList;
import java.util.List;

/** Comma-separated text to a {@link Table}. Lines starting with {@code #} are comments. */
public final class CsvText {
    private CsvText() {}

    /**
     * The text as a table; its first line that is no comment is the header.
     *
     * @throws domefold.outcome.Refusal if a row has more or fewer cells than the header
     */
    public static Table read(String name, String text) {
        List<String> columns = new ArrayList<>();
        List<String> header = List.of();
        List<Table.Row> rows = new ArrayList<>();
        for (CsvLines.Line line : CsvLines.of(text)) {
            if (line.comment()) {
                continue;
            }
            if (columns.isEmpty()) {
                columns.addAll(Lists.map(line.cells(), String::strip));
                header = List.copyOf(columns);
                continue;
            }
            if (line.cells().size() != columns.size()) {
                throw new domefold.outcome.Refusal("csv-row", name + " line " + line.number(), name + " line " + line.number() + " has "
                        + line.cells().size() + " cells where the header has " + columns.size());
            }
            rows.add(new Table.Row(line.number(), header, line.cells()));
        }
        return new Table(name, columns, rows);
    }
}
