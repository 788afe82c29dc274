package domefold.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.interview.Interview;
import domefold.interview.RecordDraft;
import domefold.patient.Case;
import domefold.record.Versions;
import domefold.screen.ConsultScreen;
import domefold.screen.Key;
import domefold.screen.Walk;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.PlanJson;
import domefold.store.RecordFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Exchanging the sides of what goes in exchanges the sides of what comes out, and changes nothing else. */
class SidesExchangedTest {
    /** The two sides differ in every reading. */
    private static final List<String> PAIRED = List.of("20.6 19.4", "10.4 9.6", "13.2 11.9", "12.6 11.2", "4.2 3.6", "2.6 2.1",
            "1.0 0.8", "1.2 1.0", "2.0 1.7", "3.0 2.2", "65 40", "7.2 5.9", "8.6 7.0", "none glandular");

    static List<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void thePlanAsJsonIsExchanged(Path file) throws IOException {
        Case of = CaseFile.read(file, CaseRules.FORM_ONLY);
        JsonNode plan = plan(of);
        JsonNode other = plan(of.mirrored());
        assertEquals("", Mirrored.difference(Mirrored.of(plan), Mirrored.plain(other)));
    }

    private static JsonNode plan(Case of) {
        return Mirrored.read(PlanJson.write(Walk.desk().guide().planner().apply(of), "0"));
    }

    @Test
    void theSavedRecordIsExchanged() {
        JsonNode record = saved(PAIRED, "gel-smooth-full-360 gel-smooth-moderate-plus-270", "keep target", "3.4 3.8");
        JsonNode other = saved(PAIRED.stream().map(SidesExchangedTest::exchanged).toList(),
                "gel-smooth-moderate-plus-270 gel-smooth-full-360", "target keep", "3.8 3.4");
        assertNotEquals(Mirrored.plain(record), Mirrored.plain(other));
        assertEquals("", Mirrored.difference(Mirrored.of(record), Mirrored.plain(other)));
        assertEquals(3.4, record.at("/settled/left/openingCm").asDouble());
        assertTrue(record.at("/settled/left/device/id").asText().equals("gel-smooth-full-360"), record.at("/settled").toString());
    }

    private static String exchanged(String line) {
        String[] two = line.split(" ");
        return two[1] + " " + two[0];
    }

    private static JsonNode saved(List<String> paired, String devices, String fold, String opening) {
        Walk walk = Walk.consult().lines(Walk.ORDINARY.subList(0, Walk.ORDINARY.indexOf("19.8 19.9"))).lines(paired);
        Interview interview = ((ConsultScreen) walk.screen()).interview();
        for (String[] answer : new String[][] {{"pocket", "dual-plane"}, {"device", devices}, {"lowering", fold},
            {"opening", opening}, {"discussed", "all"}}) {
            interview = interview.answer(answer[0], answer[1]);
        }
        var record = RecordDraft.of(interview, false, PlanJson.write(interview.plan().orElseThrow(), "0"),
                new Versions("0", "list", "", "0".repeat(64), true, "0".repeat(64)), "qt", Instant.parse("2026-03-04T10:15:30Z"),
                () -> new UUID(1, 2));
        ObjectNode json = (ObjectNode) Mirrored.read(new String(RecordFile.bytes(record), StandardCharsets.UTF_8));
        json.remove("answers");
        return json;
    }
}
