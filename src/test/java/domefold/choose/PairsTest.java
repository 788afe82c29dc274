package domefold.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.engine.AsymmetryClass;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Side;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import domefold.Check;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PairsTest {
    private static Device device(String id, Fill fill, Profile profile, double ml, double widthCm, double projectionCm) {
        return new Device(id, "invented", fill, Surface.SMOOTH, profile, ml,
                fill == Fill.SALINE ? Optional.of(new Band(ml, ml + 30)) : Optional.empty(), widthCm, widthCm, projectionCm);
    }

    private static boolean says(DevicePair pair, String code) {
        return pair.notes().stream().map(Note::code).anyMatch(code::equals);
    }

    private static NaturalDifference difference(Case of) {
        return NaturalDifference.of(of, Invented.CONSTANTS);
    }

    /** The check's own sizes, held against the totals of the pair found. */
    @Test
    @Check({"C-ASY-01"})
    void aLargerRightBreastTakesTheSmallerDeviceAndTheTotalsAreEven() {
        Readings side = Invented.SIDE.with(Measure.BASE_WIDTH, 13.0).with(Measure.NIPPLE_TO_FOLD_STRETCHED, 8.2);
        Plan plan = Invented.plan(Invented.of(side.with(Measure.BREAST_VOLUME, 300), side.with(Measure.BREAST_VOLUME, 350)),
                Invented.list(List.of(device("g300", Fill.GEL, Profile.MODERATE, 300, 12.2, 4.0),
                        device("g350", Fill.GEL, Profile.FULL, 350, 12.0, 4.8))));
        DevicePair first = plan.pairs().get(0);
        assertEquals("g350", first.leftId());
        assertEquals("g300", first.rightId());
        assertEquals(0, first.volumeGapMl().orElseThrow());
        assertTrue(first.text().contains("300 + 350 = 650 mL left, 350 + 300 = 650 mL right"), first.text());
        assertTrue(says(first, "pair-width") && says(first, "pair-profile") && says(first, "pair-projection"), first.text());
        assertTrue(says(first, "pair-ages"), first.text());
    }

    @Test
    void salineIsFilledToTheMillilitreWithinItsLabelAndNoFurtherAboveNominalThanNeeded() {
        Plan plan = Invented.plan(Invented.withVolumes(300, 347), Invented.list(List.of(
                device("s300", Fill.SALINE, Profile.MODERATE, 300, 11.6, 4.3),
                device("s330", Fill.SALINE, Profile.MODERATE, 330, 11.9, 4.5))));
        DevicePair first = plan.pairs().get(0);
        assertEquals("s330", first.leftId());
        assertEquals(347, first.leftFillMl());
        assertEquals(300, first.rightFillMl());
        assertEquals(0, first.volumeGapMl().orElseThrow());
    }

    @Test
    void aDifferenceThatIsNotSeenIsNotChasedAndStaysInTheGap() {
        Plan plan = Invented.plan(Invented.withVolumes(320, 300));
        assertFalse(difference(plan.of()).chased());
        assertFalse(plan.pairs().isEmpty());
        for (DevicePair pair : plan.pairs()) {
            assertEquals(pair.leftId(), pair.rightId());
            assertEquals(pair.leftFillMl(), pair.rightFillMl());
            assertEquals(20, pair.volumeGapMl().orElseThrow());
            assertTrue(says(pair, "difference-not-seen") && !says(pair, "pair-ages"), pair.text());
        }
    }

    @Test
    void aDifferenceThatIsNotKnownLeavesTheGapOpenAndSaysSo() {
        Plan plan = Invented.plan(Invented.of(Invented.SIDE, Invented.SIDE));
        assertFalse(plan.pairs().isEmpty());
        for (DevicePair pair : plan.pairs()) {
            assertEquals(pair.leftId(), pair.rightId());
            assertEquals(OptionalDouble.empty(), pair.volumeGapMl());
            assertTrue(says(pair, "difference-unknown"), pair.text());
        }
    }

    @Test
    void aVolumeOnOneSideOnlyOrByAnotherMethodIsNeverSetAgainstTheOther() {
        Readings entered = Invented.SIDE.with(Measure.BREAST_VOLUME, 300);
        Readings scanned = Invented.SIDE.with(Measure.BREAST_VOLUME, new Reading(390, "390", ReadBy.SURFACE_SCAN, 1));
        assertEquals(NaturalDifference.Basis.UNKNOWN, difference(Invented.of(entered, Invented.SIDE)).basis());
        NaturalDifference mixed = difference(Invented.of(entered, scanned));
        assertEquals(NaturalDifference.Basis.UNKNOWN, mixed.basis());
        assertEquals("difference-methods-mixed", mixed.notes().get(0).code());
        assertEquals(NaturalDifference.Basis.UNKNOWN, difference(Invented.of(entered, cone(4, 9.5, 10, 7))).basis());
    }

    private static Readings cone(double projection, double medial, double lateral, double inferior) {
        return Invented.SIDE.with(Measure.BREAST_PROJECTION, projection).with(Measure.MEDIAL_RADIUS, medial)
                .with(Measure.LATERAL_RADIUS, lateral).with(Measure.INFERIOR_RADIUS, inferior);
    }

    /** Volumes of C-BVF-01 and C-BVF-02; the error SD is 0.117 sqrt(377.0^2 + 197.9^2), worked by hand. */
    @Test
    void measuredRadiiGiveTheDifferenceWithItsError() {
        NaturalDifference measured = difference(Invented.of(cone(4, 9.5, 10, 7), cone(3, 9, 9, 6)));
        assertEquals(NaturalDifference.Basis.MEASURED, measured.basis());
        assertEquals(179.1, measured.differenceMl().orElseThrow(), 0.1);
        assertEquals(49.8, measured.sdMl().orElseThrow(), 0.1);
        assertTrue(measured.chased());
        assertEquals(AsymmetryClass.DIFFERENT, measured.kind(Invented.CONSTANTS).orElseThrow());
        assertTrue(measured.notes().get(0).text().contains("from memory"), measured.notes().get(0).text());
    }

    /** Projections of 4.0 and 3.75 cm: 377 and 335 mL, 42 mL apart, with an error SD of 59 mL. */
    @Test
    void aMeasuredDifferenceBelowItsOwnErrorIsNotChased() {
        NaturalDifference measured = difference(Invented.of(cone(4, 9.5, 10, 7), cone(3.75, 9.5, 10, 7)));
        assertEquals(AsymmetryClass.DISCUSS, measured.kind(Invented.CONSTANTS).orElseThrow());
        assertFalse(measured.chased());
        assertEquals("difference-not-measured", measured.notes().get(1).code());
        assertTrue(difference(Invented.withVolumes(377, 335)).chased(), "an entered one of that size is");
    }

    @Test
    void aPairThatFitsComesBeforeATightOneThatLeavesLess() {
        Plan plan = Invented.plan(Invented.withVolumes(300, 400));
        boolean tightLeavesLess = false;
        for (Fill fill : Fill.values()) {
            List<DevicePair> pairs = Pairs.of(plan.of(), plan.left(), plan.right(), plan.candidates(), 400, Invented.CONSTANTS).stream()
                    .filter(p -> p.leftId().startsWith(fill.key() + "-smooth")).toList();
            boolean tight = false;
            double fits = Double.MAX_VALUE;
            for (DevicePair pair : pairs) {
                tight |= pair.verdict() == Verdict.TIGHT;
                assertTrue(!tight || pair.verdict() == Verdict.TIGHT, "a fitting pair after a tight one");
                double gap = Math.abs(pair.volumeGapMl().orElseThrow());
                fits = tight ? fits : Math.min(fits, gap);
                tightLeavesLess |= tight && gap < fits;
            }
        }
        assertTrue(tightLeavesLess, "the case shows nothing");
    }

    @Test
    void withoutABaseWidthThereAreNoPairs() {
        assertEquals(List.of(), Invented.plan(Invented.withVolumes(300, 400).withSide(Side.LEFT,
                domefold.patient.Breast.UNSEEN)).pairs());
    }
}
