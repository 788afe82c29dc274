package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.advise.Advisor;
import domefold.plan.PlanOptions;
import domefold.record.ConsultRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SchemaTest {
    static Stream<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyDemoCasePassesTheSchemaAndIsReadWhole(Path file) throws IOException {
        String text = Files.readString(file);
        assertEquals(List.of(), Schemas.faults("case-1", text));
        CaseRules rules = CaseRules.of(EvidenceFiles.shipped(), any -> {});
        assertEquals(CaseFile.read(file, rules),
                CaseFile.read(CaseFile.write(CaseFile.read(file, rules)).getBytes(StandardCharsets.UTF_8), "again", rules));
    }

    /** What the engine really says of each demo case, and the draft that saving it would leave. */
    @ParameterizedTest
    @MethodSource("demos")
    void everyPlanOfADemoCasePassesTheSchemaAndCanBeSaved(Path file) throws IOException {
        domefold.evidence.Evidence evidence = EvidenceFiles.shipped();
        domefold.patient.Case of = CaseFile.read(file, CaseRules.FORM_ONLY);
        PlanOptions few = new PlanOptions(PlanOptions.DEFAULT.widthSchool(), 16, PlanOptions.DEFAULT.seed());
        String plan = PlanJson.write(new Advisor(CatalogueFile.invented(), evidence, few).apply(of), "0.1.0");
        assertEquals(List.of(), Schemas.faults("plan-1", plan));
        byte[] draft = RecordFile.bytes(ConsultRecord.draft(of, plan, Samples.draft().versions(), "QT", Samples.NOON));
        assertEquals(plan.strip(), RecordFile.read(draft, "draft-1.json").record().planJson());
        assertEquals(List.of(), Schemas.faults("record-1", new String(draft, StandardCharsets.UTF_8)));
    }

    /** What the reader refuses and the schema can say, the schema refuses too. */
    @ParameterizedTest(name = "{1} is refused as {2}")
    @MethodSource("domefold.store.CaseFileTest#slips")
    void theSchemaIsAsStrictAsTheReader(String right, String wrong, String code, String where, String says) {
        if (code.equals("unknown-schedule") || code.equals("field-twice") || wrong.contains("1e999") || wrong.contains("u001b")
                || where.startsWith("right.takes") && code.equals("unknown-field")) {
            return;
        }
        assertFalse(Schemas.faults("case-1", Samples.CASE.replace(right, wrong)).isEmpty(), where + " " + says);
    }

    @Test
    void formatsAreAsserted() {
        assertEquals(List.of(), Schemas.faults("case-1", Samples.CASE));
        List<String> faults = Schemas.faults("case-1", Samples.CASE.replace("2026-03-04", "2026-02-30"));
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).contains("date"), faults.toString());
    }

    @Test
    void aCaseInsideARecordMayBeUnfinished() {
        String record = new String(RecordFile.bytes(SavingChild.draft("K-1")), StandardCharsets.UTF_8);
        String unfinished = record.replaceAll("\"ageYears\": 31,", "");
        assertFalse(unfinished.equals(record));
        assertEquals(List.of(), Schemas.faults("record-1", unfinished));
        assertFalse(Schemas.faults("record-1", record.replace("\"draft\"", "\"signed\"")).isEmpty(), "signed needs a time");
    }
}
