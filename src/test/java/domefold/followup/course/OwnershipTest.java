package domefold.followup.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Constant;
import domefold.evidence.Evidence;
import domefold.followup.FollowUps;
import domefold.followup.schedule.Schedules;
import domefold.outcome.Band;
import domefold.outcome.Refusal;
import domefold.patient.Setting;
import domefold.plan.Candidate;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One device's years put together, and what the planner attaches to a candidate. */
class OwnershipTest {
    private final Evidence evidence = EvidenceFiles.shipped();

    private static Device device(Fill fill) {
        return new Device("x", "invented", fill, Surface.SMOOTH, Profile.FULL, 300,
                fill == Fill.SALINE ? Optional.of(new Band(300, 330)) : Optional.empty(), 11.5, 11.5, 4.2);
    }

    private Ownership own(Fill fill, Strategy strategy, Evidence used, Optional<PriceList> prices) {
        return Ownership.of(device(fill), Schedules.of(used).get("US-2020", "here"), 20, 10,
                Watch.of(used.constants(), strategy), prices, used);
    }

    @Test
    void gelHasExamsAndSilentRuptureWithTheHorizonMarkedAsBeyondTheData() {
        Ownership gel = own(Fill.GEL, Strategy.ULTRASOUND_THEN_MRI, evidence, Optional.empty());
        assertEquals(5, gel.plan().examsLow());
        assertEquals(8, gel.plan().examsHigh());
        assertFalse(gel.byYearShown().orElseThrow().beyondData());
        assertTrue(gel.byHorizon().orElseThrow().beyondData());
        assertTrue(gel.curves().get(0).years().get(14).beyondData());
        assertFalse(gel.curves().get(0).years().get(9).beyondData());
        assertTrue(gel.cost().isEmpty());
        Band ruptured = gel.byYearShown().orElseThrow().over(course -> course.found() + course.silentAtHorizon());
        assertTrue(ruptured.low() > 0 && ruptured.high() < 24.2, "women whose device was taken out first no longer count");
        assertTrue(gel.asAttended().orElseThrow().over(LifeCourse::silentAtHorizon).low()
                > gel.byYearShown().orElseThrow().over(LifeCourse::silentAtHorizon).low());
    }

    @Test
    void salineHasNoExamsAndItsDeflationIsSeenAtOnce() {
        Ownership saline = own(Fill.SALINE, Strategy.ULTRASOUND_THEN_MRI, evidence, Optional.empty());
        assertEquals(0, saline.plan().examsHigh());
        assertTrue(saline.byYearShown().isEmpty() && saline.byHorizon().isEmpty());
        DeflationCourse deflation = saline.deflation().orElseThrow();
        assertEquals(3.7, deflation.deflatedPer100().low(), 1e-9);
        assertTrue(deflation.deflatedPer100().high() > 13);
        assertFalse(deflation.beyondData());
    }

    @Test
    void anyAssumptionThatIsChangedMovesTheResult() {
        Band before = own(Fill.GEL, Strategy.MRI, evidence, Optional.empty()).byYearShown().orElseThrow()
                .over(LifeCourse::silentAtHorizon);
        for (Map.Entry<String, Double> change : Map.of("FU-MRI-SENSITIVITY", 50.0, "FU-MRI-SPECIFICITY", 99.0,
                "FU-ADHERENCE", 0.3, "FU-IMPLANTS", 1.0).entrySet()) {
            Evidence changed = evidence.with(evidence.constants().with(change.getKey(),
                    new Constant.Override(change.getValue(), LocalDate.of(2026, 3, 4), "for a test")));
            Band after = own(Fill.GEL, Strategy.MRI, changed, Optional.empty()).byYearShown().orElseThrow()
                    .over(LifeCourse::silentAtHorizon);
            assertFalse(before.equals(after), change.getKey());
        }
        assertFalse(before.equals(own(Fill.GEL, Strategy.ULTRASOUND, evidence, Optional.empty()).byYearShown().orElseThrow()
                .over(LifeCourse::silentAtHorizon)));
    }

