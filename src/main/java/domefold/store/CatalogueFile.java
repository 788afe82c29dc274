package domefold.store;

import de.siegmar.fastcsv.reader.CsvParseException;
import domefold.basics.Lists;
import domefold.device.Catalogue;
import domefold.device.CatalogueCheck;
import domefold.device.CatalogueFinding;
import domefold.device.CatalogueSheet;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Device lists in {@code domefold-catalogue/1}. */
public final class CatalogueFile {
    /** A thousand devices take about 100 kB. */
    private static final int LARGEST_BYTES = 4 << 20;

    private static final String INVENTED = "shared/catalogue/invented.csv";

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
            byte[] bytes = shippedBytes();
            return catalogue(bytes, INVENTED, true, constants, shippedDigest(bytes));
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
        return catalogue(bytes, Shown.path(file), invented, constants, Digest.sha256(bytes));
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
            for (CsvLines.Line line : CsvLines.of(text)) {
                if (line.comment()) {
                    String comment = line.cells().get(0).strip();
                    name = name.isEmpty() ? after(comment, "name:") : name;
                    date = date.isEmpty() ? after(comment, "date:") : date;
                    note = note.isEmpty() ? after(comment, "note:") : note;
                } else if (header.cells().isEmpty()) {
                    header = stripped(line);
                } else {
                    rows.add(stripped(line));
                }
            }
        } catch (CsvParseException failure) {
            throw new Refusal("not-csv", where, where + " is not comma-separated text; see what a device list looks like"
                    + " with 'domefold catalogue list'");
        }
        return new CatalogueSheet(name, date, note, header, rows);
    }

    private static CatalogueSheet.Line stripped(CsvLines.Line line) {
        return new CatalogueSheet.Line(line.number(), Lists.map(line.cells(), String::strip));
    }

    private static Catalogue catalogue(byte[] bytes, String where, boolean invented, Constants constants, String sha256) {
        CatalogueSheet sheet = sheet(InputFile.utf8(bytes, where), where);
        CatalogueCheck check = CatalogueCheck.of(sheet, constants);
        List<CatalogueFinding> faults = Lists.where(check.findings(), CatalogueFinding::isFault);
        if (!faults.isEmpty()) {
            String others = faults.size() == 1 ? "" : String.format(Locale.ROOT,
                    "; %d more faults, see 'domefold catalogue check %s'", faults.size() - 1, where);
            CatalogueFinding first = faults.get(0);
            throw new Refusal(first.code(), first.line() == 0 ? where : where + " line " + first.line(),
                    where + ", " + first.text() + others);
        }
        Path fileName = Path.of(where).getFileName();
        return new Catalogue(sheet.name().isEmpty() ? String.valueOf(fileName) : sheet.name(), sheet.date(), sheet.note(),
                sha256, invented, check.devices());
    }

    private static byte[] shippedBytes() throws IOException {
        return Shipped.bytes(INVENTED).orElseThrow(() -> new IllegalStateException("the program was built without " + INVENTED));
    }

    /** The build takes it once; looking for somebody who can costs a start more than the digest itself. */
    private static String shippedDigest(byte[] bytes) throws IOException {
        Optional<byte[]> taken = Shipped.bytes(INVENTED + ".sha256");
        return taken.isPresent() ? new String(taken.get(), StandardCharsets.US_ASCII).strip() : Digest.sha256(bytes);
    }

    private static String after(String comment, String key) {
        return comment.startsWith(key) ? comment.substring(key.length()).strip() : "";
    }
}
