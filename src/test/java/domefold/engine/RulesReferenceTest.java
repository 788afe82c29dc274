package domefold.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Refusal;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of checks.csv for single rules, with the tolerance of the row. */
class RulesReferenceTest {
    private static final Evidence SHIPPED = EvidenceFiles.shipped();
    private static final Constants CONSTANTS = SHIPPED.constants();

    /** Martin del Yerro, Vegas and others 2013 (read in a secondary account); tolerance 0.005. */
    @Check({"C-HGT-01", "C-HGT-02", "C-HGT-03"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({"C-HGT-01, 72, 20, 3.60, TALL", "C-HGT-02, 78, 19.5, 4.00, MEDIUM", "C-HGT-03, 84, 19, 4.42, LOW"})
    void theHeightClassFollowsTheRatio(String id, double chest, double notch, double ratio, String kind) {
        assertEquals(ratio, ImplantHeightRatio.ratio(chest, notch), 0.005, id);
        assertEquals(ImplantHeightRatio.HeightClass.valueOf(kind), ImplantHeightRatio.of(chest, notch, CONSTANTS), id);
    }

    @Test
    void bothEndsOfTheMediumRangeAreMedium() {
        assertEquals(ImplantHeightRatio.HeightClass.MEDIUM, ImplantHeightRatio.of(76, 20, CONSTANTS));
        assertEquals(ImplantHeightRatio.HeightClass.MEDIUM, ImplantHeightRatio.of(84, 20, CONSTANTS));
    }

    /** Rev Bras Cir Plast 2015;30(3) (read). */
    @Test
    @Check({"C-SPN-01", "C-SPN-02"})
    void theSpansFavourRoundOrAnatomical() {
        assertFalse(SpanRule.round(9, 8, CONSTANTS));
        assertTrue(SpanRule.working(9, 8, CONSTANTS).expression().contains("anatomical favoured"));
        assertTrue(SpanRule.round(7, 8, CONSTANTS));
        assertTrue(SpanRule.round(8, 8, CONSTANTS));
    }

    /** Karabulut and others (read in a secondary account); tolerance 0.01. */
    @Check({"C-BUS-01", "C-BUS-02", "C-BUS-03", "C-BUS-06"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({"C-BUS-01, 300, 5.99", "C-BUS-02, 200, 4.04", "C-BUS-03, 400, 7.94", "C-BUS-06, 450, 8.91"})
    void theBustGainsByThePublishedLine(String id, double ml, double gain) {
        assertEquals(gain, BustGain.cm(ml, CONSTANTS).orElseThrow(), 0.01, id);
    }

    @Test
    @Check({"C-BUS-04", "C-BUS-05"})
    void outsideItsDataThereIsNoBustGain() {
        assertTrue(BustGain.cm(120, CONSTANTS).isEmpty());
        assertTrue(BustGain.cm(500, CONSTANTS).isEmpty());
        assertTrue(BustGain.volumeMl(2, CONSTANTS).isEmpty());
    }

    /** King and others 2017; spread from common practice; tolerance 0.05. */
    @Test
    @Check({"C-CUP-01", "C-CUP-02"})
    void cupsAreABandAndNoPromise() {
        CupBand cups = CupBand.of(276, CONSTANTS);
        assertEquals(2.0, cups.measuredSteps().low(), 0.05);
        assertEquals(2.0, cups.measuredSteps().high(), 0.05);
        assertEquals(1.38, cups.steps().low(), 0.005);
        assertEquals(2.76, cups.steps().high(), 0.005);
        assertEquals("1.4 to 2.8 cup steps; published steps differ twofold, so no cup can be promised", cups.words());
    }

    /** Qiao, Zhou and Ling 1997 (from memory); tolerance 0.1. */
    @Check({"C-BVF-01", "C-BVF-02", "C-BVF-03"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({"C-BVF-01, 4.0, 9.5, 10, 7, 377.0", "C-BVF-02, 3.0, 9, 9, 6, 197.9", "C-BVF-03, 5.0, 10, 11, 8, 628.3"})
    void theConeFormulaGivesThePublishedVolume(String id, double mp, double mr, double lr, double ir, double ml) {
        assertEquals(ml, BreastVolumeFormula.ml(mp, mr, lr, ir, CONSTANTS), 0.1, id);
    }

    /** Fujiwara 2017 (read in a secondary account); tolerance 0.01. */
    @Test
    @Check({"C-PTO-01", "C-PTO-02", "C-PTO-03"})
    void theDiscriminantSeparatesPtoticFromNot() {
        assertEquals(13.16, PtosisDiscriminant.limitCm(10, CONSTANTS), 0.01);
        assertEquals(15.42, PtosisDiscriminant.limitCm(12, CONSTANTS), 0.01);
        assertFalse(PtosisDiscriminant.ptotic(13.0, 10, CONSTANTS));
        assertFalse(PtosisDiscriminant.ptotic(13.16, 10, CONSTANTS));
        assertTrue(PtosisDiscriminant.ptotic(13.3, 10, CONSTANTS));
    }

    /** Regnault scheme as restated in secondary texts. */
    @Test
    @Check({"C-PTO-04", "C-PTO-05", "C-PTO-06"})
    void theGradeFollowsNippleAndGland() {
        assertEquals(Ptosis.GRADE_I, PtosisGrade.of(PtosisGrade.Nipple.AT_FOLD, false));
        assertEquals(Ptosis.GRADE_II, PtosisGrade.of(PtosisGrade.Nipple.BELOW_FOLD, true));
        assertEquals(Ptosis.GRADE_III, PtosisGrade.of(PtosisGrade.Nipple.AT_LOWEST_CONTOUR, true));
        assertTrue(PtosisGrade.words(Ptosis.GRADE_III).contains("discuss a lift"));
        assertEquals(Ptosis.GLANDULAR, PtosisGrade.of(PtosisGrade.Nipple.ABOVE_FOLD, true));
        assertTrue(PtosisGrade.words(Ptosis.GLANDULAR).contains("with or without fold lowering may do"));
        assertEquals(Ptosis.NONE, PtosisGrade.of(PtosisGrade.Nipple.ABOVE_FOLD, false));
    }

    /** Arithmetic (derived); engineering gates (proposal). */
    @Test
    @Check({"C-ASY-01", "C-ASY-02", "C-ASY-03"})
    void totalsPerSideAreComparedAndSmallDifferencesDiscussed() {
        assertEquals(0, AsymmetryClass.totalMl(350, 300) - AsymmetryClass.totalMl(300, 350), 0);
        assertEquals(650, AsymmetryClass.totalMl(350, 300), 0);
        assertEquals(AsymmetryClass.SAME, AsymmetryClass.of(300, 329, CONSTANTS));
        assertEquals(AsymmetryClass.DISCUSS, AsymmetryClass.of(330, 300, CONSTANTS));
        assertEquals(AsymmetryClass.DISCUSS, AsymmetryClass.of(300, 375, CONSTANTS));
        assertEquals(AsymmetryClass.DIFFERENT, AsymmetryClass.of(300, 376, CONSTANTS));
    }

    /** By definition; equal is allowed. */
    @Test
    @Check("C-INP-01")
    void stretchedShorterThanRestingIsRejected() {
        Refusal refusal = assertThrows(Refusal.class, () -> CaseGate.check(side(8.0, 7.5), SHIPPED));
        assertEquals("left.nippleToFoldStretchedCm", refusal.where());
        CaseGate.check(side(8.0, 8.0), SHIPPED);
    }

    private static Case side(double rest, double stretched) {
        Readings readings = Readings.NONE.with(Measure.NIPPLE_TO_FOLD, rest)
                .with(Measure.NIPPLE_TO_FOLD_STRETCHED, stretched);
        return Case.empty("K-1", LocalDate.of(2026, 3, 4)).withSide(Side.LEFT, new Breast(readings, Optional.empty()));
    }

    /** Engineering gate (proposal). */
    @Test
    @Check("C-INP-03")
    void aBodyMassIndexOf33IsQueried() {
        Readings patient = Readings.NONE.with(Measure.HEIGHT, 170).with(Measure.WEIGHT, 33 * 1.7 * 1.7);
        Finding finding = CrossChecks.bodyMass(patient, SHIPPED).orElseThrow();
        assertEquals("bmi-query", finding.note().code());
        assertFalse(finding.refuse());
        Readings usual = Readings.NONE.with(Measure.HEIGHT, 170).with(Measure.WEIGHT, 32 * 1.7 * 1.7);
        assertTrue(CrossChecks.bodyMass(usual, SHIPPED).isEmpty());
    }

    @Test
    void heightAndWeightExchangedAreNamed() {
        Readings patient = Readings.NONE.with(Measure.HEIGHT, 58).with(Measure.WEIGHT, 166);
        Finding finding = CrossChecks.bodyMass(patient, SHIPPED).orElseThrow();
        assertTrue(finding.refuse());
        assertEquals("height-weight-exchanged", finding.note().code());
    }

    /** Plane and solid geometry; tolerances of the rows. */
    @Test
    @Check({"C-GEO-01", "C-GEO-02", "C-GEO-03", "C-GEO-04"})
    void aDeviceHoldsBetweenACapAndACylinder() {
        assertEquals(259.7, ShapeBounds.capMl(12, 4.0), 0.5);
        assertEquals(301.6, ShapeBounds.halfEllipsoidMl(12, 4.0), 0.5);
        assertEquals(ShapeBounds.Plausibility.PLAUSIBLE, ShapeBounds.of(12, 4.0, 300, CONSTANTS));
        assertEquals(452.4, ShapeBounds.cylinderMl(12, 4.0), 0.5);
        assertEquals(ShapeBounds.Plausibility.IMPOSSIBLE, ShapeBounds.of(12, 4.0, 500, CONSTANTS));
        assertEquals(324, ShapeBounds.capMl(12.5, 4.5), 0.6);
        assertEquals(368, ShapeBounds.halfEllipsoidMl(12.5, 4.5), 0.6);
        assertEquals(189, ShapeBounds.capMl(11, 3.5), 0.6);
        assertEquals(222, ShapeBounds.halfEllipsoidMl(11, 3.5), 0.6);
    }

    /** Cadaver rows, Eplasty 2018 (read); Morkuzu and others 2022, PMC9699649 (read); general teaching (from memory). */
    @Test
    @Check({"C-INC-01", "C-INC-02", "C-INC-03", "C-INC-04", "C-INC-05"})
    void incisionLengthsAreThePublishedOnes() {
        IncisionRows rows = IncisionRows.of(SHIPPED);
        assertEquals(3.5, rows.gelByHandCm(300).orElseThrow(), 0.1);
        assertEquals(3.25, rows.gelByHandCm(250).orElseThrow(), 1e-9);
        assertEquals(4.5, rows.gelByHandCm(700).orElseThrow(), 0.1);
        assertEquals(2.5, rows.gelByHandCm(100).orElseThrow(), 0.1);
        assertTrue(rows.gelByHandCm(99).isEmpty());
        assertTrue(rows.gelByHandCm(701).isEmpty());
        assertEquals(3.55, rows.gelWithFunnel().typicalCm().orElseThrow(), 0.005);
        assertEquals(3.55 + 1.96 * 0.21, rows.gelWithFunnel().highCm(), 0.005);
        RoutePermission navel = RoutePermission.of("transumbilical", Fill.GEL, false, SHIPPED);
        assertFalse(navel.permitted());
        assertEquals("pre-filled device cannot pass", navel.note());
        assertTrue(RoutePermission.of("transumbilical", Fill.SALINE, false, SHIPPED).permitted());
    }

    /** Half-circle areola rule (practice; arithmetic derived); tolerance 0.01. */
    @Test
    @Check({"C-INC-06", "C-INC-07", "C-INC-08"})
    void anAreolaHoldsHalfItsCircumference() {
        assertFalse(AreolaArc.holds(3.0, 5.0));
        assertEquals(4.71, AreolaArc.longestIncisionCm(3.0), 0.01);
        assertEquals(3.18, AreolaArc.areolaNeededCm(5.0), 0.01);
        assertEquals(2.55, AreolaArc.areolaNeededCm(4.0), 0.01);
        assertTrue(AreolaArc.holds(4.0, 6.28));
        assertEquals(6.28, AreolaArc.longestIncisionCm(4.0), 0.01);
    }
}
