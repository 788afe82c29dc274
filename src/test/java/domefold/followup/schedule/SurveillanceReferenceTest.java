package domefold.followup.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.device.Fill;
import domefold.evidence.Status;
import domefold.outcome.Refusal;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Exam counts as the issuers state them.
 *
 * <p>US FDA labelling 2006 (Song et al. 2011, PMC3080104); US FDA guidance 2020 and American College of Radiology 2023
 * (PMID 38040459); French directorate statement of 22 Nov 2018; French multicentre rupture series.
 */
class SurveillanceReferenceTest {
    private final Schedules schedules = Schedules.of(EvidenceFiles.shipped());

    private ExamPlan plan(String id, Fill fill, int horizonYears) {
        return ExamPlan.of(schedules.get(id, "here"), fill, horizonYears);
    }

    /** C-SUR-01. */
    @Check("C-SUR-01")
    @Test
    void the2006LabelAskedForNineExamsInTwentyYears() {
        ExamPlan plan = plan("US-2006", Fill.GEL, 20);
        assertEquals(List.of(3, 5, 7, 9, 11, 13, 15, 17, 19), plan.densestYears());
        assertEquals(plan.densestYears(), plan.sparsestYears());
    }

    /** C-SUR-02 to C-SUR-05: the 2020 guidance, read densest and sparsest. */
    @Check({"C-SUR-02", "C-SUR-03", "C-SUR-04", "C-SUR-05"})
    @ParameterizedTest
    @CsvSource({"20,5,8", "10,2,3", "5,0,1", "30,9,13"})
    void the2020GuidanceAsksForARangeOfExams(int horizonYears, int fewest, int most) {
        ExamPlan plan = plan("US-2020", Fill.GEL, horizonYears);
        assertEquals(fewest, plan.sparsestYears().size());
        assertEquals(most, plan.densestYears().size());
        assertEquals(fewest, plan.examsLow());
        assertEquals(most, plan.examsHigh());
    }

    @Test
    void the2020GuidanceIsReadFromYearFiveEveryTwoAndFromYearSixEveryThree() {
        ExamPlan plan = plan("US-2020", Fill.GEL, 20);
        assertEquals(List.of(5, 7, 9, 11, 13, 15, 17, 19), plan.densestYears());
        assertEquals(List.of(6, 9, 12, 15, 18), plan.sparsestYears());
    }

    /** C-SUR-06. */
    @Check("C-SUR-06")
    @ParameterizedTest
    @CsvSource({"US-SALINE", "ACR-2018-SALINE", "ACR-2023-SALINE", "US-2020", "US-2006", "ACR-2023-GEL"})
    void salineAsksForNoExamUnderTheUnitedStatesSchedulesWhateverTheHorizon(String id) {
        for (int horizonYears : new int[] {0, 5, 10, 20, 40}) {
            ExamPlan plan = plan(id, Fill.SALINE, horizonYears);
            assertEquals(0, plan.examsHigh());
            assertFalse(plan.stated());
        }
    }

    /** C-SUR-07. */
    @Check("C-SUR-07")
    @Test
    void atYearThreeGelIsNotImagedTodayThoughTheSupersededLabelSaidSo() {
        for (String id : List.of("ACR-2023-GEL", "ACR-2023-GEL-EARLY", "US-2020")) {
            ExamPlan plan = plan(id, Fill.GEL, 3);
            assertEquals(0, plan.examsHigh(), id);
        }
        ExamPlan old = plan("US-2006", Fill.GEL, 3);
        assertEquals(List.of(3), old.densestYears());
        assertTrue(old.schedule().superseded());
        assertTrue(old.text().contains("superseded"), old.text());
        assertEquals(Set.of("US-2006"), schedules.all().stream().filter(Schedule::superseded).map(Schedule::id)
                .collect(Collectors.toSet()));
    }

