package domefold.store;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The published schemas, with formats asserted: 2026-02-30 is no date. */
public final class Schemas {
    private static final Path FOLDER = Path.of("shared/schema");

    private Schemas() {}

    /**
     * What is wrong with the text.
     *
     * @param schema {@code case-1}, {@code plan-1}, {@code record-1}, {@code settings-1}
     */
    public static List<String> faults(String schema, String json) {
        return registry().getSchema(SchemaLocation.of("urn:domefold:schema:" + schema))
                .validate(json, InputFormat.JSON, context -> context.executionConfig(
                        config -> config.formatAssertionsEnabled(true)))
                .stream().map(Error::toString).toList();
    }

    private static SchemaRegistry registry() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            Map<String, String> byId = files.filter(file -> file.toString().endsWith(".json")).collect(Collectors.toMap(
                    file -> "urn:domefold:schema:" + file.getFileName().toString().replace(".json", ""), Schemas::read));
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(byId));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
