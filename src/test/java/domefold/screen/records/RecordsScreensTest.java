package domefold.screen.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.device.Fill;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.report.SheetText;
import domefold.screen.Effect;
import domefold.screen.Key;
import domefold.screen.Screen;
import domefold.screen.Walk;
import domefold.sheet.ClinicalSheet;
import domefold.sheet.SampleRecords;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordsScreensTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 4);
    private static final String SUMMARY = SheetText.of(
            ClinicalSheet.of(SampleRecords.signed(), SampleRecords.SHA, Map.of()));

    private static RecordList list() {
        List<RecordHeader> headers = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            headers.add(header(i));
        }
        return RecordList.of(headers);
    }

    private static RecordHeader header(int i) {
        RecordStatus status = i % 7 == 3 ? RecordStatus.DRAFT : i % 11 == 5 ? RecordStatus.ENTERED_IN_ERROR : RecordStatus.SIGNED;
        Fill fill = i % 3 == 0 ? Fill.SALINE : Fill.GEL;
        RecordHeader.SideLine line = new RecordHeader.SideLine((fill == Fill.GEL ? "GEL-M-" : "SAL-M-") + (240 + 10 * (i % 9)),
                "Round", fill, 240 + 10 * (i % 9), 240 + 10 * (i % 9));
        LocalDate day = LocalDate.of(2025, 9, 1).plusDays(6 * i);
        RecordHeader.ExamDates exams = new RecordHeader.ExamDates("US-2020", "US FDA labelling guidance",
                List.of(day.plusYears(5), day.plusYears(7)), List.of(day.plusYears(6), day.plusYears(9)));
        List<RecordHeader.Happening> happened = i % 4 == 1 && status == RecordStatus.SIGNED
                ? List.of(new RecordHeader.Happening(RecordEvent.Kind.ORDERED, day.plusDays(3)),
                        new RecordHeader.Happening(RecordEvent.Kind.IMPLANTED, day.plusDays(20))) : List.of();
        return RecordHeader.of("K-20" + (10 + i), 1, status, false, day, Instant.parse("2026-03-01T08:00:00Z"), "kb", 0,
                Optional.of(line), i % 5 == 4 ? Optional.empty() : Optional.of(line), Optional.of(exams), happened);
    }

    private static RecordsScreen read(Screen screen) {
        RecordsScreen records = (RecordsScreen) screen;
        Effect.ReadRecord wanted = (Effect.ReadRecord) records.wanted();
        return (RecordsScreen) records.onOutcome(new Effect.Done(wanted, SUMMARY));
    }

    private static RecordsScreen typed(String text) {
        Walk walk = Walk.on(RecordsScreen.of(list(), TODAY, Optional.empty()));
        text.codePoints().forEach(c -> walk.key(Key.character(c)));
        return (RecordsScreen) walk.screen();
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"80, 24", "160, 48"})
    void looksAsApproved(int columns, int rows) {
        String size = "-" + columns + "x" + rows;
        RecordsScreen list = read(RecordsScreen.of(list(), TODAY, Optional.empty()));
        Approved.check("records-list" + size, Walk.on(list).picture(columns, rows));
        Approved.check("records-list-filtered" + size, Walk.on(read(typed("saline signed"))).picture(columns, rows));
        Approved.check("records-list-nothing" + size, Walk.on(typed("K-2O2O")).picture(columns, rows));
        Approved.check("records-list-booking" + size, Walk.on(list).key(Key.Kind.F6).picture(columns, rows));
        Approved.check("records-keys" + size, Walk.on(list).key(Key.Kind.F1).picture(columns, rows));
        Approved.check("records-due" + size, Walk.on(DueScreen.of(list, java.time.YearMonth.of(2031, 10))).key(Key.Kind.DOWN)
                .picture(columns, rows));
    }

    @Test
    void everyLetterNarrowsAndTheSummaryOfTheOneInFocusIsAskedFor() {
        Walk walk = Walk.on(RecordsScreen.of(list(), TODAY, Optional.empty()));
        "k-2016".codePoints().forEach(c -> walk.key(Key.character(c)));
        assertEquals(1, ((RecordsScreen) walk.screen()).filter().shown().size());
        assertEquals(new Effect.ReadRecord("K-2016", "summary"), walk.effects().get(walk.effects().size() - 1));
        walk.key(Key.Kind.ESCAPE);
        assertEquals(30, ((RecordsScreen) walk.screen()).filter().shown().size());
        walk.key(Key.Kind.ESCAPE);
        assertEquals(Effect.QUIT, walk.effects().get(walk.effects().size() - 1));
    }

    @Test
    void escapeLeadsBackToWhereOneCameFrom() {
        Screen start = RecordsScreen.of(list(), TODAY.plusDays(1), Optional.empty());
        assertEquals(start, RecordsScreen.of(list(), TODAY, Optional.of(start)).onKey(Key.of(Key.Kind.ESCAPE)).next());
    }

    @Test
    void nothingIsDoneBeforeTheFactsWereSeenAndEnterPressed() {
        Walk walk = Walk.on(read(RecordsScreen.of(list(), TODAY, Optional.empty()))).key(Key.Kind.DOWN).key(Key.Kind.F5);
        String id = ((RecordsScreen) walk.screen()).focus().orElseThrow().id();
        assertTrue(walk.picture(80, 24).contains(id + " · consult of"), walk.picture(80, 24));
        int before = walk.effects().size();
        walk.key(Key.Kind.ESCAPE);
        assertEquals(before, walk.effects().size());
        walk.key(Key.Kind.F5).key(Key.Kind.ENTER);
        assertEquals(new Effect.MarkRecord(id, RecordEvent.Kind.ORDERED, TODAY), walk.effects().get(walk.effects().size() - 1));
        walk.key(Key.Kind.F6).line("soon");
        assertTrue(walk.picture(80, 24).contains("Write the day as"), walk.picture(80, 24));
        walk.key(Key.ctrl('u')).line("2026-03-20");
        assertEquals(new Effect.MarkRecord(id, RecordEvent.Kind.BOOKED, LocalDate.of(2026, 3, 20)),
                walk.effects().get(walk.effects().size() - 1));
        walk.key(Key.Kind.F3).key(Key.Kind.ENTER);
        assertEquals(new Effect.WriteRecord(id, "pdf", id + "-v1-pdf.pdf"), walk.effects().get(walk.effects().size() - 1));
    }

    @Test
    void anOpenedRecordScrollsToItsLastPageAndBackAtOnce() {
        RecordsScreen list = read(RecordsScreen.of(list(), TODAY, Optional.empty()));
        assertTrue(Walk.on(list).picture(80, 24).contains("more lines; Enter opens\n"), Walk.on(list).picture(80, 24));
        Effect.ReadRecord wanted = new Effect.ReadRecord(list.focus().orElseThrow().id(), Effect.ReadRecord.SUMMARY);
        Walk walk = Walk.on(((RecordsScreen) list.onKey(Key.of(Key.Kind.ENTER)).next()).onOutcome(new Effect.Done(wanted, SUMMARY)));
        assertTrue(walk.picture(80, 24).contains("more lines; PgDn goes on\n"), walk.picture(80, 24));
        for (int i = 0; i < 30; i++) {
            walk.key(Key.Kind.PAGE_DOWN);
        }
        String last = walk.picture(80, 24);
        assertTrue(last.contains(SUMMARY.stripTrailing().lines().reduce((one, next) -> next).orElseThrow().strip()), last);
        assertTrue(last.lines().skip(3).findFirst().orElseThrow().equals(SUMMARY.split("\n", -1)[SUMMARY.split("\n", -1).length - 19].stripTrailing()), last);
        assertTrue(!last.equals(walk.key(Key.Kind.PAGE_UP).picture(80, 24)), last);
        assertEquals(last, walk.key(Key.Kind.END).picture(80, 24));
    }

    @Test
    void thePageOfKeysIsThatOfNoRecord() {
        Walk walk = Walk.on(read(RecordsScreen.of(list(), TODAY, Optional.empty()))).key(Key.Kind.F1);
        assertFalse(walk.picture(80, 24).contains("K-20"), walk.picture(80, 24));
        assertFalse(walk.picture(80, 24).lines().reduce((one, last) -> last).orElseThrow().contains("F3"), walk.picture(80, 24));
        Screen keys = walk.screen();
        assertEquals(keys, walk.key(Key.Kind.F5).screen());
    }

    @Test
    void theDueListLeadsToTheRecord() {
        Walk walk = Walk.on(RecordsScreen.of(list(), TODAY, Optional.empty())).key(Key.Kind.F8);
        for (int month = 0; month < 12 * 5; month++) {
            walk.key(Key.Kind.PAGE_DOWN);
        }
        DueScreen due = (DueScreen) walk.screen();
        String id = due.focus().orElseThrow().header().id();
        walk.key(Key.Kind.ENTER);
        assertEquals(id, ((RecordsScreen) walk.screen()).focus().orElseThrow().id());
    }

    @Test
    void everySizeCanBeDrawn() {
        RecordsScreen list = read(RecordsScreen.of(list(), TODAY, Optional.empty()));
        for (int columns = 60; columns < 200; columns += 7) {
            for (int rows = 18; rows < 60; rows += 5) {
                assertTrue(Walk.on(list).picture(columns, rows).contains("K-20"), columns + "x" + rows);
                assertTrue(Walk.on(DueScreen.of(list, java.time.YearMonth.of(2031, 10))).picture(columns, rows).contains("due"));
            }
        }
    }
}
