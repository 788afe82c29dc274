package domefold.followup.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.schedule.Schedules;
import domefold.outcome.Band;
import domefold.store.EvidenceFiles;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Test accuracy and cost against published values. */
class CourseReferenceTest {
    private final Evidence evidence = EvidenceFiles.shipped();

    /** Chung et al., Plast Reconstr Surg 1998;102:689-695. */
    @Test
    @Check({"C-DIA-01", "C-DIA-02"})
    void aPositiveUltrasoundAndThenAPositiveMriRaiseTheOdds() {
        double afterUltrasound = TestAccuracy.posterior(0.065, 8.742);
        assertEquals(37.8, 100 * afterUltrasound, 0.1);
        assertEquals(86.0, 100 * TestAccuracy.posterior(afterUltrasound, 10.11), 0.2);
    }

    /** Holmich et al., Ann Plast Surg 2005;54:583-589. */
    @Test
    @Check("C-DIA-03")
    void examinationByHandFromItsFourCounts() {
        TestAccuracy hand = TestAccuracy.ofCounts(18, 43, 6, 42, "Holmich 2005", Status.READ);
        double prevalence = 61.0 / 109;
        assertEquals(29.5, 100 * hand.sensitivity(), 0.1);
        assertEquals(87.5, 100 * hand.specificity(), 0.1);
        assertEquals(75.0, 100 * hand.positivePredictive(prevalence), 0.1);
        assertEquals(49.4, 100 * hand.negativePredictive(prevalence), 0.1);
    }

    /** Goodman et al., Ann Plast Surg 1998;41:577-585, with the constants in use. */
    @Test
    @Check({"C-DIA-04", "C-DIA-05", "C-DIA-06"})
    void whatAResultMeansAtAPrevalence() {
        TestAccuracy mri = TestAccuracy.mri(evidence.constants());
        TestAccuracy ultrasound = TestAccuracy.ultrasound(evidence.constants());
        assertEquals(30.3, 100 * mri.positivePredictive(0.10), 0.1);
        assertEquals(97.0, 100 * mri.negativePredictive(0.10), 0.1);
        assertEquals(2.5, 100 * ultrasound.positivePredictive(0.01), 0.1);
        assertEquals(99.5, 100 * ultrasound.negativePredictive(0.01), 0.1);
        assertEquals(22.0, 100 * ultrasound.positivePredictive(0.10), 0.1);
        assertEquals(94.4, 100 * ultrasound.negativePredictive(0.10), 0.1);
        assertTrue(Strategy.ULTRASOUND_THEN_MRI.words().contains("confirmed by MRI before an operation"));
    }

    /** The constants are the rows of the diagnostics table, not numbers beside it. */
    @Test
    void theAccuracyInUseStandsInTheDiagnosticsTable() {
        assertTrue(TestAccuracy.published(evidence, "MRI").contains(TestAccuracy.mri(evidence.constants())));
        assertTrue(TestAccuracy.published(evidence, "ultrasound").contains(TestAccuracy.ultrasound(evidence.constants())));
        assertEquals(4, TestAccuracy.published(evidence, "MRI").size());
    }

    /** Chung et al., Plast Reconstr Surg 2012;130:225-237, PMC3387386. */
    @Test
    @Check("C-COS-01")
    void withoutSymptomsUltrasoundThenMriCostLeast() {
        assertEquals(Map.of(Strategy.ULTRASOUND, 1090.0, Strategy.MRI, 2067.0, Strategy.ULTRASOUND_THEN_MRI, 637.0),
                PublishedCost.of(evidence).stream().filter(cost -> cost.scope().equals("asymptomatic"))
                        .collect(java.util.stream.Collectors.toMap(PublishedCost::strategy, PublishedCost::amount)));
        assertEquals(Strategy.ULTRASOUND_THEN_MRI, PublishedCost.cheapest(evidence, "asymptomatic").strategy());
        assertEquals(Strategy.ULTRASOUND, PublishedCost.cheapest(evidence, "symptomatic").strategy());
        assertTrue(PublishedCost.cheapest(evidence, "symptomatic").words().startsWith("published, symptomatic women:"));
    }

    /** Arithmetic on the schedule. */
    @Test
    @Check("C-COS-02")
    void fiveToEightExamsAt400EachCost2000To3200() {
        ExamPlan plan = ExamPlan.of(Schedules.of(evidence).get("US-2020", "here"), Fill.GEL, 20);
        PriceList prices = new PriceList("EUR", Map.of(PriceList.Item.ULTRASOUND, 400.0));
        Cost cost = Cost.of(prices, plan, Strategy.ULTRASOUND_THEN_MRI, Optional.empty(), Optional.of(new Band(25.5, 36.1)));
        assertEquals(Optional.of(new Band(2000, 3200)), cost.imaging());
        assertEquals(Optional.empty(), cost.revision());
        assertEquals(Optional.empty(), cost.confirmation());
        Cost exchange = Cost.of(new PriceList("EUR", Map.of(PriceList.Item.EXCHANGE_GEL, 6000.0)), plan, Strategy.MRI,
                Optional.empty(), Optional.of(new Band(25.5, 36.1)));
        assertEquals(Optional.empty(), exchange.imaging(), "a price that was not entered is not known, never zero");
        assertEquals(1530, exchange.revision().orElseThrow().low(), 1e-9);
        assertEquals(2166, exchange.revision().orElseThrow().high(), 1e-9);
    }

    @Test
    void salineHasNoExamsToPayAndAScheduleWithoutYearsHasNoKnownCost() {
        Schedules schedules = Schedules.of(evidence);
        PriceList none = new PriceList("EUR", Map.of());
        assertEquals(Optional.of(new Band(0, 0)), Cost.of(none, ExamPlan.of(schedules.get("US-SALINE", "here"), Fill.SALINE, 20),
                Strategy.MRI, Optional.empty(), Optional.empty()).imaging());
        PriceList full = new PriceList("EUR", Map.of(PriceList.Item.MRI, 900.0));
        assertEquals(Optional.empty(), Cost.of(full, ExamPlan.of(schedules.get("AU-2020", "here"), Fill.GEL, 20),
                Strategy.MRI, Optional.empty(), Optional.empty()).imaging());
        assertEquals(List.of(), ExamPlan.of(schedules.get("AU-2020", "here"), Fill.GEL, 20).densestYears());
    }
}
