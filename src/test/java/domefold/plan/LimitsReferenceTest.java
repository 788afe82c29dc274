package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.device.Device;
import domefold.outcome.Note;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Ptosis;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of checks.csv on width, pocket, repeatability, ptosis, age and contraindications, through a whole plan. */
class LimitsReferenceTest {

    /** Tissue-matched planning, wide teaching use (from memory); tolerance 0.05. */
    @Check({"C-WID-01", "C-WID-02", "C-WID-03"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C-WID-01, 12.5, 1.0, 2.0, 11.0",
        "C-WID-02, 13.0, 2.0, 3.0, 10.5",
        "C-WID-03, 11.0, 0.6, 0.8, 10.3",
    })
    void theCeilingIsTheBaseLessHalfThePinches(String id, double base, double medial, double lateral, double ceiling) {
        Readings side = Sample.SIDE.with(Measure.BASE_WIDTH, base).with(Measure.MEDIAL_PINCH, medial)
                .with(Measure.LATERAL_PINCH, lateral);
        assertEquals(ceiling, Sample.left(Sample.with(side)).widthCeilingCm().orElseThrow(), 1e-9, id);
    }

    /** The reason names the width and both pinches (from memory). */
    @Test
    @Check("C-WID-04")
    void aWidthAboveTheCeilingIsNeverOfferedSilently() {
        SideFit fit = Sample.plan(Sample.with(Sample.SIDE), Sample.gel(300, 12.0, 4.0)).candidates().get(0).left();
        String text = Sample.text(fit.notes(), "width-over-ceiling");
        assertTrue(text.contains("width 12.0 cm") && text.contains("ceiling 11.0 cm")
                && text.contains("medial pinch 1.0 cm") && text.contains("lateral pinch 2.0 cm"), text);
        assertEquals(-1.0, fit.widthMarginCm().orElseThrow(), 1e-9);
    }

    /** WID-02 is strict: 14.7 - (2.3 + 2.5) / 2 is 12.3, although a double falls a hair short of it. */
    @Test
    void aWidthAtTheCeilingIsNotAboveIt() {
        Readings side = Sample.SIDE.with(Measure.BASE_WIDTH, 14.7).with(Measure.MEDIAL_PINCH, 2.3)
                .with(Measure.LATERAL_PINCH, 2.5);
        Plan plan = Sample.plan(Sample.with(side), Sample.gel(390, 12.3, 4.9), Sample.gel(390, 12.4, 4.8));
        assertFalse(Sample.says(plan.candidates().get(0).left().notes(), "width-over-ceiling"));
        assertTrue(Sample.says(plan.candidates().get(1).left().notes(), "width-over-ceiling"));
    }

    /** Tebbetts and Adams 2005 (from memory): strict. */
    @Test
    @Check({"C-POC-01", "C-POC-02"})
    void thePinchesSayWhereMuscleCovers() {
        SideLimits thin = Sample.left(Sample.with(Sample.SIDE.with(Measure.UPPER_PINCH, 1.9)
                .with(Measure.FOLD_PINCH, 0.5)));
        assertTrue(Sample.text(thin.notes(), "muscle-cover").contains("ripples and edges"));
        assertEquals(Optional.of(Pocket.DUAL_PLANE), thin.pocket());
        assertFalse(Sample.says(thin.notes(), "keep-muscle-at-fold"));
        SideLimits thinner = Sample.left(Sample.with(Sample.SIDE.with(Measure.FOLD_PINCH, 0.4)));
        assertTrue(Sample.says(thinner.notes(), "keep-muscle-at-fold"));
        assertFalse(Sample.says(Sample.left(Sample.with(Sample.SIDE.with(Measure.UPPER_PINCH, 2.0))).notes(),
                "muscle-cover"));
    }

    /** Tebbetts 2001 (from memory): ranges overlap, both shown. */
    @Test
    @Check("C-POC-03")
    void bothDualPlaneTypesThatFitAreShown() {
        List<String> types = Sample.left(Sample.with(Sample.SIDE.with(Measure.AREOLA_TO_FOLD_STRETCHED, 5.8))).working()
                .stream().map(line -> line.quantity()).filter(quantity -> quantity.startsWith("dual plane")).toList();
        assertEquals(List.of("dual plane type I", "dual plane type II"), types);
    }

    /** Steen and others 2018, doi 10.1093/asj/sjx232 (read). */
    @Test
    @Check({"C-REP-01", "C-REP-02"})
    void handAndScanDoNotMix() {
        Readings scan = Sample.SIDE.with(Measure.BASE_WIDTH, new Reading(13.3, "13.3", ReadBy.SURFACE_SCAN, 1));
        Plan plan = Sample.plan(Sample.with(Sample.SIDE.with(Measure.BASE_WIDTH, 12.0), scan));
        assertTrue(Sample.text(plan.notes(), "mixed-reading-methods").contains("1.26 cm wider"));
        Readings fold = Sample.SIDE.with(Measure.NIPPLE_TO_FOLD, new Reading(6.8, "6.8", ReadBy.SURFACE_SCAN, 1));
        Plan other = Sample.plan(Sample.with(fold));
        assertTrue(Sample.text(other.notes(), "mixed-reading-methods").contains("1.22 cm shorter"));
        assertFalse(Sample.says(Sample.plan(Sample.with(Sample.SIDE)).notes(), "mixed-reading-methods"));
    }

