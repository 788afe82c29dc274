package domefold.followup.survival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.evidence.Evidence;
import domefold.followup.shown.OutcomeRow;
import domefold.outcome.Band;
import domefold.outcome.Refusal;
import domefold.store.EvidenceFiles;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Curves through published points, fitted to the shipped table, against values computed outside this program. */
class CurveReferenceTest {
    private final Evidence evidence = EvidenceFiles.shipped();

    private Cohort cohort(String study, String outcome, String unit, String indication) {
        return Cohort.of(OutcomeRow.all(evidence)).stream().filter(one -> one.study().equals(study)
                && one.outcome().equals(outcome) && one.unit().equals(unit) && one.indication().startsWith(indication))
                .findFirst().orElseThrow();
    }

    private PointFit fit(String study, String outcome, String unit) {
        return cohort(study, outcome, unit, "primary augmentation").fit().orElseThrow();
    }

    private static double percent(PointFit fit, double year) {
        return 100 * fit.at(year).cumulative();
    }

    /** Stevens 2013, PMID 24056498; Calobrace 2018. */
    @Test
    @Check("C-FIT-01")
    void contracturePerImplantGoesExactlyThroughItsTwoPoints() {
        PointFit fit = fit("GEL-C-CA", "contracture_III_IV", "implant");
        assertEquals(0.5320, fit.curve().shape(), 0.0001);
        assertEquals(589.9, fit.curve().scale(), 0.2);
        assertEquals(7.60, percent(fit, 5), 1e-9);
        assertEquals(10.80, percent(fit, 10), 1e-9);
        Weibull exact = Weibull.through(5, 0.076, 10, 0.108);
        assertEquals(exact.shape(), fit.curve().shape(), 1e-12);
        assertEquals(exact.scale(), fit.curve().scale(), 1e-9);
    }

    /** US FDA June 2011 update as transcribed in the Australian Chief Medical Officer report, April 2012. */
    @Test
    @Check("C-FIT-02")
    void ruptureInTheFirstCohortAtYearSix() {
        assertEquals(3.96, percent(fit("GEL-A", "rupture", "patient"), 6), 0.05);
    }

    /** Stevens et al., Aesthet Surg J 2005;25:37-39: 0.3 % at year 1 is published and was not used in the fit here. */
    @Test
    @Check("C-FIT-03")
    void deflationThroughYearsThreeAndFiveForetellsYearOne() {
        Weibull curve = Weibull.through(3, 0.022, 5, 0.053);
        assertEquals(0.32, 100 * curve.cumulative(1), 0.05);
        assertEquals(0.3, 100 * curve.cumulative(1), 0.05);
    }

    /** Cunningham 2007; Cunningham & McCue 2009; Caplin 2021. */
    @Test
    @Check("C-FIT-04")
    void threePointsOfContractureByLeastSquares() {
        PointFit fit = fit("GEL-B", "contracture_III_IV", "patient");
        assertEquals(0.3478, fit.curve().shape(), 0.0005);
        assertEquals(11.91, percent(fit, 10), 0.05);
    }

    /** Australian Chief Medical Officer report 2012; Caplin 2021. */
    @Test
    @Check("C-FIT-05")
    void threePointsOfRuptureByLeastSquares() {
        PointFit fit = fit("GEL-B", "rupture", "patient");
        assertEquals(2.747, fit.curve().shape(), 0.005);
        assertEquals(16.02, fit.curve().scale(), 0.02);
        assertEquals(23.95, percent(fit, 10), 0.05);
    }

    /** Nava review, PMC5409896; Bengtson 2007; Maxwell 2012 (from memory). */
    @Test
    @Check("C-FIT-06")
    void theExceptionWhoseContractureSpeedsUpIsMarkedUnverified() {
        PointFit fit = fit("GEL-D", "contracture_III_IV", "patient");
        assertEquals(1.339, fit.curve().shape(), 0.001);
        assertEquals(9.1, percent(fit, 10), 0.05);
        assertTrue(cohort("GEL-D", "contracture_III_IV", "patient", "primary").unverified());
    }

    /** Nichter 2018, PMC6045953, and the ten-year report (from memory). */
    @Test
    @Check("C-FIT-07")
    void deflationOfTheStructuredDeviceIsMarkedUnverified() {
        PointFit fit = fit("SAL-3", "deflation", "patient");
        assertEquals(1.430, fit.curve().shape(), 0.001);
        assertEquals(1.39, percent(fit, 5), 0.05);
        assertTrue(cohort("SAL-3", "deflation", "patient", "primary").unverified());
    }

    /** US FDA pre-market summary 2000; Walker 2009 (from memory). */
    @Test
    @Check("C-FIT-08")
    void reoperationOfTheFirstSalineCohortIsMarkedUnverified() {
        PointFit fit = fit("SAL-1", "reoperation", "patient");
        assertEquals(0.544, fit.curve().shape(), 0.001);
        assertEquals(36.2, percent(fit, 10), 0.05);
        assertTrue(cohort("SAL-1", "reoperation", "patient", "primary").unverified());
    }

