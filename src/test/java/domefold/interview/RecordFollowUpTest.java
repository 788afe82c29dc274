package domefold.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Status;
import domefold.record.ConsultRecord;
import domefold.record.OutcomeShown;
import domefold.record.Versions;
import domefold.report.SheetText;
import domefold.screen.ConsultScreen;
import domefold.screen.Walk;
import domefold.sheet.ClinicalSheet;
import domefold.sheet.PatientSheet;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What of the follow-up goes into the record and from there onto the sheets. */
class RecordFollowUpTest {
    private static final Instant NOW = Instant.parse("2026-03-04T12:00:00Z");

    private static ConsultRecord record() {
        Interview interview = ((ConsultScreen) Walk.consult().lines(Walk.ORDINARY).screen()).interview();
        interview = interview.answer("pins", "gel-smooth-full-300 saline-smooth-full-280").answer("device", "gel-smooth-full-300 same")
                .answer("discussed", "7 8");
        return RecordDraft.of(interview, false, "{}", new Versions("test", "invented", "2026", "0".repeat(64), true, "0".repeat(64)),
                "kb", NOW, () -> new UUID(1, 1));
    }

    @Test
    void everyFigureNamesItsCohortsAndTheLeastSureStatusBehindIt() {
        ConsultRecord record = record();
        assertFalse(record.outcomes().isEmpty());
        for (OutcomeShown shown : record.outcomes()) {
            Status said = Status.of(shown.status());
            assertTrue(shown.cohorts().stream().anyMatch(cohort -> cohort.contains("(" + said.words() + ")")), shown.toString());
            assertEquals(shown.cohorts().stream().anyMatch(cohort -> cohort.contains("from memory")), said.isMemory(), shown.toString());
            assertEquals(10, shown.year());
        }
        assertEquals("memory-medium", named(record, "deflation").status());
        assertEquals("read-secondary", named(record, "rupture").status());
    }

    private static OutcomeShown named(ConsultRecord record, String outcome) {
        return record.outcomes().stream().filter(shown -> shown.outcome().equals(outcome)).findFirst().orElseThrow();
    }

    @Test
    void theSheetsCarryTheDatesTheFiguresBothWaysAndTheTopicsOpenOrDiscussed() {
        ConsultRecord record = record();
        for (String sheet : List.of(SheetText.of(ClinicalSheet.of(record, "0".repeat(64), Map.of())),
                SheetText.of(PatientSheet.of(record, "0".repeat(64))))) {
            String text = sheet.replaceAll("\\s+", " ");
            assertTrue(text.contains("US-2020"), "the sheet says it");
            assertTrue(text.contains("Earliest dates") && text.contains("04-Mar-2031"), "dates of the schedule");
            assertTrue(text.contains("Rupture within 10 years: 10 to 24 of 100 women have it, 76 to 90 of 100 do not"), "the sheet says it");
            assertTrue(text.contains("Reoperation within 10 years: 37 of 100 women have it, 63 of 100 do not"), "both add up");
            assertTrue(text.contains("Least sure of these: from memory, unconfirmed."), "the sheet says it");
            assertTrue(text.contains("[x] Follow-up: exams for gel"), "the sheet says it");
            assertTrue(text.contains("[ ] Lymphoma around implants"), "the sheet says it");
        }
    }
}
