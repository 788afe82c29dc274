package domefold.store;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
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
        for (CsvRecord record : CsvReader.builder()
                .commentStrategy(de.siegmar.fastcsv.reader.CommentStrategy.SKIP)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .ofCsvRecord(text)) {
            int line = (int) record.getStartingLineNumber();
            if (columns.isEmpty()) {
                record.getFields().forEach(field -> columns.add(field.strip()));
                header = List.copyOf(columns);
                continue;
            }
            if (record.getFieldCount() != columns.size()) {
                throw new domefold.outcome.Refusal("csv-row", name + " line " + line, name + " line " + line + " has "
                        + record.getFieldCount() + " cells where the header has " + columns.size());
            }
            rows.add(new Table.Row(line, header, record.getFields()));
        }
        return new Table(name, columns, rows);
    }
}
