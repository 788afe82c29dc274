package domefold.store;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import domefold.evidence.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        List<Table.Row> rows = new ArrayList<>();
        for (CsvRecord record : CsvReader.builder()
                .commentStrategy(de.siegmar.fastcsv.reader.CommentStrategy.SKIP)
                .allowMissingFields(true)
                .allowExtraFields(true)
                .ofCsvRecord(text)) {
            int line = (int) record.getStartingLineNumber();
            if (columns.isEmpty()) {
                record.getFields().forEach(field -> columns.add(field.strip()));
                continue;
            }
            if (record.getFieldCount() != columns.size()) {
                throw new domefold.outcome.Refusal("csv-row", name + " line " + line, name + " line " + line + " has "
                        + record.getFieldCount() + " cells where the header has " + columns.size());
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                cells.put(columns.get(i), record.getField(i));
            }
            rows.add(new Table.Row(line, cells));
        }
        return new Table(name, columns, rows);
    }
}
