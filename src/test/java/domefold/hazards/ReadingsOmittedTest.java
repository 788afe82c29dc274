package domefold.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.advise.Advisor;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.plan.PlanOptions;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import domefold.store.PlanJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What was not taken is not taken: no default stands in for it, and what needed it says so. */
class ReadingsOmittedTest {
    private static final Path ORDINARY = Path.of("demo-data/ordinary.json");
    private static final Set<String> REQUIRED = Set.of("/format", "/case", "/date", "/patient/ageYears", "/left/baseWidthCm",
            "/right/baseWidthCm");
    /** Readings from which a result of the plan follows. */
    private static final List<String> NEEDED = List.of("medialPinchCm", "lateralPinchCm", "skinStretchCm",
            "nippleToFoldStretchedCm", "parenchymalFillPercent", "upperPinchCm");

    private static JsonNode ordinary() throws IOException {
        return Mirrored.read(Files.readString(ORDINARY));
    }

    static Stream<String> fields() throws IOException {
        List<String> paths = new ArrayList<>();
        collect(ordinary(), "", paths);
        // A file that does not say how its readings were taken was taken by hand; that is no reading.
        paths.remove("/readBy");
        return paths.stream();
    }

    private static void collect(JsonNode node, String path, List<String> into) {
        node.fields().forEachRemaining(field -> {
            String at = path + "/" + field.getKey();
            if (field.getValue().isObject()) {
                collect(field.getValue(), at, into);
            } else {
                into.add(at);
            }
        });
    }

    private static String without(String path) throws IOException {
        JsonNode whole = ordinary();
        int last = path.lastIndexOf('/');
        assertTrue(((ObjectNode) whole.at(path.substring(0, last))).remove(path.substring(last + 1)) != null, path);
        return whole.toString();
    }

    private static Case read(String json) {
        return CaseFile.read(json.getBytes(StandardCharsets.UTF_8), "case.json", CaseRules.of(EvidenceFiles.shipped(), any -> {}));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fields")
    void aFieldLeftOutStaysOut(String path) throws IOException {
        String json = without(path);
        if (REQUIRED.contains(path)) {
            Refusal refusal = assertThrows(Refusal.class, () -> read(json));
            assertTrue(refusal.where().endsWith(path.substring(path.lastIndexOf('/') + 1)), refusal.where());
            return;
        }
        Case read = read(json);
        JsonNode kept = Mirrored.read(CaseFile.write(read)).at(path);
        assertTrue(kept.isMissingNode() || kept.isNull() || kept.isEmpty() && kept.isArray(), path + " became " + kept);
        JsonNode plan = plan(read);
        assertEquals("domefold-plan/1", plan.get("format").asText());
    }

    @Test
    void aResultThatNeededAReadingNamesIt() throws IOException {
        for (String field : NEEDED) {
            JsonNode left = plan(read(without("/left/" + field))).get("left");
            JsonNode right = plan(read(without("/left/" + field))).get("right");
            assertTrue(left.get("incomplete").toString().contains("\"" + field + "\""), field + ": " + left.get("incomplete"));
            assertFalse(right.get("incomplete").toString().contains("\"" + field + "\""), field + " is there on the right");
        }
    }

    private static JsonNode plan(Case of) {
        PlanOptions few = new PlanOptions(PlanOptions.DEFAULT.widthSchool(), 16, PlanOptions.DEFAULT.seed());
        return Mirrored.read(PlanJson.write(new Advisor(CatalogueFile.invented(), EvidenceFiles.shipped(), few).apply(of), "0"));
    }
}
