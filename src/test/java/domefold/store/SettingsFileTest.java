package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.followup.course.PriceList;
import domefold.outcome.Refusal;
import domefold.plan.WidthSchool;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SettingsFileTest {
    private static final Evidence SHIPPED = EvidenceFiles.shipped();
    private static final Path SAVED = Path.of("src/test/resources/saved/settings-1.json");

    @TempDir
    Path folder;

    private Settings read(String text) throws IOException {
        return SettingsFile.read(Files.writeString(folder.resolve("settings.json"), text), SHIPPED);
    }

    /** The first version ever written stays readable. */
    @Test
    void theSavedSampleIsRead() throws IOException {
        Settings settings = SettingsFile.read(SAVED, SHIPPED);
        assertEquals(WidthSchool.CEILING, settings.widthSchool().orElseThrow());
        assertEquals(SAVED.toAbsolutePath().resolveSibling("devices.csv"), settings.catalogue().orElseThrow());
        assertEquals("US-2020", settings.defaults().surveillance().orElseThrow());
        assertEquals(480.5, settings.prices().orElseThrow().of(PriceList.Item.MRI).orElseThrow());
        assertTrue(settings.prices().orElseThrow().of(PriceList.Item.EXCHANGE_GEL).isEmpty(), "not known is not zero");
        assertEquals(List.of(), Schemas.faults("settings-1", Files.readString(SAVED)));
    }

    @Test
    void whatIsWrittenReadsBackTheSame() throws IOException {
        Settings settings = SettingsFile.read(SAVED, SHIPPED);
        Path file = folder.resolve("new/settings.json");
        SettingsFile.write(file, settings);
        assertEquals(settings, SettingsFile.read(file, SHIPPED));
        assertEquals(List.of(), Schemas.faults("settings-1", Files.readString(file)));
    }

    @Test
    void withoutAFileNothingIsSet() throws IOException {
        assertEquals(Settings.NONE, SettingsFile.read(folder.resolve("none.json"), SHIPPED));
    }

    @Test
    void anOverrideIsTheSurgeonsAndTheShippedValueStaysInside() throws IOException {
        Constants constants = SettingsFile.read(SAVED, SHIPPED).applied(SHIPPED).constants();
        Constant changed = constants.get("VERDICT-SCHOOL-BASE-LESS");
        assertEquals(0.7, changed.value());
        assertEquals(Status.SURGEON, changed.status());
        assertEquals(0.5, changed.original().orElseThrow().value());
        assertEquals(0.5, SHIPPED.constants().value("VERDICT-SCHOOL-BASE-LESS"));
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                Arguments.of("domefold-settings/1", "domefold-settings/2", "newer-format", "format"),
                Arguments.of("\"practice\"", "\"practise\"", "unknown-field", "practise"),
                Arguments.of("VERDICT-SCHOOL-BASE-LESS", "VERDICT-SCHOOL-BASE-LES", "unknown-constant", "overrides[0].constant"),
                Arguments.of("0.7", "-0.7", "out-of-range", "overrides[0].value"),
                Arguments.of("0.7", "\"0.7\"", "wrong-type", "overrides[0].value"),
                Arguments.of("my own series", " ", "no-reason", "overrides[0].reason"),
                Arguments.of("2026-02-01", "2026-02-31", "bad-date", "overrides[0].date"),
                Arguments.of("\"ceiling\"", "\"wide\"", "unknown-word", "widthSchool"),
                Arguments.of("US-2020", "US-2002", "unknown-schedule", "defaults.surveillance"),
                Arguments.of("\"EUR\"", "\"\"", "no-currency", "prices.currency"),
                Arguments.of("480.5", "-1", "out-of-range", "prices.mri"),
                Arguments.of("\"mri\"", "\"mrt\"", "unknown-field", "prices.mrt"));
    }

    @ParameterizedTest(name = "{1} is refused as {2}")
    @MethodSource("slips")
    void aSlipIsRefusedByNameAndPlace(String right, String wrong, String code, String where) throws IOException {
        String text = Files.readString(SAVED);
        assertTrue(text.contains(right), right);
        Refusal refusal = assertThrows(Refusal.class, () -> read(text.replace(right, wrong)));
        assertEquals(code, refusal.code(), refusal.getMessage());
        assertEquals(where, refusal.where());
    }

    @Test
    void aConstantThatIsOnlyShownCannotBeOverridden() throws IOException {
        Constant shown = new Constant("SHOWN-ONLY", "something recalled", 1, "cm", "nobody", Status.MEMORY_LOW, "2026-01-01", "",
                Optional.empty(), Optional.empty());
        Evidence evidence = SHIPPED.with(Constants.of(List.of(shown)));
        Path file = Files.writeString(folder.resolve("settings.json"), "{ \"format\": \"domefold-settings/1\", \"overrides\": [ { "
                + "\"constant\": \"SHOWN-ONLY\", \"value\": 1, \"date\": \"2026-02-01\", \"reason\": \"x\" } ] }");
        assertEquals("constant-not-used", assertThrows(Refusal.class, () -> SettingsFile.read(file, evidence)).code());
    }
}
