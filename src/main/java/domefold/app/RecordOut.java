package domefold.app;

import domefold.export.Exports;
import domefold.export.pdf.Paper;
import domefold.outcome.Refusal;
import domefold.sheet.Allowed;
import domefold.store.Stored;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A record in any format it may leave in: those of {@link Exports}, its readable text, and the file itself. */
final class RecordOut {
    private static final String TEXT = "text";
    private static final String JSON = "json";

    private RecordOut() {}

    /** Every format by its key. */
    static List<String> formats() {
        List<String> keys = new ArrayList<>(List.of(TEXT));
        Stream.of(Exports.Format.values()).map(Exports.Format::key).forEach(keys::add);
        keys.add(JSON);
        return keys;
    }

    /**
     * The record as bytes.
     *
     * @throws Refusal for a format there is not, and for a record that must not leave
     */
    static byte[] bytes(Stored stored, String format) throws IOException {
        String key = known(format);
        Allowed.toLeave(stored.record());
        return switch (key) {
            case TEXT -> ConsultSaving.summary(stored.loaded()).getBytes(StandardCharsets.UTF_8);
            case JSON -> Files.readAllBytes(stored.file());
            default -> Exports.of(stored.record(), stored.loaded().sha256(), Exports.Format.of(key), Paper.A4);
        };
    }

    /** A name for the file: case code, version and what it is; never a name. */
    static String fileName(Stored stored, String format) {
        String key = known(format);
        String ending = key.equals(TEXT) ? "txt" : key.equals(JSON) ? "json" : Exports.Format.of(key).ending();
        return stored.file().getParent().getFileName() + "-v" + stored.version() + "-" + key + "." + ending;
    }

    private static String known(String format) {
        String key = format.strip().toLowerCase(Locale.ROOT);
        if (!formats().contains(key)) {
            throw new Refusal("export-format", "--as", "'" + format + "' is no format; there are " + String.join(", ", formats()));
        }
        return key;
    }
}
