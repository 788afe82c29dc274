package domefold.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import domefold.advise.Advisor;
import domefold.outcome.Numbers;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.report.PlanText;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import domefold.store.PlanJson;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is decided is decided on what was typed, and what is printed is what is stored, rounded once. */
class RoundingTest {
    /** Less than any hand reads, more than the dust of binary fractions. */
    private static final double HAIR = 1e-6;

    private static Case demo(String name) throws IOException {
        return CaseFile.read(Path.of("demo-data", name + ".json"), CaseRules.FORM_ONLY);
    }

    private static Plan plan(Case of) {
        PlanOptions few = new PlanOptions(PlanOptions.DEFAULT.widthSchool(), 16, PlanOptions.DEFAULT.seed());
        return new Advisor(CatalogueFile.invented(), EvidenceFiles.shipped(), few).apply(of);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ordinary", "marked-asymmetry", "thin-cover", "tight-envelope", "age-20"})
    void whatIsPrintedIsWhatIsStoredRoundedOnce(String name) throws IOException {
        Plan plan = plan(demo(name));
        JsonNode json = Mirrored.read(PlanJson.write(plan, "0"));
        String text = PlanText.of(plan, CatalogueFile.invented(), "0");
        for (Side side : Side.values()) {
            JsonNode stored = json.get(side.key());
            assertEquals(plan.side(side).widthCeilingCm().orElseThrow(), stored.get("widthCeilingCm").asDouble());
            assertTrue(text.contains(Numbers.cm(stored.get("widthCeilingCm").asDouble()).replace(" cm", " ±")), side + " ceiling");
            assertTrue(text.contains(Numbers.ml(stored.get("startingVolumeMl").asDouble())), side + " volume");
            assertTrue(text.contains(Numbers.cm(stored.get("foldTargetCm").asDouble())), side + " fold");
        }
    }

    /** A threshold belongs to one side of it, and a hair across it decides, though both print alike. */
    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({"UPPER_PINCH, 2.0, -1", "SKIN_STRETCH, 2.0, -1", "SKIN_STRETCH, 3.0, 1",
        "NIPPLE_TO_FOLD_STRETCHED, 9.5, 1", "PARENCHYMAL_FILL, 20, -1", "PARENCHYMAL_FILL, 80, 1"})
    void aHairAcrossAThresholdDecidesAndTheThresholdItselfDoesNot(Measure measure, double threshold, int across)
            throws IOException {
        Plan at = plan(with(measure, threshold));
        Plan over = plan(with(measure, threshold + across * HAIR));
        Plan under = plan(with(measure, threshold - across * HAIR));
        assertNotEquals(decided(at), decided(over), "crossed");
        assertEquals(decided(at), decided(under), "not crossed");
    }

    private static Case with(Measure measure, double value) throws IOException {
        Case ordinary = demo("ordinary");
        return ordinary.withSide(Side.LEFT, new Breast(ordinary.left().readings().with(measure, value), ordinary.left().ptosis()));
    }

    /** What the rules made of the left side, without what merely follows the reading smoothly. */
    private static String decided(Plan plan) {
        return Numbers.ml(plan.left().startingVolumeMl().orElseThrow()) + " " + plan.left().pocket() + " "
                + plan.left().notes().stream().map(note -> note.code()).filter(code -> !code.equals("second-reading")).toList();
    }

    @Test
    void aVolumeBandIsNeverNarrowerInPrintThanInStore() throws IOException {
        for (String name : new String[] {"ordinary", "marked-asymmetry", "thin-cover"}) {
            Plan plan = plan(demo(name));
            for (Side side : Side.values()) {
                var band = plan.side(side).volumeBandMl().orElseThrow();
                assertTrue(Math.abs(Math.rint(band.low()) - band.low()) <= 0.5 && band.low() < band.high(), side + " " + band);
                assertTrue(PlanText.of(plan, CatalogueFile.invented(), "0").contains(Numbers.ml(band)), Numbers.ml(band));
            }
        }
    }
}
