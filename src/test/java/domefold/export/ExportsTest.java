package domefold.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.export.pdf.Paper;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import domefold.record.RecordStatus;
import domefold.sheet.Limits;
import domefold.sheet.SampleRecords;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ExportsTest {
    @Test
    void aSignedRecordLeavesInEveryFormat() {
        for (Exports.Format format : Exports.Format.values()) {
            byte[] bytes = Exports.of(SampleRecords.signed(), SampleRecords.SHA, format, Paper.A4);
            String start = new String(bytes, 0, 15, StandardCharsets.US_ASCII);
            assertTrue(start.startsWith(switch (format) {
                case ICS -> "BEGIN:VCALENDAR";
                case FHIR -> "{";
                default -> "%PDF-1.4";
            }), format + ": " + start);
        }
    }

    @Test
    void anInventedPatientLeavesInNone() {
        for (Exports.Format format : Exports.Format.values()) {
            assertEquals("practice-record", assertThrows(Refusal.class, () -> Exports.of(
                    SampleRecords.withStatus(RecordStatus.SIGNED, true), SampleRecords.SHA, format, Paper.A4)).code());
        }
    }

    @Test
    void aDraftIsNotOrderedFrom() {
        assertEquals("order-of-draft", assertThrows(Refusal.class, () -> Exports.of(SampleRecords.withStatus(RecordStatus.DRAFT,
                false), SampleRecords.SHA, Exports.Format.ORDER, Paper.A4)).code());
    }

    @Test
    void theLimitsAreReadFromThePlanAsItWasSaved() {
        Limits left = PlanLimits.of(SampleRecords.PLAN_JSON).get(Side.LEFT);
        Limits right = PlanLimits.of(SampleRecords.PLAN_JSON).get(Side.RIGHT);
        assertEquals(OptionalDouble.of(11.2), left.widthCeilingCm());
        assertEquals(265, left.volumeBandMl().orElseThrow().low());
        assertEquals(OptionalDouble.of(11.75), right.widthCeilingCm());
        assertTrue(right.volumeBandMl().isEmpty());
        assertEquals(Limits.UNKNOWN, PlanLimits.of("{}").get(Side.LEFT));
    }

    @Test
    void anUnknownFormatIsRefusedWithTheKnownOnes() {
        assertTrue(assertThrows(Refusal.class, () -> Exports.Format.of("docx")).getMessage()
                .contains("pdf, patient, order, ics, fhir"));
        assertEquals(Exports.Format.ICS, Exports.Format.of(" ICS "));
    }
}