    @Test
    @Check("C-FIT-09")
    void contractureSlowsDownAndRuptureSpeedsUp() {
        for (String study : List.of("GEL-A", "GEL-B", "GEL-C-CA")) {
            String unit = study.equals("GEL-C-CA") ? "implant" : "patient";
            assertTrue(fit(study, "contracture_III_IV", unit).curve().shape() < 1, study);
        }
        for (String study : List.of("GEL-A", "GEL-B")) {
            assertTrue(fit(study, "rupture", "patient").curve().shape() > 1, study);
        }
    }

    @Test
    @Check("C-FIT-10")
    void yearFifteenOfATenYearCohortIsMarkedAndHasNoBareNumber() {
        CurveValue value = fit("GEL-A", "rupture", "patient").at(15);
        assertTrue(value.beyondData());
        assertEquals("no data after year 10", value.words());
        CurveValue within = fit("GEL-A", "rupture", "patient").at(10);
        assertFalse(within.beyondData());
        assertEquals("10.1 % by year 10", within.words());
    }

    @Test
    @Check("C-FIT-11")
    void cohortsThatLookedDifferentlyRefuseToShareARange() {
        Cohort withMri = cohort("GEL-A", "rupture", "patient", "primary augmentation");
        Cohort without = cohort("GEL-F", "rupture", "patient", "primary augmentation");
        Refusal refusal = assertThrows(Refusal.class, () -> new CohortSet(List.of(withMri, without)));
        assertTrue(refusal.getMessage().contains("detection differs"), refusal.getMessage());
        Cohort perImplant = cohort("GEL-A", "rupture", "implant", "all indications");
        assertTrue(assertThrows(Refusal.class, () -> new CohortSet(List.of(withMri, perImplant))).getMessage()
                .contains("never mixed"));
        assertEquals(2, new CohortSet(List.of(withMri, cohort("GEL-B", "rupture", "patient", "primary"))).cohorts().size());
    }

    /**
     * Held apart: years 3 and 8 (Australian Chief Medical Officer report 2012) foretell the 24.2 % of year 10 (Caplin 2021).
     * Year 3 is 1.0 in one secondary source and 0.5 in another; the published value lies between the two forecasts.
     */
    @Test
    void yearsThreeAndEightForetellYearTen() {
        double higher = 100 * Weibull.through(3, 0.010, 8, 0.136).cumulative(10);
        double lower = 100 * Weibull.through(3, 0.005, 8, 0.136).cumulative(10);
        assertEquals(24.2, higher, 1.0);
        assertTrue(higher < 24.2 && 24.2 < lower, higher + " < 24.2 < " + lower);
    }

    /** US FDA June 2011 update as transcribed in the Australian Chief Medical Officer report, April 2012. */
    @Test
    @Check({"C-INT-01", "C-INT-02", "C-INT-03"})
    void publishedIntervalsAreRebuiltFromTheirStandardError() {
        assertInterval(19.1, 0.114, 15.6, 23.3);
        assertInterval(10.1, 0.166, 7.4, 13.7);
        assertInterval(20.8, 0.110, 17.2, 25.2);
    }

    private static void assertInterval(double percent, double se, double low, double high) {
        Band rebuilt = LogLog.interval(percent / 100, se);
        assertEquals(low, 100 * rebuilt.low(), 0.2);
        assertEquals(high, 100 * rebuilt.high(), 0.2);
        assertEquals(se, LogLog.standardError(new Band(low / 100, high / 100)), 0.001);
    }

    /** Holmich et al., Arch Surg 2003;138:801-806. */
    @Test
    @Check("C-DKM-01")
    void theDanishImplantsStandInTheTableAsPublished() {
        List<OutcomeRow> danish = OutcomeRow.all(evidence).stream().filter(row -> row.study().equals("DK-MRI")
                && row.outcome().equals("rupture")).toList();
        assertEquals(0.98, 1 - danish.get(0).percent().orElseThrow() / 100, 0.005);
        Band ten = danish.get(1).intervalPercent().orElseThrow();
        assertEquals(0.83, 1 - ten.high() / 100, 0.005);
        assertEquals(0.85, 1 - ten.low() / 100, 0.005);
        assertFalse(danish.get(1).hasConfidenceInterval());
    }

    /** Holmich et al., Arch Surg 2003;138:801-806: 33 of 317 in two years is 10.4 %. */
    @Test
    @Check("C-DKM-02")
    void fivePointThreeOf100AYearIsTenPointOneInTwoYears() {
        assertEquals(10.1, 100 * Rates.shareAtConstantRate(0.053, 2), 0.1);
    }

    /** Spear & Murphy 2014. */
    @Test
    @Check("C-UNI-01")
    void twoIndependentImplantsWouldGiveMoreWomenThanWereSeen() {
        double women = 100 * Rates.anyOfIndependent(0.077, 2);
        assertEquals(14.8, women, 0.1);
        assertTrue(women > cohort("GEL-A", "rupture", "patient", "all indications").points().get(0).percent().orElseThrow());
    }
}
