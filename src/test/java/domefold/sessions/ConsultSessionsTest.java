package domefold.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import domefold.screen.Walk;
import domefold.terminal.TmuxSession;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole consults from the start screen, typed in a real terminal. */
@Tag("terminal")
class ConsultSessionsTest {
    private static final int MOST_ENTRIES = 45;
    private static final int MOST_KEYS = 400;
    private static final List<String> ORDINARY = Walk.ORDINARY;
    private static final int TO_BASE_WIDTH = ORDINARY.indexOf("12.4 12.5");

    @TempDir
    private Path home;

    private Consulting fresh(int columns, int rows) throws IOException {
        Consulting consult = Consulting.start(home, columns, rows, "");
        consult.sees("New consult");
        consult.keys("Enter");
        consult.sees("Case code");
        return consult;
    }

    /** From the last reading to the record room: two gel devices pinned and settled. */
    private static void settle(Consulting consult) throws IOException {
        consult.sees("▸Limits");
        consult.keys("F3");
        consult.sees("▸Devices");
        consult.keys("F6", "Space", "Down", "Space", "F3");
        consult.lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3"));
        consult.sees("▸Record");
    }

    @Test
    void anOrdinaryConsultEndsInASignedRecord() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY);
            settle(consult);
            consult.signs();
            System.out.println("ordinary consult in a terminal: " + consult.entries() + " entries, " + consult.keyPresses()
                    + " key presses");
            assertTrue(consult.entries() <= MOST_ENTRIES, consult.entries() + " entries");
            assertTrue(consult.keyPresses() <= MOST_KEYS, consult.keyPresses() + " keys");
            JsonNode saved = consult.saved("v1");
            assertEquals("signed", saved.get("status").asText());
            assertEquals("qt", saved.get("authorship").get("author").asText());
            assertEquals(12.4, saved.at("/case/left/baseWidthCm").asDouble());
            assertEquals(12.5, saved.at("/case/right/baseWidthCm").asDouble());
            assertEquals(List.of("12.4 12.5"), Consulting.typed(saved, "baseWidthCm"));
            assertEquals("gel-smooth-moderate-plus-300", saved.at("/settled/left/device/id").asText());
            assertEquals("gel-smooth-full-300", saved.at("/settled/right/device/id").asText());
            assertEquals(1, saved.get("topics").findValuesAsText("discussed").stream().filter("false"::equals).count());
            String summary = consult.summary("v1");
            assertTrue(summary.contains("gel-smooth-moderate-plus-300") && summary.contains("gel-smooth-full-300"), summary);
            assertTrue(summary.indexOf("LEFT") < summary.indexOf("RIGHT"), summary);
            assertEquals(List.of(), consult.files(".journal"), "a signed consult is not offered again");
            consult.keys("C-c");
            assertFalse(consult.ended(0).contains("offered again"));
        }
    }

    @Test
    void aConsultLeftUnfinishedSaysThatItIsKept() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY.subList(0, 4));
            consult.keys("C-c");
            String left = consult.ended(0);
            assertTrue(left.contains("Left. The consult is kept and offered again at the next start."), left);
        }
    }

    @Test
    void aKilledConsultLosesAtMostTheLineBeingTyped() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY.subList(0, TO_BASE_WIDTH));
            consult.sees("Base width");
            consult.types("12.4 12");
            consult.sees("> 12.4 12");
            ProcessHandle program = consult.terminal().program();
            consult.terminal().signal("KILL");
            TmuxSession.await("the program is dead", () -> !program.isAlive());
        }
        try (Consulting again = Consulting.start(home, 80, 24, "")) {
            String start = again.sees("New consult");
            assertTrue(start.contains("▸ Continue"), start);
            assertTrue(start.contains(TO_BASE_WIDTH + " answers"), start);
            again.keys("Enter");
            String asked = again.sees("Base width");
            assertTrue(asked.contains("LEFT 9.8 cm   RIGHT 9.9 cm"), asked);
            again.lines(ORDINARY.subList(TO_BASE_WIDTH, ORDINARY.size()));
            settle(again);
            again.signs();
            JsonNode saved = again.saved("v1");
            assertEquals(9.9, saved.at("/case/right/nippleToMidlineCm").asDouble());
            assertEquals(12.5, saved.at("/case/right/baseWidthCm").asDouble());
            assertEquals(31, saved.at("/case/patient/ageYears").asInt());
            again.leaves();
        }
    }

    @Test
    void ctrlCLeavesAndTheNextStartOffersToContinue() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY.subList(0, 3));
            consult.sees("Weight");
            consult.leaves();
            assertEquals(1, consult.files(".journal").size());
            consult.terminal().type("clear; " + Consulting.program(consult.terminal()) + "; echo ended $?");
            consult.terminal().keys("Enter");
            String start = consult.sees("Continue");
            assertTrue(start.contains("3 answers"), start);
            consult.keys("Enter");
            String asked = consult.sees("Weight");
            assertTrue(asked.contains("166"), asked);
            consult.leaves();
        }
    }

    @Test
    void commasAndOtherUnitsAreReadAsWhatTheyAre() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(List.of("", "31", "1660 mm", "58 kg", "none", "sloped", "300cc", "3252141", "inframammary",
                    "smooth", "yes", "US-2020", "20", "74", "82", "24mm", "20,5", "19,8 19,9", "9,8 9,9", "12,4 125mm"));
            String asked = consult.sees("Breast height");
            assertTrue(asked.contains("LEFT 12.4 cm   RIGHT 12.5 cm"), asked);
            consult.lines(List.of("4.65in same", "3,8 =", "2,4 2,4", "9mm same", "1,0 same", "1,8 same", "2,6 2,4", "50 same",
                    "6,4 6,5", "7,6 7,7", "none same", "skip"));
            settle(consult);
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals(12.4, saved.at("/case/left/baseWidthCm").asDouble(), 1e-12);
            assertEquals(12.5, saved.at("/case/right/baseWidthCm").asDouble(), 1e-12);
            assertEquals(2.4, saved.at("/case/chest/intermammaryCm").asDouble(), 1e-12);
            assertEquals(4.65 * 2.54, saved.at("/case/left/breastHeightCm").asDouble(), 1e-9);
            assertEquals(0.9, saved.at("/case/left/foldPinchCm").asDouble(), 1e-12);
            assertEquals(300, saved.at("/case/wishes/sizeWishMl").asDouble(), 1e-12);
            assertEquals(List.of("12,4 125mm"), Consulting.typed(saved, "baseWidthCm"));
            assertFalse(consult.summary("v1").matches("(?s).*\\bcc\\b.*"), consult.summary("v1"));
            consult.leaves();
        }
    }

    @Test
    void aBadValueIsRefusedAndTheLineStaysForMending() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY.subList(0, TO_BASE_WIDTH));
            consult.line("12.4 125");
            String refused = consult.sees("125 cm");
            assertTrue(refused.contains("> 12.4 125"), refused);
            assertTrue(refused.contains("12.5"), refused);
            consult.keys("BSpace").types(".5").keys("Enter");
            String asked = consult.sees("Breast height");
            assertTrue(asked.contains("LEFT 12.4 cm   RIGHT 12.5 cm"), asked);
            consult.line("twelve same");
            consult.sees("is no number");
            consult.keys("Escape");
            TmuxSession.await("the line is clear", () -> !shown(consult).contains("twelve"));
            consult.line("11.8 same");
            consult.sees("Areola");
            consult.lines(ORDINARY.subList(TO_BASE_WIDTH + 2, ORDINARY.indexOf("6.4 6.5") + 1));
            consult.sees("Nipple to fold, stretched");
            consult.line("6.0 7.7");
            consult.sees("> 6.0 7.7");
            String slip = consult.sees("stretched");
            assertTrue(slip.contains("6.4"), slip);
            consult.leaves();
            assertEquals(List.of(), consult.files(".json"), "nothing was saved");
        }
    }

    @Test
    void undoRedoBackAndRevisingLoseNothing() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY.subList(0, TO_BASE_WIDTH + 2));
            consult.sees("Areola");
            consult.keys("C-z");
            consult.sees("Taken back: breast height");
            consult.keys("C-z");
            consult.sees("Taken back: base width");
            consult.keys("C-y", "C-y");
            consult.sees("Given again: breast height");
            consult.line("back");
            consult.sees("now LEFT 11.8 cm");
            consult.line("11.6 11.7");
            String asked = consult.sees("LEFT 11.6 cm   RIGHT 11.7 cm");
            assertTrue(asked.contains("Areola"), asked);
            consult.line("go base width");
            TmuxSession.await("the base width has the floor", () -> shown(consult).matches("(?s).*\n Base width\n.*"));
            consult.line("right 12.7");
            consult.sees("RIGHT 12.7 cm");
            consult.lines(ORDINARY.subList(TO_BASE_WIDTH + 2, ORDINARY.size()));
            settle(consult);
            consult.signs();
            JsonNode saved = consult.saved("v1");
            assertEquals(12.4, saved.at("/case/left/baseWidthCm").asDouble());
            assertEquals(12.7, saved.at("/case/right/baseWidthCm").asDouble());
            assertEquals(11.6, saved.at("/case/left/breastHeightCm").asDouble());
            consult.leaves();
        }
    }

    @Test
    void aWindowResizedInMidQuestionKeepsTheLine() throws IOException {
        try (Consulting consult = fresh(80, 24)) {
            consult.lines(ORDINARY.subList(0, TO_BASE_WIDTH));
            consult.sees("Base width");
            consult.types("12.4 12");
            consult.sees("> 12.4 12");
            consult.terminal().resize(60, 18);
            TmuxSession.await("the smaller window is drawn", () -> fits(consult, 60, 18) && shown(consult).contains("> 12.4 12"));
            consult.terminal().resize(40, 10);
            consult.sees("The window is 40 x 10");
            consult.terminal().type("lost");
            consult.terminal().resize(160, 48);
            String wide = consult.sees("> 12.4 12");
            assertFalse(wide.contains("lost"), wide);
            TmuxSession.await("the wide window is drawn", () -> shown(consult).contains("replaces none of it"));
            consult.types(".5").keys("Enter");
            consult.sees("LEFT 12.4 cm   RIGHT 12.5 cm");
            consult.lines(ORDINARY.subList(TO_BASE_WIDTH + 1, ORDINARY.size()));
            settle(consult);
            consult.signs();
            assertEquals(12.5, consult.saved("v1").at("/case/right/baseWidthCm").asDouble());
            consult.leaves();
        }
    }

    @Test
    void withoutColoursAndWithoutUtf8TheConsultIsTheSame() throws IOException {
        try (Consulting consult = Consulting.start(home, 80, 24, Map.of("NO_COLOR", "1", "LC_ALL", "C"), "consult")) {
            consult.sees("Case code");
            consult.lines(ORDINARY);
            consult.sees(">Limits");
            String limits = consult.terminal().colouredPicture();
            assertEquals("", limits.replaceAll("[\\x20-\\x7e\\n\\x1b\\x0e\\x0f]", ""), limits);
            assertFalse(limits.matches("(?s).*\u001b\\[[0-9;]*(3[0-7]|4[0-7]|9[0-7]|38|48)[;m].*"), limits);
            consult.keys("F3");
            consult.sees(">Devices");
            consult.keys("F6", "Space", "F3");
            consult.lines(List.of("dual-plane", "1 same", "target same", "typical", "all"));
            consult.sees(">Record");
            consult.line("sign qt");
            consult.sees("Signed and saved");
            assertEquals("signed", consult.saved("v1").get("status").asText());
            consult.leaves();
        }
    }

    private static boolean fits(Consulting consult, int columns, int rows) {
        List<String> lines = shown(consult).lines().toList();
        return lines.size() <= rows && lines.stream().allMatch(line -> line.length() <= columns)
                && lines.stream().anyMatch(line -> line.contains("Enter takes it"));
    }

    private static String shown(Consulting consult) {
        try {
            return consult.terminal().picture();
        } catch (IOException failure) {
            return failure.toString();
        }
    }
}
