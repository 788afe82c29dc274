package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.plan.PlanOptions;
import domefold.practice.PracticeCase;
import domefold.practice.TutorSheet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PracticeJsonTest {
    private static final Evidence EVIDENCE = EvidenceFiles.shipped();
    private static final Catalogue LIST = CatalogueFile.invented();

    @Test
    void itsCaseIsACaseOfItsOwn() throws IOException {
        for (int number = 1; number <= 6; number++) {
            TutorSheet sheet = sheet(number);
            byte[] inside = json(sheet).get("case").toString().getBytes(StandardCharsets.UTF_8);
            assertEquals(sheet.practice().of(), CaseFile.read(inside, "case", CaseRules.FORM_ONLY));
        }
    }

    @Test
    void itSaysThatItIsPracticeAndInvented() throws IOException {
        JsonNode json = json(sheet(2));
        assertEquals(PracticeJson.FORMAT, json.get("format").asText());
        assertEquals(PracticeCase.BANNER, json.get("banner").asText());
        assertTrue(json.get("practice").asBoolean());
        assertTrue(json.get("history").asText().startsWith("Invented"));
    }

    @Test
    void theMarkingAddsUp() throws IOException {
        JsonNode marking = json(sheet(3)).get("marking");
        double points = 0;
        double outOf = 0;
        for (JsonNode mark : marking.get("marks")) {
            points += mark.get("weight").asDouble() * mark.get("credit").asDouble();
            outOf += mark.get("weight").asDouble();
            assertFalse(mark.get("decidedBy").asText().isBlank());
        }
        assertEquals(marking.get("points").asDouble(), points);
        assertEquals(marking.get("outOf").asDouble(), outOf);
        assertEquals(marking.get("percent").asDouble(), 100 * points / outOf);
    }

    private static TutorSheet sheet(int number) {
        return TutorSheet.of(number, 1 + number % 3, LIST, EVIDENCE, PlanOptions.DEFAULT);
    }

    private static JsonNode json(TutorSheet sheet) throws IOException {
        return new ObjectMapper().readTree(PracticeJson.write(sheet));
    }
}
