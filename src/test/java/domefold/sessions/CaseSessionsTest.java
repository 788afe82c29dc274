package domefold.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole consults in a real terminal that start from a demo case and come to different decisions. */
@Tag("terminal")
class CaseSessionsTest {
    @TempDir
    private Path home;

    private Consulting from(String name, int columns, int rows) throws IOException {
        return Consulting.start(home, columns, rows, "consult '" + Path.of("demo-data", name + ".json").toAbsolutePath() + "'");
    }

    /** The optional readings that the case leaves open, skipped until the devices are shown. */
    private static void skipsToDevices(Consulting consult, String... questions) throws IOException {
        for (String question : questions) {
            consult.sees(question);
            consult.line("skip");
        }
        consult.sees("▸Limits");
        consult.keys("F3");
        consult.sees("▸Devices");
    }

    @Test
    void markedAsymmetryIsSettledWithADeviceOfItsOwnForEachSide() throws IOException {
        try (Consulting consult = from("marked-asymmetry", 160, 48)) {
            consult.sees("▸Limits");
            consult.keys("F3");
            String devices = consult.sees("▸Devices");
            assertTrue(devices.contains("fits    tight") && devices.contains("tight   fits"), devices);
            consult.keys("F3");
            consult.lines(List.of("dual-plane", "gel-smooth-full-360 gel-smooth-moderate-plus-270"));
            consult.sees("LEFT RIGHT: `target`");
            consult.lines(List.of("keep target", "typical", "all"));
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals("gel-smooth-full-360", saved.at("/settled/left/device/id").asText());
            assertEquals("gel-smooth-moderate-plus-270", saved.at("/settled/right/device/id").asText());
            assertEquals(360, saved.at("/settled/left/fillMl").asDouble());
            assertEquals(270, saved.at("/settled/right/fillMl").asDouble());
            assertEquals(0, saved.at("/settled/left/fold/loweringCm").asDouble());
            assertTrue(saved.at("/settled/right/fold/loweringCm").asDouble() > 0, saved.at("/settled/right/fold").toString());
            assertEquals(13.2, saved.at("/case/left/baseWidthCm").asDouble());
            consult.leaves();
        }
    }

    @Test
    void aSalineFillIsTurnedSeenAndTyped() throws IOException {
        try (Consulting consult = from("age-20", 120, 40)) {
            skipsToDevices(consult, "Breast volume");
            consult.keys("Space", "F5", "F5");
            consult.sees("280 mL, label fill 280–310 mL");
            consult.keys("+");
            consult.sees("281 mL (nominal 280)");
            consult.keys(".", ".");
            consult.sees("291 mL (nominal 280)");
            consult.keys(">");
            String over = consult.sees("316 mL (nominal 280)");
            assertTrue(over.contains("label fill 280–310 mL"), over);
            consult.keys("<", ",", "-");
            consult.sees("285 mL (nominal 280)");
            consult.keys("F3");
            consult.lines(List.of("skip", "1 same"));
            consult.sees("Saline fill");
            consult.line("900 285");
            consult.sees("far outside the label");
            consult.keys("C-u");
            consult.line("285 320");
            consult.sees("LEFT 285 mL   RIGHT 320 mL");
            consult.sees("RIGHT: 320 mL is over the label");
            consult.lines(List.of("keep same", "typical", "all"));
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals(285, saved.at("/settled/left/fillMl").asDouble());
            assertEquals(320, saved.at("/settled/right/fillMl").asDouble());
            assertEquals("saline", saved.at("/settled/left/device/fill").asText());
            consult.leaves();
        }
    }

    @Test
    void atTwentyGelIsFlaggedAndSalineIsSettled() throws IOException {
        try (Consulting consult = from("age-20", 80, 24)) {
            skipsToDevices(consult, "Breast volume");
            String fitting = consult.sees("5 fit both sides");
            assertFalse(fitting.contains("gel    smooth"), fitting);
            consult.keys("F7");
            consult.sees("125 devices");
            consult.keys("F3");
            consult.lines(List.of("skip", "gel-smooth-full-300 same"));
            consult.sees("LEFT RIGHT: `target`");
            String flagged = consult.terminal().picture();
            assertTrue(flagged.contains("22"), flagged);
            consult.line("go device");
            consult.sees("number 1 to 4");
            consult.line("saline-smooth-full-280 saline-smooth-full-320");
            consult.sees("Saline fill");
            consult.line("go saline fill");
            consult.sees("LEFT RIGHT in mL");
            consult.lines(List.of("290 330", "target same", "typical", "all but 1 2"));
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals("saline-smooth-full-280", saved.at("/settled/left/device/id").asText());
            assertEquals("saline-smooth-full-320", saved.at("/settled/right/device/id").asText());
            assertTrue(saved.get("plan").toString().contains("age-below-label"));
            consult.leaves();
        }
    }

