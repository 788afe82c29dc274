package domefold.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LadderTest {
    private static final Path FILE = Path.of("shared/catalogue/invented.csv");
    private static final Constants CONSTANTS = EvidenceFiles.shipped().constants();

    @Test
    void theShippedListIsExactlyWhatTheRuleGives() throws IOException {
        if (Boolean.getBoolean("approved.update")) {
            Files.writeString(FILE, Ladder.file(CONSTANTS));
        }
        assertEquals(Ladder.file(CONSTANTS), Files.readString(FILE));
    }

    @Test
    void theShippedListPassesItsOwnCheckWithoutAFinding() throws IOException {
        CatalogueCheck check = CatalogueCheck.of(CatalogueFile.sheet(FILE), CONSTANTS);
        assertEquals(List.of(), check.findings());
        assertEquals(Ladder.devices(CONSTANTS), check.devices());
    }

    @Test
    void itSpansBothFillsBothSurfacesFiveClassesAnd120To800Millilitres() {
        List<Device> devices = Ladder.devices(CONSTANTS);
        assertEquals(143, devices.size());
        for (Fill fill : Fill.values()) {
            assertEquals(Set.of(Profile.values()), devices.stream().filter(device -> device.fill() == fill)
                    .map(Device::profile).collect(Collectors.toSet()));
            assertEquals(Set.of(Surface.values()), devices.stream().filter(device -> device.fill() == fill)
                    .map(Device::surface).collect(Collectors.toSet()));
        }
        assertEquals(120, devices.stream().mapToDouble(Device::nominalMl).min().orElseThrow());
        assertEquals(800, devices.stream().mapToDouble(Device::nominalMl).max().orElseThrow());
    }

    @Test
    void flatClassesStopBeforeTheirBaseIsWiderThanAnyBreast() {
        for (Device device : Ladder.devices(CONSTANTS)) {
            double capMl = device.profile() == Profile.LOW ? 450 : device.profile() == Profile.MODERATE ? 600 : 800;
            assertTrue(device.nominalMl() <= capMl, device.id());
        }
    }

    /** Width and projection without drift, cm: table of the rule worked out by hand to two decimals (own). */
    @ParameterizedTest(name = "{0} at {1} mL is {2} by {3} cm")
    @CsvSource({"LOW, 120, 9.88, 2.37", "LOW, 400, 14.76, 3.54", "MODERATE, 300, 12.59, 3.65", "MODERATE, 600, 15.86, 4.60",
        "MODERATE_PLUS, 200, 10.38, 3.58", "MODERATE_PLUS, 800, 16.48, 5.68", "FULL, 300, 11.04, 4.75",
        "FULL, 700, 14.64, 6.30", "EXTRA_FULL, 120, 7.64, 3.97", "EXTRA_FULL, 800, 14.37, 7.47"})
    void widthAndProjectionFollowTheRule(Profile profile, double volumeMl, double widthCm, double projectionCm) {
        Constants withoutDrift = CONSTANTS.with("LIST-DRIFT",
                new Constant.Override(0, LocalDate.of(2026, 11, 25), "the table has none"));
        Ladder.Shape shape = Ladder.shape(profile, volumeMl, withoutDrift);
        assertEquals(widthCm, shape.widthCm(), 0.0051);
        assertEquals(projectionCm, shape.projectionCm(), 0.0051);
    }

    @Test
    void roundedShapesKeepTheFormFactorWithinTheRoundingOfALabel() {
        for (Device device : Ladder.devices(CONSTANTS)) {
            double k = device.nominalMl() / DomeBounds.of(device.widthCm(), device.heightCm(), device.projectionCm())
                    .cylinderMl();
            assertEquals(0.66, k, 0.66 * (2 * 0.05 / device.widthCm() + 0.05 / device.projectionCm()) * 1.01, device.id());
        }
    }

    @ParameterizedTest(name = "{0} mL may be filled to {1} mL")
    @CsvSource({"120, 145", "240, 265", "280, 310", "360, 395", "480, 530", "600, 650", "800, 850"})
    void salineMayBeFilledATenthAboveNominalButTwentyFiveToFifty(double nominalMl, double mostMl) {
        assertEquals(nominalMl, Ladder.labelFillMl(nominalMl, CONSTANTS).low());
        assertEquals(mostMl, Ladder.labelFillMl(nominalMl, CONSTANTS).high());
    }

    @Test
    void referencesAreWordsNobodyCouldTakeForAnOrderCode() {
        for (Device device : Ladder.devices(CONSTANTS)) {
            assertTrue(device.id().matches("(gel|saline)-(smooth|textured)-[a-z-]+-[0-9]+"), device.id());
            assertTrue(device.line().startsWith("invented "), device.line());
        }
    }
}
