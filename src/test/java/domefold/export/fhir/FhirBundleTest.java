package domefold.export.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import domefold.outcome.Refusal;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FhirBundleTest {
    private static final String SHA = SampleRecords.SHA;
    private static final String TEXT = FhirBundle.of(SampleRecords.signed(), SHA);

    @Test
    void leftIsLeftAndRightIsRightInEveryResource() {
        JsonNode bundle = read(TEXT);
        assertEquals("12.0", width(bundle, "80248007"));
        assertEquals("12.8", width(bundle, "73056007"));
        assertEquals("GEL-M-290", ordered(bundle, "80248007"));
        assertEquals("GEL-M-330", ordered(bundle, "73056007"));
        JsonNode mirrored = read(FhirBundle.of(SampleRecords.mirrored(SampleRecords.signed()), SHA));
        assertEquals("12.8", width(mirrored, "80248007"));
        assertEquals("12.0", width(mirrored, "73056007"));
        assertEquals("GEL-M-330", ordered(mirrored, "80248007"));
    }

    @Test
    void numbersKeepThePrecisionTheyWereTypedIn() {
        assertTrue(TEXT.contains("\"value\" : 12.0,"));
        assertTrue(TEXT.contains("\"value\" : 6.4,"), "typed with a comma");
        assertTrue(TEXT.contains("\"value\" : 290,"));
        assertFalse(TEXT.contains("290.0"));
    }

    @Test
    void thePatientHasACaseCodeAndNoName() {
        JsonNode patient = resources(read(TEXT), "Patient").get(0);
        assertEquals("K-2041", patient.path("identifier").path(0).path("value").asText());
        assertEquals(2, patient.size(), "nothing but type and identifier");
    }

    @Test
    void whatWasNotAskedIsNotNoAndFiguresKeepWhatAHundredCounts() {
        assertTrue(TEXT.contains("<p>nicotine: no</p>") && TEXT.contains("<p>active infection: not asked</p>"));
        assertTrue(TEXT.contains("9 to 19 of 100 women have it, 81 to 91 of 100 do not (cohort A; cohort B; read in the source)"));
        assertTrue(TEXT.contains("7 of 100 implants have it, 93 of 100 do not (cohort C; from memory, fairly sure)"));
    }

    @Test
    void everySnomedAndLoincCodeIsOneThatWasRead() {
        Set<String> read = Set.of("80248007", "73056007", "11488-4", "8302-2");
        for (JsonNode system : read(TEXT).findParents("system")) {
            String name = system.path("system").asText();
            if (name.equals("http://snomed.info/sct") || name.equals("http://loinc.org")) {
                assertTrue(read.contains(system.path("code").asText()), system.toString());
            }
        }
    }

    @Test
    void anAmendmentNamesWhatItReplaces() {
        Amendment change = new Amendment(1, SHA, "wrong fold", "Dr B", Instant.parse("2026-03-05T08:00:00Z"), List.of());
        ConsultRecord amended = SampleRecords.signed().following(RecordStatus.AMENDED, change);
        JsonNode bundle = read(FhirBundle.of(amended, "f".repeat(64)));
        JsonNode composition = resources(bundle, "Composition").get(0);
        assertEquals("amended", composition.path("status").asText());
        assertEquals("K-2041/v1", composition.path("relatesTo").path(0).path("targetIdentifier").path("value").asText());
        assertEquals(SHA, resources(bundle, "Provenance").get(0).path("entity").path(1).path("what").path("identifier")
                .path("value").asText());
    }

    @Test
    void aDraftIsPreliminaryAndAnErrorSaysSo() {
        assertEquals("preliminary", status(RecordStatus.DRAFT));
        assertEquals("entered-in-error", status(RecordStatus.ENTERED_IN_ERROR));
        assertEquals("final", status(RecordStatus.SIGNED));
    }

    @Test
    void theSameRecordGivesTheSameText() {
        assertEquals(TEXT, FhirBundle.of(SampleRecords.signed(), SHA));
    }

    @Test
    void aPracticeRecordIsRefused() {
        assertEquals("practice-record", assertThrows(Refusal.class,
                () -> FhirBundle.of(SampleRecords.withStatus(RecordStatus.SIGNED, true), SHA)).code());
    }

    private static String status(RecordStatus status) {
        return resources(read(FhirBundle.of(SampleRecords.withStatus(status, false), SHA)), "Composition").get(0)
                .path("status").asText();
    }

    private static String width(JsonNode bundle, String site) {
        return resources(bundle, "Observation").stream()
                .filter(one -> one.path("code").path("text").asText().equals("base width"))
                .filter(one -> one.path("bodySite").path("coding").path(0).path("code").asText().equals(site))
                .map(one -> one.path("valueQuantity").path("value").decimalValue().toPlainString()).findFirst().orElseThrow();
    }

    private static String ordered(JsonNode bundle, String site) {
        return resources(bundle, "DeviceRequest").stream().filter(one -> one.path("parameter").path(0)
                        .path("valueCodeableConcept").path("coding").path(0).path("code").asText().equals(site))
                .map(one -> one.path("codeCodeableConcept").path("coding").path(0).path("code").asText()).findFirst()
                .orElseThrow();
    }

    static List<JsonNode> resources(JsonNode bundle, String type) {
        List<JsonNode> found = new ArrayList<>();
        bundle.path("entry").forEach(entry -> {
            if (entry.path("resource").path("resourceType").asText().equals(type)) {
                found.add(entry.path("resource"));
            }
        });
        return found;
    }

    static JsonNode read(String text) {
        try {
            return new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .setNodeFactory(JsonNodeFactory.withExactBigDecimals(true)).readTree(text);
        } catch (JsonProcessingException defect) {
            throw new AssertionError(defect);
        }
    }
}