    @Test
    void aBlockedCaseIsKeptAsADraftAndCannotBeSigned() throws IOException {
        try (Consulting consult = from("blocked-nursing", 100, 40)) {
            skipsToDevices(consult, "Vertical surface distance", "Vertical base distance", "Breast volume");
            String devices = consult.sees("0 of 125 devices, 0 fit both sides");
            assertTrue(devices.contains("Blocked: pregnancy or nursing"), devices);
            consult.keys("F3");
            consult.lines(List.of("skip", "gel-smooth-full-360 same"));
            consult.sees("LEFT: pregnancy or nursing is a contraindication");
            consult.lines(List.of("keep same", "typical", "she will come again after weaning", "all"));
            consult.sees("blocked: not to be signed");
            consult.line("sign qt");
            consult.sees("A blocked case is not signed off");
            assertEquals(List.of(), consult.files(".json"));
            consult.line("draft");
            consult.sees("Saved as a draft");
            JsonNode saved = consult.saved("draft-1");
            assertEquals("draft", saved.get("status").asText());
            assertTrue(saved.at("/plan/blocked").size() > 0, saved.at("/plan/blocked").toString());
            for (JsonNode candidate : saved.at("/plan/candidates")) {
                assertFalse(candidate.at("/left/verdict").asText().equals("fits"), candidate.get("id").asText());
            }
            assertTrue(consult.summary("draft-1").contains("contraindication"), consult.summary("draft-1"));
            consult.leaves();
        }
    }

    @Test
    void thinCoverAsksForMuscleAndIsSettledUnderIt() throws IOException {
        try (Consulting consult = from("thin-cover", 100, 40)) {
            consult.sees("Areola to fold, stretched");
            consult.line("6.0 same");
            skipsToDevices(consult, "Breast volume");
            consult.keys("F2");
            String limits = consult.sees("▸Limits");
            assertTrue(limits.contains("dual-plane"), limits);
            consult.keys("F3", "Space", "F3");
            consult.lines(List.of("submuscular", "1 same", "target same", "3.5 same", "all"));
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals("submuscular", saved.at("/settled/left/pocket").asText());
            assertEquals("submuscular", saved.at("/settled/right/pocket").asText());
            assertEquals(3.5, saved.at("/settled/right/openingCm").asDouble());
            assertTrue(consult.summary("v1").contains("3.5 cm settled"), consult.summary("v1"));
            assertEquals(6.0, saved.at("/case/left/areolaToFoldStretchedCm").asDouble());
            assertTrue(saved.get("plan").toString().contains("keep-muscle-at-fold"));
            consult.leaves();
        }
    }

    @Test
    void aConstrictedBaseIsSettledOnTheTightSideWithItsReasonsSaid() throws IOException {
        try (Consulting consult = from("constricted-base", 100, 40)) {
            skipsToDevices(consult, "Vertical surface distance", "Vertical base distance", "Breast volume");
            String devices = consult.sees("0 fit both sides");
            assertTrue(devices.contains("tight   tight"), devices);
            consult.keys("F3");
            consult.lines(List.of("skip", "gel-smooth-moderate-plus-120 same"));
            String said = consult.sees("RIGHT: 120 mL is 5 mL below the volume band");
            assertTrue(said.contains("LEFT: the fold would go down"), said);
            consult.lines(List.of("0.5 same", "typical", "all"));
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals("tight", saved.at("/settled/left/verdict").asText());
            assertTrue(saved.at("/settled/left/reasons").size() > 0);
            assertEquals(0.5, saved.at("/settled/right/fold/loweringCm").asDouble());
            assertTrue(saved.get("plan").toString().contains("constricted-base"));
            consult.leaves();
        }
    }
}
