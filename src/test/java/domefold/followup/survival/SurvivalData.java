package domefold.followup.survival;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;

/** Open survival data where Debian's packages put them; a set that is not there skips its test with the reason said. */
final class SurvivalData {
    private static final Path KMSURV = Path.of("/usr/lib/R/site-library/KMsurv/data");
    private static final Path EXPORTED = Path.of("target/survival-data");

    private SurvivalData() {}

    /** Rows of a KMsurv set, column name to text. */
    static List<Map<String, String>> kmsurv(String set) {
        return rows(KMSURV.resolve(set + ".txt.gz"), "package r-cran-kmsurv is not installed");
    }

    /** Right-censored times of a KMsurv set: 1 in {@code failed} means the time is exact. */
    static List<Lifetime> kmsurv(String set, String time, String failed) {
        return kmsurv(set).stream().map(row -> row.get(failed).equals("1")
                ? Lifetime.exact(Double.parseDouble(row.get(time)))
                : Lifetime.intactAt(Double.parseDouble(row.get(time)))).toList();
    }

    /** Times of a set of the survival package, as scripts/fetch-survival-data wrote them. */
    static List<Lifetime> exported(String set) {
        return rows(EXPORTED.resolve(set + ".txt"), "R with r-cran-survival has not written it").stream()
                .map(SurvivalData::interval).toList();
    }

    /** Columns lower and upper, NA for a device still intact. */
    static Lifetime interval(Map<String, String> row) {
        String upper = row.get("upper");
        return new Lifetime(Double.parseDouble(row.get("lower")),
                upper.equals("NA") ? Double.POSITIVE_INFINITY : Double.parseDouble(upper));
    }

    private static List<Map<String, String>> rows(Path file, String whyNot) {
        if (!Files.exists(file)) {
            String text = "SKIPPED: no " + file + " (" + whyNot + "); scripts/fetch-survival-data fetches it";
            System.err.println(text);
            assumeTrue(false, text);
        }
        try (InputStream raw = Files.newInputStream(file);
                InputStream in = file.toString().endsWith(".gz") ? new GZIPInputStream(raw) : raw;
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
            String[] header = reader.readLine().strip().split("\\s+");
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.isBlank()) {
                    rows.add(row(header, line.strip().split("\\s+")));
                }
            }
            return rows;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Map<String, String> row(String[] header, String[] cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < header.length; i++) {
            row.put(header[i], cells[i]);
        }
        return row;
    }
}
