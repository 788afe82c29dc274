package domefold.store;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables that ship with the program, read from {@code shared/evidence} inside its own jar. */
public final class EvidenceFiles {
    /** Constants, one file per subject. Columns: id, quantity, value, unit, source, status, date, note. */
    private static final List<String> CONSTANT_FILES =
            List.of("constants-sizing", "constants-device", "constants-followup", "constants-choosing", "constants-ladder",
                    "constants-practice");

    private static final List<String> TABLES = List.of("measurements", "populations", "sizing-rules", "outcomes",
            "effects", "surveillance", "diagnostics", "costs", "incision", "ripple-and-fill", "rare-harms",
            "topics", "disagreements", "exchange");

    private EvidenceFiles() {}

    /** Read once, when it is first asked for; whoever else asks meanwhile waits for it. */
    private static final class Once {
        static final Evidence SHIPPED = read();
    }

    /** Everything that ships; the same value each time. */
    public static Evidence shipped() {
        return Once.SHIPPED;
    }

    private static Evidence read() {
        List<Constant> constants = new ArrayList<>();
        for (String file : CONSTANT_FILES) {
            for (Table.Row row : resource(file).rows()) {
                constants.add(constant(row));
            }
        }
        return Evidence.of(Constants.of(constants), TABLES, EvidenceFiles::resource);
    }

    /** SHA-256 over every shipped constant file and table, in a fixed order, for the record. */
    public static String digest() {
        StringBuilder all = new StringBuilder();
        CONSTANT_FILES.forEach(name -> all.append(name).append('\n').append(text(name)));
        TABLES.forEach(name -> all.append(name).append('\n').append(text(name)));
        return Digest.sha256(all.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** One shipped table by name, for those that are not needed at every start. */
    public static Table resource(String name) {
        return CsvText.read(name, text(name));
    }

    private static String text(String name) {
        String path = "shared/evidence/" + name + ".csv";
        try {
            return new String(Shipped.bytes(path).orElseThrow(() -> new IllegalStateException("the program was built without " + path)),
                    StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Constant constant(Table.Row row) {
        return new Constant(row.text("id"), row.text("quantity"), row.number("value").orElseThrow(), row.text("unit"),
                row.text("source"), Status.of(row.text("status")), row.text("date"), row.text("note"),
                Optional.empty(), Optional.empty());
    }
}