    @Test
    void aPriceListGivesCostsInItsOwnCurrency() {
        PriceList prices = new PriceList("EUR", Map.of(PriceList.Item.ULTRASOUND, 100.0, PriceList.Item.MRI, 500.0));
        Cost cost = own(Fill.GEL, Strategy.ULTRASOUND_THEN_MRI, evidence, Optional.of(prices)).cost().orElseThrow();
        assertEquals("EUR", cost.currency());
        assertEquals(new Band(500, 800), cost.imaging().orElseThrow());
        assertTrue(cost.confirmation().orElseThrow().low() > 0);
        assertFalse(cost.beyondData());
        assertEquals(20, cost.horizonYears());
        assertEquals(10, cost.courseYears());
        assertTrue(cost.revision().isEmpty());
    }

    @Test
    void thePlannerGetsExamsAndOutcomesUnderTheChosenScheduleAndNothingWithoutOne() {
        assertTrue(FollowUps.forDevice(device(Fill.GEL), Setting.OPEN, evidence).isEmpty());
        Candidate.FollowUp gel = FollowUps.forDevice(device(Fill.GEL), setting("US-2020"), evidence).orElseThrow();
        assertEquals(20, gel.horizonYears());
        assertEquals(List.of(6, 9, 12, 15, 18), gel.sparsestYears());
        Candidate.Outcome first = gel.outcomes().get(0);
        assertEquals("capsular contracture", first.outcome());
        assertEquals(4.7, first.per100Low());
        assertEquals(18.9, first.per100High());
        assertEquals("patient", first.unit());
        assertEquals("implant", gel.outcomes().get(1).unit());
        assertEquals("rupture", gel.outcomes().get(2).outcome());
        assertTrue(first.cohorts().get(0).startsWith("GEL-A, 455 followed"), first.cohorts().toString());
        Candidate.FollowUp saline = FollowUps.forDevice(device(Fill.SALINE), setting("US-2020"), evidence).orElseThrow();
        assertEquals(0, saline.examsHigh());
        assertTrue(saline.text().contains("asks for no imaging while nothing has changed"), saline.text());
        assertEquals("unknown-schedule", assertThrows(Refusal.class,
                () -> FollowUps.forDevice(device(Fill.GEL), setting("US-1999"), evidence)).code());
    }

    private static Setting setting(String schedule) {
        return new Setting(Optional.of(schedule), Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty(), Set.of());
    }

    @Test
    void theDefaultAccuracyLiesWithinTheSpreadOfThePublishedOnes() {
        for (Strategy strategy : Strategy.values()) {
            Ownership gel = own(Fill.GEL, strategy, evidence, Optional.empty());
            AccuracySpread spread = gel.accuracySpread().orElseThrow();
            assertEquals(strategy == Strategy.MRI ? 4 : strategy == Strategy.ULTRASOUND ? 3 : 12, spread.pairs());
            Band used = gel.byYearShown().orElseThrow().over(LifeCourse::needlessOperations);
            assertTrue(spread.needlessOperations().includes(used.low()) && spread.needlessOperations().includes(used.high()));
            assertTrue(spread.needlessOperations().low() < used.low());
            GelCourse course = gel.byYearShown().orElseThrow();
            within(spread.exams(), course.over(LifeCourse::exams));
            within(spread.falseAlarms(), course.over(LifeCourse::falseAlarms));
            within(spread.confirmations(), course.over(LifeCourse::confirmations));
            within(spread.operations(), course.over(LifeCourse::operations));
            within(spread.found(), course.over(LifeCourse::found));
            within(spread.silentAtHorizon(), course.over(LifeCourse::silentAtHorizon));
            within(spread.yearsToDetection().orElseThrow(), course.yearsToDetection().orElseThrow());
        }
    }

    private static void within(Band spread, Band used) {
        assertTrue(spread.includes(used.low()) && spread.includes(used.high()), spread + " holds " + used);
    }

    /** Approved by reading: no bare number past the data, units and years on every figure, both framings. */
    @Test
    void theSentencesOfTheFollowUpAreTheApprovedOnes() {
        PriceList prices = new PriceList("EUR", Map.of(PriceList.Item.ULTRASOUND, 100.0, PriceList.Item.MRI, 500.0));
        String text = String.join("\n", OwnershipWords.lines(own(Fill.GEL, Strategy.ULTRASOUND_THEN_MRI, evidence, Optional.of(prices))))
                + "\n\n" + String.join("\n", OwnershipWords.lines(own(Fill.SALINE, Strategy.ULTRASOUND, evidence, Optional.empty()))) + "\n";
        Approved.check("follow-up-sentences", text);
    }
}