    /** C-SUR-08. */
    @Check("C-SUR-08")
    @Test
    void theFrenchStatementAsksForTwentyVisitsInTwentyYears() {
        assertEquals(20, plan("FR-2018", Fill.GEL, 20).examsLow());
        assertEquals(20, plan("FR-2018", Fill.GEL, 20).examsHigh());
    }

    /** C-SUR-09. */
    @Check("C-SUR-09")
    @Test
    void aNewSymptomInYearTwoIsImagedNowWhateverTheScheduleSays() {
        assertEquals(0, plan("US-2020", Fill.GEL, 2).examsHigh());
        String path = ScheduleWords.symptom(schedules.get("US-2020", "here"), Fill.GEL);
        assertTrue(path.contains("now, with imaging"), path);
        assertTrue(path.contains("whatever the schedule says"), path);
        assertTrue(path.contains("MRI at any time if symptomatic"), path);
    }

    @Test
    void theFrenchProposalNamesThreeYearsAndNoneAfterTheTenth() {
        ExamPlan plan = plan("FR-PROPOSAL", Fill.GEL, 20);
        assertEquals(List.of(4, 7, 10), plan.densestYears());
        assertEquals(List.of(4, 7, 10), plan.sparsestYears());
        assertTrue(plan.text().contains("Nothing is published for the years after 10"), plan.text());
        assertEquals(List.of(4, 7), plan("FR-PROPOSAL", Fill.GEL, 9).densestYears());
    }

    @ParameterizedTest
    @CsvSource({"AU-2020", "CA-QC-2003", "UK-2011", "UK-RECALLED", "FR-2015", "EU", "AU-2012"})
    void jurisdictionsThatStateNoIntervalSaySo(String id) {
        ExamPlan plan = plan(id, Fill.GEL, 30);
        assertFalse(plan.stated());
        assertEquals(List.of(), plan.densestYears());
        assertTrue(plan.text().contains("gives no imaging years; its rule: " + plan.schedule().rule()), plan.text());
    }

    @Test
    void aSalineScheduleSaysNothingAboutGel() {
        ExamPlan plan = plan("US-SALINE", Fill.GEL, 20);
        assertFalse(plan.stated());
        assertTrue(plan.text().contains("says nothing about gel"), plan.text());
    }

    @Test
    void anUnknownScheduleIsRefusedWithTheKnownOnesNamed() {
        Refusal refusal = assertThrows(Refusal.class, () -> schedules.get("US-1999", "setting.surveillance"));
        assertEquals("unknown-schedule", refusal.code());
        schedules.ids().forEach(id -> assertTrue(refusal.getMessage().contains(id), id));
    }

    /** Dates by calendar: java.time's rule for a day that a year lacks, stated in {@link ExamPlan#DATE_RULE}. */
    @ParameterizedTest
    @CsvSource({"2024-02-29,5,2029-02-28", "2024-02-29,8,2032-02-29", "2026-08-31,6,2032-08-31", "2026-02-28,2,2028-02-28",
        "2026-01-31,1,2027-01-31", "2026-12-31,5,2031-12-31"})
    void datesKeepTheirDayAndFallBackToThe28thOfFebruary(LocalDate from, int years, LocalDate expected) {
        assertEquals(expected, ExamPlan.date(from, years));
    }

    @Test
    void theAnswerHoldsBothReadingsAsDates() {
        ScheduleAnswer answer = ScheduleAnswer.of(schedules, "US-2020", Fill.GEL, LocalDate.of(2026, 3, 4), 10);
        assertEquals(List.of(LocalDate.of(2031, 3, 4), LocalDate.of(2033, 3, 4), LocalDate.of(2035, 3, 4)), answer.densest());
        assertEquals(List.of(LocalDate.of(2032, 3, 4), LocalDate.of(2035, 3, 4)), answer.sparsest());
        assertEquals(Status.READ, answer.status());
        assertTrue(answer.source().contains("PMID 38040459"));
    }
}