    /** Steen and others 2018 (derived): the table over base width 11.3 to 12.7, and a band in the plan. */
    @Test
    @Check("C-REP-03")
    void aVolumeIsShownAsABandOverTheWidthError() {
        SideLimits left = Sample.left(Sample.with(Sample.SIDE.with(Measure.BASE_WIDTH, 12.0)));
        assertTrue(left.working().stream().anyMatch(line ->
                line.expression().equals("base width 11.3 to 12.7: 265 to 310 mL")));
        assertTrue(left.volumeBandMl().orElseThrow().low() < 300 && left.volumeBandMl().orElseThrow().high() > 300);
    }

    /** Fujiwara 2017 (read in a secondary account): strict, through the plan. */
    @Test
    void thePublishedDiscriminantAsksForALiftToBeDiscussed() {
        Readings ptotic = Sample.SIDE.with(Measure.VERTICAL_BASE, 10).with(Measure.VERTICAL_SURFACE, 13.3);
        assertTrue(Sample.says(Sample.left(Sample.with(ptotic)).notes(), "lift-to-discuss"));
        Readings not = Sample.SIDE.with(Measure.VERTICAL_BASE, 10).with(Measure.VERTICAL_SURFACE, 13.0);
        assertFalse(Sample.says(Sample.left(Sample.with(not)).notes(), "lift-to-discuss"));
    }

    @Test
    void gradeTwoAndThreeAskForALiftAndGradeOneDoesNot() {
        for (Ptosis grade : Ptosis.values()) {
            Case of = Sample.with(Sample.SIDE).withSide(Side.LEFT, new Breast(Sample.SIDE, Optional.of(grade)));
            boolean lift = Sample.says(Sample.left(of).notes(), "lift-to-discuss");
            assertEquals(grade == Ptosis.GRADE_II || grade == Ptosis.GRADE_III, lift, grade.key());
        }
    }

    private static Plan aged(double years, Device... devices) {
        return Sample.plan(Sample.with(Sample.SIDE).withPatient(Sample.PATIENT.with(Measure.AGE, years)), devices);
    }

    /** US approval labelling (from memory). */
    @Test
    @Check("C-LIM-01")
    void at21GelIsBelowItsLabelAgeAndSalineIsOffered() {
        Plan plan = aged(21, Sample.gel(300, 11.5, 4.3), Sample.saline(300, 11.5, 4.3));
        assertTrue(Sample.text(plan.notes(), "age-below-label").contains("saline, from 18, may be offered"));
        assertEquals(Verdict.OUTSIDE, plan.candidates().get(0).left().verdict());
        assertTrue(Sample.says(plan.candidates().get(0).left().reasons(), "age-below-label"));
        assertEquals(Verdict.FITS, plan.candidates().get(1).left().verdict());
    }

    /** US approval labelling (from memory): at exactly 18 saline is allowed, at exactly 22 gel. */
    @Test
    @Check("C-LIM-02")
    void at18SalineIsAllowed() {
        Plan plan = aged(18, Sample.saline(300, 11.5, 4.3));
        assertFalse(Sample.says(plan.candidates().get(0).left().reasons(), "age-below-label"));
        assertFalse(Sample.says(aged(22, Sample.gel(300, 11.5, 4.3)).notes(), "age-below-label"));
        assertTrue(Sample.says(aged(17, Sample.saline(300, 11.5, 4.3)).candidates().get(0).left().reasons(),
                "age-below-label"));
    }

    /** US patient decision checklist, 2021 (read in a secondary account). */
    @Test
    @Check({"C-LIM-03", "C-LIM-04", "C-LIM-05"})
    void aContraindicationBlocksAndNothingFits() {
        for (HealthQuestion question : List.of(HealthQuestion.PREGNANT_OR_NURSING, HealthQuestion.ACTIVE_INFECTION,
                HealthQuestion.UNTREATED_BREAST_DISEASE)) {
            Map<HealthQuestion, Boolean> history = new EnumMap<>(HealthQuestion.class);
            history.put(question, true);
            Plan plan = Sample.plan(Sample.with(Sample.SIDE).withHistory(history), Sample.gel(300, 11.5, 4.3));
            assertEquals(1, plan.blocked().size(), question.field());
            Note block = plan.blocked().get(0);
            assertEquals("contraindication", block.code());
            assertTrue(block.text().contains("US patient decision checklist, 2021"));
            assertEquals(Verdict.OUTSIDE, plan.candidates().get(0).left().verdict());
            assertTrue(Sample.says(plan.candidates().get(0).left().reasons(), "contraindication"));
            assertFalse(plan.left().working().isEmpty());
        }
    }
}
