package domefold.export.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.sheet.SampleRecords;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Faults planted one at a time: the ones a FHIR validator was seen to let through come first. */
class FhirCheckTest {
    private static final String TEXT = FhirBundle.of(SampleRecords.signed(), SampleRecords.SHA);

    @Test
    void aSoundBundleHasNoProblem() {
        assertEquals(List.of(), FhirCheck.problems(FhirBundleTest.read(TEXT)));
    }

    @Test
    void aLeftCodeUnderRightWordsIsFound() {
        found("displays 'Right breast structure'", text -> text.replaceFirst("Left breast structure", "Right breast structure"));
        found("reads 'Right breast'", text -> text.replaceFirst("\"text\" : \"Left breast\"", "\"text\" : \"Right breast\""));
    }

    @Test
    void aUnitThatReadsOneAndCodesAnotherIsFound() {
        found("reads 'mm'", text -> text.replaceFirst("\"unit\" : \"cm\"", "\"unit\" : \"mm\""));
        found("'mm', which does not leave", text -> text.replaceFirst("\"code\" : \"cm\"", "\"code\" : \"mm\""));
        found("'ML', which does not leave", text -> text.replaceFirst("\"code\" : \"mL\"", "\"code\" : \"ML\""));
    }

    @Test
    void aReferenceThatLeadsNowhereIsFound() {
        JsonNode bundle = FhirBundleTest.read(TEXT);
        ((ObjectNode) FhirBundleTest.resources(bundle, "Observation").get(0).path("subject"))
                .put("reference", "urn:uuid:00000000-0000-0000-0000-000000000000");
        String problems = FhirCheck.problems(bundle).toString();
        assertTrue(problems.contains("which is not in the bundle") && problems.contains("2 subjects"), problems);
    }

    @Test
    void aSideUnderTheOtherSidesHeadingIsFound() {
        JsonNode bundle = FhirBundleTest.read(TEXT);
        ArrayNode sections = (ArrayNode) FhirBundleTest.resources(bundle, "Composition").get(0).path("section");
        ObjectNode left = (ObjectNode) sections.get(1);
        ObjectNode right = (ObjectNode) sections.get(2);
        JsonNode keep = left.get("entry");
        left.set("entry", right.get("entry"));
        right.set("entry", keep);
        assertTrue(FhirCheck.problems(bundle).toString().contains("under 'Left breast' stands a"));
    }

    @Test
    void twoEntriesUnderOneAddressAndAPairInTwoGroupsAreFound() {
        JsonNode bundle = FhirBundleTest.read(TEXT);
        ((ObjectNode) bundle.path("entry").get(3)).put("fullUrl", bundle.path("entry").get(2).path("fullUrl").asText());
        assertTrue(FhirCheck.problems(bundle).toString().contains("two entries are called"));
        JsonNode pair = FhirBundleTest.read(TEXT);
        ((ObjectNode) FhirBundleTest.resources(pair, "DeviceRequest").get(0).path("groupIdentifier")).put("value", "other");
        assertTrue(FhirCheck.problems(pair).toString().contains("not one group"));
    }

    @Test
    void aForeignBodySiteIsFound() {
        found("which is neither side", text -> text.replaceFirst("80248007", "63762007"));
    }

    @Test
    void aBundleThatIsNoDocumentIsFound() {
        found("no document", text -> text.replace("\"document\"", "\"collection\""));
        found("no timestamp", text -> text.replace("\"timestamp\"", "\"stamp\""));
    }

    private static void found(String problem, UnaryOperator<String> fault) {
        String faulty = fault.apply(TEXT);
        assertTrue(!faulty.equals(TEXT), "the fault was planted");
        String problems = FhirCheck.problems(FhirBundleTest.read(faulty)).toString();
        assertTrue(problems.contains(problem), problems);
    }
}
