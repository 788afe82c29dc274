package domefold.store;

import de.siegmar.fastcsv.reader.CsvParseException;
import domefold.evidence.Table;
import domefold.outcome.Refusal;
import java.io.IOException;
import java.nio.file.Path;

/** A table that a person hands in. */
public final class CsvFile {
    private static final int LARGEST_BYTES = 4 << 20;

    private CsvFile() {}

    /**
     * The table in that file, named after it.
     *
     * @param what what it should be, for example "a follow-up table"
     * @throws Refusal if it is missing, a folder, too large or not a table
     * @throws StoreFailure if the system will not give it
     */
    public static Table read(Path file, String what) throws IOException {
        String name = Shown.path(file);
        String text = InputFile.utf8(InputFile.bytes(file, what, LARGEST_BYTES), name);
        try {
            Table table = CsvText.read(name, text);
            if (table.columns().isEmpty()) {
                throw new Refusal("empty-table", name, name + " is empty; " + what + " begins with a line of column names");
            }
            return table;
        } catch (CsvParseException failure) {
            throw new Refusal("not-csv", name, name + " is not comma-separated text; " + what + " is asked for");
        }
    }
}
