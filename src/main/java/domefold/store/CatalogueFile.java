package domefold.store;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CommentStrategy;
import domefold.device.Catalogue;
import domefold.device.CatalogueCheck;
import domefold.device.CatalogueFinding;
import domefold.device.CatalogueSheet;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Device lists in {@code domefold-catalogue/1}. */
public final class CatalogueFile {
    /** A thousand devices take about 100 kB. */
    private static final int LARGEST_BYTES = 4 << 20;

    private static final String INVENTED = "/shared/catalogue/invented.csv";

    private CatalogueFile() {}

    /** The list that ships, invented by {@link domefold.device.Ladder}. */
    public static Catalogue invented() {
        return Once.INVENTED;
    }

    /** Read once, when it is first asked for; whoever else asks meanwhile waits for it. */
    private static final class Once {
        static final Catalogue INVENTED = invented(EvidenceFiles.shipped().constants());
    }

    /** The list that ships, held against these constants. */
    public static Catalogue shipped(Evidence evidence) {
        return evidence.constants() == EvidenceFiles.shipped().constants() ? Once.INVENTED : invented(evidence.constants());
    }

    /** The list that ships. */
    public static Catalogue invented(Constants constants) {
        try {
            return catalogue(shippedBytes(), INVENTED, true, constants);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** {@link #read(Path, Constants)} with the constants that ship. */
    public static Catalogue read(Path file) throws IOException {
        return read(file, EvidenceFiles.shipped().constants());
    }

    /**
     * A list from a file.
     *
     * @throws Refusal if the file is no list or has a fault; queries do not keep it from being used
     * @throws StoreFailure if the system will not give it
     */
    public static Catalogue read(Path file, Constants constants) throws IOException {
        byte[] bytes = InputFile.bytes(file, "a device list", LARGEST_BYTES);
        boolean invented = Arrays.equals(bytes, shippedBytes());
        return catalogue(bytes, Shown.path(file), invented, constants);
    }

    /** A list as it stands in its file, for {@link CatalogueCheck}. */
    public static CatalogueSheet sheet(Path file) throws IOException {
        byte[] bytes = InputFile.bytes(file, "a device list", LARGEST_BYTES);
        return sheet(InputFile.utf8(bytes, Shown.path(file)), Shown.path(file));
    }

    /**
     * A list as it stands in a text.
     *
     * @throws Refusal if it is not even comma-separated text
     */
    public static CatalogueSheet sheet(String text, String where) {
        String name = "";
        String date = "";
        String note = "";
        CatalogueSheet.Line header = new CatalogueSheet.Line(0, List.of());
        List<CatalogueSheet.Line> rows = new ArrayList<>();
        try {
            for (CsvRecord record : CsvReader.builder().commentStrategy(CommentStrategy.READ).allowExtraFields(true)
                    .allowMissingFields(true).ofCsvRecord(text)) {
                if (record.isComment()) {
                    String comment = record.getField(0).strip();
                    name = name.isEmpty() ? after(comment, "name:") : name;
                    date = date.isEmpty() ? after(comment, "date:") : date;
                    note = note.isEmpty() ? after(comment, "note:") : note;
                    continue;
                }
                CatalogueSheet.Line line = new CatalogueSheet.Line((int) record.getStartingLineNumber(),
                        record.getFields().stream().map(String::strip).toList());
                if (header.cells().isEmpty()) {
                    header = line;
                } else {
                    rows.add(line);
                }
            }
        } catch (CsvParseException failure) {
            throw new Refusal("not-csv", where, where + " is not comma-separated text; see what a device list looks like"
                    + " with 'domefold catalogue list'");
        }
        return new CatalogueSheet(name, date, note, header, rows);
    }

    private static Catalogue catalogue(byte[] bytes, String where, boolean invented, Constants constants) {
        CatalogueSheet sheet = sheet(InputFile.utf8(bytes, where), where);
        CatalogueCheck check = CatalogueCheck.of(sheet, constants);
        List<CatalogueFinding> faults = check.findings().stream().filter(CatalogueFinding::isFault).toList();
        if (!faults.isEmpty()) {
            String others = faults.size() == 1 ? "" : String.format(Locale.ROOT,
                    "; %d more faults, see 'domefold catalogue check %s'", faults.size() - 1, where);
            CatalogueFinding first = faults.get(0);
            throw new Refusal(first.code(), first.line() == 0 ? where : where + " line " + first.line(),
                    where + ", " + first.text() + others);
        }
        Path fileName = Path.of(where).getFileName();
        return new Catalogue(sheet.name().isEmpty() ? String.valueOf(fileName) : sheet.name(), sheet.date(), sheet.note(),
                Digest.sha256(bytes), invented, check.devices());
    }

    private static byte[] shippedBytes() throws IOException {
        try (InputStream in = CatalogueFile.class.getResourceAsStream(INVENTED)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without " + INVENTED);
            }
            return in.readAllBytes();
        }
    }

    private static String after(String comment, String key) {
        return comment.startsWith(key) ? comment.substring(key.length()).strip() : "";
    }
}
