package domefold.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Fill;
import domefold.outcome.Refusal;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordListTest {
    private static final RecordList LIST = RecordList.of(List.of(
            header("K-2041", "2026-03-04", RecordStatus.SIGNED, Fill.GEL, "GEL-M-290", happened()),
            header("K-2042", "2026-03-31", RecordStatus.AMENDED, Fill.SALINE, "SAL-L-300",
                    happened(new RecordHeader.Happening(RecordEvent.Kind.ORDERED, LocalDate.of(2026, 4, 1)))),
            header("M-7", "2025-12-31", RecordStatus.DRAFT, Fill.GEL, "GEL-H-330", happened()),
            header("Z-1", "2026-01-01", RecordStatus.ENTERED_IN_ERROR, Fill.GEL, "GEL-M-290", happened())));

    @ParameterizedTest
    @CsvSource(value = {"|K-2042 K-2041 Z-1 M-7", "case:k-204|K-2042 K-2041", "K-2041|K-2041", "device:gel-m|K-2041 Z-1",
        "device:GEL-M status:signed|K-2041", "fill:saline|K-2042", "status:ordered|K-2042", "status:amended|K-2042",
        "status:entered-in-error|Z-1", "2026-03-04|K-2041", "2026-03|K-2042 K-2041", "2026|K-2042 K-2041 Z-1",
        "2025-12-31..2026-01-01|Z-1 M-7", "2026-03-31..|K-2042", "..2025|M-7", "gel 2026-03|K-2041", "us-2020 draft|M-7",
        "ngũgĩ saline|K-2042", "left gel-h|M-7", "nothing|"}, delimiter = '|', emptyValue = "")
    void everyPartOfAQuestionMustHold(String question, String ids) {
        assertEquals(ids == null ? "" : ids,
                String.join(" ", LIST.find(RecordQuery.of(question == null ? "" : question)).stream().map(RecordHeader::id).toList()));
    }

    @ParameterizedTest
    @CsvSource({"colour:red,query-key", "fill:air,query-fill", "device:,query-value", "2026-02-30,query-date",
        "2026-13,query-date", "02/03/2026,query-date", "2026-03..2026-01,query-range"})
    void whatCannotBeMeantIsRefusedAndWhileTypingLookedForAsWords(String question, String code) {
        assertEquals(code, assertThrows(Refusal.class, () -> RecordQuery.of(question)).code());
        assertEquals(List.of(), LIST.find(RecordQuery.typed(question)));
    }

    @Test
    void aFilterTypedLetterByLetterAnswersAsAFreshQuestionDoes() {
        Random random = new Random(204);
        List<String> texts = List.of("gel-m", "K-2042", "2026-03", "status:signed", "device:gel fill:gel", "2025..2026 gel",
                "left gel signed");
        for (String text : texts) {
            TypedFilter filter = TypedFilter.over(LIST);
            for (int i = 0; i <= text.length(); i++) {
                filter = filter.typed(text.substring(0, i));
                assertEquals(LIST.find(RecordQuery.typed(text.substring(0, i))), filter.shown(), text.substring(0, i));
            }
            int back = random.nextInt(text.length());
            assertEquals(LIST.find(RecordQuery.typed(text.substring(0, back))), filter.typed(text.substring(0, back)).shown());
        }
    }

    @Test
    void anEmptyAnswerSaysWhatWasSearchedAndWhatIsNear() {
        assertEquals("No record answers to case K-204I among 4 records. Nearest codes: K-2041, K-2042.",
                LIST.nothingFound("case:K-204I"));
        String words = LIST.nothingFound("C-2026-0042-8");
        assertTrue(words.contains("The check digit of C-2026-0042-8 does not hold"), words);
    }

    @Test
    void casesOneSlipApartAreSaidToLookAlike() {
        assertEquals(List.of("K-2042"), LIST.lookAlikes(LIST.byCode("k-2041").orElseThrow()).stream()
                .map(RecordHeader::id).toList());
        assertTrue(RecordList.warning(LIST.all()).orElseThrow().contains("K-2042 and K-2041"));
        assertEquals(Optional.empty(), RecordList.warning(List.of(LIST.all().get(0), LIST.all().get(3))));
    }

    @Test
    void aHeaderIsTheRecordInBrief() {
        RecordEvent booked = new RecordEvent("K-2041", 1, RecordEvent.Kind.BOOKED, LocalDate.of(2031, 3, 10), "", "desk",
                Instant.parse("2031-02-01T08:00:00Z"), "{}");
        RecordHeader header = RecordHeader.of(SampleRecords.signed(), List.of(booked));
        assertEquals("GEL-M-290", header.left().orElseThrow().deviceId());
        assertEquals("GEL-M-330", header.right().orElseThrow().deviceId());
        assertEquals("booked", header.stands());
        assertEquals(LocalDate.of(2031, 3, 4), header.exams().orElseThrow().earliest().get(0));
        assertTrue(header.words().contains("left gel-m-290") && header.words().contains("right gel-m-330"));
    }

    @Test
    void theDueListHoldsWhoIsLateWhoMustComeAndWhoMayWithTheSchedulesName() {
        assertEquals(List.of(), due("2031-02"));
        assertEquals(List.of("K-2041 OPENS", "K-2042 OPENS"), due("2031-03"));
        assertEquals(List.of("K-2041 OPEN", "K-2042 OPEN"), due("2031-04"));
        assertEquals(List.of("K-2041 CLOSES", "K-2042 CLOSES"), due("2032-03"));
        assertEquals(List.of("K-2041 OVERDUE", "K-2042 OVERDUE"), due("2032-04"));
        assertEquals("exam 1 by schedule US-2020 (US FDA labelling guidance), due 2031-03-04 to 2032-03-04, overdue,"
                + " no operation entered", DueList.of(LIST.all(), YearMonth.of(2032, 4)).get(0).reason());
    }

    @Test
    void anExamDoneMovesTheNextOneUpAndEndsItsBooking() {
        RecordHeader booked = header("A", "2026-03-04", RecordStatus.SIGNED, Fill.GEL, "G", happened(
                new RecordHeader.Happening(RecordEvent.Kind.IMPLANTED, LocalDate.of(2026, 3, 20)),
                new RecordHeader.Happening(RecordEvent.Kind.BOOKED, LocalDate.of(2031, 3, 10))));
        DueList.Due first = DueList.of(List.of(booked), YearMonth.of(2031, 3)).get(0);
        assertEquals(Optional.of(LocalDate.of(2031, 3, 10)), first.booked());
        assertTrue(first.implanted());
        List<RecordHeader.Happening> done = new ArrayList<>(booked.happened());
        done.add(new RecordHeader.Happening(RecordEvent.Kind.DONE, LocalDate.of(2031, 3, 10)));
        RecordHeader after = header("A", "2026-03-04", RecordStatus.SIGNED, Fill.GEL, "G", done);
        assertEquals(List.of(), DueList.of(List.of(after), YearMonth.of(2032, 12)));
        DueList.Due second = DueList.of(List.of(after), YearMonth.of(2033, 3)).get(0);
        assertEquals(2, second.exam());
        assertEquals(Optional.empty(), second.booked());
        done.add(new RecordHeader.Happening(RecordEvent.Kind.DONE, LocalDate.of(2033, 3, 10)));
        assertEquals(List.of(), DueList.of(
                List.of(header("A", "2026-03-04", RecordStatus.SIGNED, Fill.GEL, "G", done)), YearMonth.of(2050, 1)));
    }

    @Test
    void practiceCasesAndErrorsAreNeverDue() {
        RecordHeader practice = RecordHeader.of(SampleRecords.withStatus(RecordStatus.SIGNED, true), List.of());
        assertEquals(List.of(), DueList.of(List.of(practice), YearMonth.of(2040, 1)));
    }

    /** A hundred thousand headers: measured 2026-11-25 at a few milliseconds; the bound only catches a change of kind. */
    @Test
    void findingAmongAHundredThousandIsAMatterOfMilliseconds() {
        List<RecordHeader> many = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            many.add(header(String.format(Locale.ROOT, "C-2026-%06d", i), "2026-03-04", RecordStatus.SIGNED, Fill.GEL,
                    "GEL-M-" + i % 900, happened()));
        }
        RecordList list = RecordList.of(many);
        long start = System.nanoTime();
        for (int i = 0; i < 5; i++) {
            assertEquals(1, list.find(RecordQuery.of("c-2026-099999 gel")).size());
        }
        long eachMs = (System.nanoTime() - start) / 5_000_000;
        System.out.println("find among 100,000: " + eachMs + " ms");
        assertTrue(eachMs < 500, eachMs + " ms");
    }

    private static List<String> due(String month) {
        return DueList.of(LIST.all(), YearMonth.parse(month)).stream().map(due -> due.header().id() + " " + due.how()).toList();
    }

    private static List<RecordHeader.Happening> happened(RecordHeader.Happening... all) {
        return List.of(all);
    }

    private static RecordHeader header(String id, String day, RecordStatus status, Fill fill, String device,
            List<RecordHeader.Happening> happened) {
        RecordHeader.SideLine line = new RecordHeader.SideLine(device, "Round", fill, 300, 300);
        RecordHeader.ExamDates exams = new RecordHeader.ExamDates("US-2020", "US FDA labelling guidance",
                List.of(LocalDate.of(2031, 3, 4), LocalDate.of(2033, 3, 4)), List.of(LocalDate.of(2032, 3, 4)));
        return RecordHeader.of(id, status == RecordStatus.AMENDED ? 2 : 1, status, false, LocalDate.parse(day),
                Instant.parse("2026-04-01T08:00:00Z"), "Dr A. Ngũgĩ", status == RecordStatus.AMENDED ? 1 : 0, Optional.of(line),
                Optional.of(line), Optional.of(exams), happened);
    }
}
