package domefold.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import domefold.outcome.Refusal;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class FollowUpCalendarTest {
    private static final ConsultRecord RECORD = SampleRecords.signed();

    @Test
    void anIndependentReaderFindsEveryDateWithItsOwnIdAndNothingToWarnOf() {
        ICalendar calendar = read(FollowUpCalendar.of(RECORD, FollowUpCalendar.Reading.EARLIEST));
        assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty(), calendar.validate(ICalVersion.V2_0).toString());
        List<VEvent> events = calendar.getEvents();
        assertEquals(2, events.size());
        for (int i = 0; i < 2; i++) {
            VEvent event = events.get(i);
            assertEquals(RECORD.followUp().orElseThrow().densest().get(i).uid(), UUID.fromString(event.getUid().getValue()));
            LocalDate date = RECORD.followUp().orElseThrow().densest().get(i).date();
            var start = event.getDateStart().getValue();
            assertFalse(start.hasTime(), "all day");
            assertEquals(List.of(date.getYear(), date.getMonthValue(), date.getDayOfMonth()), List.of(
                    start.getRawComponents().getYear(), start.getRawComponents().getMonth(), start.getRawComponents().getDate()));
            assertEquals(RECORD.authorship().savedAt(), event.getDateTimeStamp().getValue().toInstant());
            assertEquals(0, event.getSequence().getValue());
            assertTrue(event.getTransparency().isTransparent());
        }
        assertTrue(events.get(0).getDescription().getValue().contains("Not later than 04-Mar-2032"));
    }

    @Test
    void theSameRecordGivesTheSameBytesAndALaterVersionRaisesTheSequence() {
        String first = FollowUpCalendar.of(RECORD, FollowUpCalendar.Reading.LATEST);
        assertEquals(first, FollowUpCalendar.of(RECORD, FollowUpCalendar.Reading.LATEST));
        ConsultRecord later = RECORD.following(RecordStatus.AMENDED, change());
        VEvent event = read(FollowUpCalendar.of(later, FollowUpCalendar.Reading.LATEST)).getEvents().get(0);
        assertEquals(1, event.getSequence().getValue());
        assertEquals(read(first).getEvents().get(0).getUid().getValue(), event.getUid().getValue());
    }

    @Test
    void whatWasEnteredInErrorCancelsItsEntries() {
        ConsultRecord error = RECORD.following(RecordStatus.ENTERED_IN_ERROR, change());
        assertTrue(read(FollowUpCalendar.of(error, FollowUpCalendar.Reading.EARLIEST)).getEvents().get(0).getStatus()
                .isCancelled());
    }

    @Test
    void nothingInItTellsWhatTheVisitIsAbout() {
        String lower = FollowUpCalendar.of(RECORD, FollowUpCalendar.Reading.EARLIEST).replace("\r\n ", "")
                .toLowerCase(Locale.ROOT);
        for (String telling : List.of("breast", "implant", "device", "saline", "gel", "surg", "imaging", "mri", "ultrasound",
                "augment", "rupture", "ngũgĩ", "ml")) {
            assertFalse(lower.contains(telling), telling);
        }
    }

    /** RFC 5545, 3.4 and 3.6: a calendar holds at least one component. */
    @Test
    void aRecordWithoutDatesGivesNoEmptyCalendar() {
        ConsultRecord without = new ConsultRecord(RECORD.id(), 1, RECORD.status(), false, RECORD.inputs(), RECORD.answers(),
                RECORD.planJson(), RECORD.left(), RECORD.right(), RECORD.considered(), RECORD.topics(), Optional.empty(),
                RECORD.outcomes(), RECORD.overrides(), RECORD.versions(), RECORD.authorship(), RECORD.amendment());
        assertEquals("no-reminders", assertThrows(Refusal.class,
                () -> FollowUpCalendar.of(without, FollowUpCalendar.Reading.EARLIEST)).code());
        assertEquals(2, read(FollowUpCalendar.of(List.of(without, RECORD), FollowUpCalendar.Reading.EARLIEST)).getEvents().size());
        assertEquals("no-reminders", assertThrows(Refusal.class,
                () -> FollowUpCalendar.of(List.of(), FollowUpCalendar.Reading.EARLIEST)).code());
    }

    @Test
    void aPracticeRecordIsRefused() {
        assertEquals("practice-record", assertThrows(Refusal.class, () -> FollowUpCalendar.of(
                SampleRecords.withStatus(RecordStatus.SIGNED, true), FollowUpCalendar.Reading.EARLIEST)).code());
    }

    private static Amendment change() {
        return new Amendment(1, SampleRecords.SHA, "wrong date", "Dr A", Instant.parse("2026-03-05T08:00:00Z"), List.of());
    }

    private static ICalendar read(String text) {
        return Biweekly.parse(text).first();
    }
}
