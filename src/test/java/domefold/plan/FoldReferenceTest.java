package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.engine.DimensionMinusCapacity;
import domefold.engine.DomeArc;
import domefold.engine.FoldLowering;
import domefold.engine.FoldTarget;
import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Fold targets and lowering from checks.csv. LOW-01: Tebbetts and Adams 2005 (read); fold rows: the same (from memory);
 * reading error: Steen and others 2018, doi 10.1093/asj/sjx232 (derived); double contour: general teaching (from memory).
 */
class FoldReferenceTest {
    private static final Constants CONSTANTS = Sample.SHIPPED.constants();
    private static final FoldTarget ROWS = FoldTarget.of(CONSTANTS);

    @Check({"C-FLD-01", "C-FLD-02", "C-FLD-07", "C-FLD-08"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C-FLD-01, 8.0, 8.0, 0,   none",
        "C-FLD-02, 8.5, 7.0, 1.5, none",
        "C-FLD-07, 8.0, 7.2, 0.8, none",
        "C-FLD-08, 9.0, 6.9, 2.1, double-contour",
    })
    void theFoldGoesDownByTheDifference(String id, double target, double stretched, double lowering, String remark) {
        double cm = FoldLowering.cm(target, stretched, CONSTANTS);
        assertEquals(lowering, cm, 0.001, id);
        assertEquals(remark, FoldLowering.remark(cm, CONSTANTS).map(note -> note.code()).orElse("none"), id);
    }

    /** A lowering of exactly 0.7 is still within reading error, whatever binary fractions make of 8.0 - 7.3. */
    @Test
    void theBoundaryOfReadingErrorBelongsToIt() {
        assertEquals("fold-within-reading-error",
                FoldLowering.remark(FoldLowering.cm(8.0, 7.3, CONSTANTS), CONSTANTS).orElseThrow().code());
        assertTrue(FoldLowering.remark(FoldLowering.cm(9.0, 7.0, CONSTANTS), CONSTANTS).isEmpty());
    }

    @Check({"C-FLD-03", "C-FLD-06"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C-FLD-03, 300, 7.5, 8.0, 0.5",
        "C-FLD-06, 350, 8.2, 8.5, 0.3",
    })
    void aSmallLoweringIsSaidToBeWithinReadingError(String id, double ml, double stretched, double target, double cm) {
        assertEquals(target, ROWS.cm(ml), 0.001, id);
        double lowering = FoldLowering.cm(ROWS.cm(ml), stretched, CONSTANTS);
        assertEquals(cm, lowering, 0.001, id);
        assertEquals("fold-within-reading-error", FoldLowering.remark(lowering, CONSTANTS).orElseThrow().code(), id);
    }

    @Test
    @Check({"C-FLD-04", "C-FLD-05"})
    void theRowsAreTheRows() {
        assertEquals(7.0, ROWS.cm(200), 0);
        assertEquals(7.5, ROWS.cm(275), 0);
    }

    /** Above the last row the last row is only a bound. */
    @Test
    @Check("C-FLD-09")
    void outsideTheRowsTheEndRowIsOnlyABound() {
        assertFalse(ROWS.inRows(401));
        // 15.0 wide with a loose skin: 400 + 30 is outside the rows
        SideLimits left = Sample.left(Sample.volume(15.0, 3.5, 7.0, 50));
        assertTrue(left.foldTargetCm().isEmpty());
        String text = Sample.text(left.notes(), "fold-outside-rows");
        assertTrue(text.contains("9.5 cm is only a lower bound"), text);
        assertTrue(ROWS.working(401).expression().contains("only a bound"));
    }

    /** Half surface arcs of domes of that size, cap to half-ellipsoid (FLD-ARC rows, derived). */
    @ParameterizedTest
    @CsvSource({"11, 3.5, 7.2", "11.5, 4, 7.7", "12, 4, 7.9", "12.5, 4.5, 8.5"})
    void theArcOfAHalfEllipsoidIsTheUpperEndOfThePublishedRange(double diameter, double projection, double high) {
        double ml = Math.PI / 6 * diameter * diameter * projection;
        assertEquals(high, DomeArc.cm(diameter, projection, ml), 0.05);
    }

    /** Dome meridians by two independent integrators: 6.55, 2.45, n 1.5 and 1, 0.6, n 2; nine digits. */
    @Test
    void theArcAgreesWithTheReferenceShells() {
        assertEquals(7.277837638, DomeArc.superellipseCm(6.55, 2.45, 1.5), 2e-8);
        assertEquals(1.276349943, DomeArc.superellipseCm(1, 0.6, 2), 1e-9);
    }

    /** I - C is read (Mallucci and Branford 2016); I = height / 2 + projection is from memory. */
    @Test
    @Check({"C-DIM-01", "C-DIM-02"})
    void dimensionMinusCapacityIsComputedAndMarkedUnconfirmed() {
        assertEquals(1.75, DimensionMinusCapacity.excessCm(9.75, 8.0, CONSTANTS), 0.01);
        assertEquals(0, DimensionMinusCapacity.excessCm(8.0, 9.0, CONSTANTS), 0);
        assertEquals(9.75, DimensionMinusCapacity.dimensionCm(11.5, 4.0, CONSTANTS), 0.01);
        assertTrue(DimensionMinusCapacity.working(11.5, 4.0, CONSTANTS).quantity().contains("unconfirmed"));
        assertTrue(DimensionMinusCapacity.working(11.5, 4.0, CONSTANTS).status().isMemory());
    }

    @Test
    @Check("C-DIM-03")
    void dimensionMinusCapacityDrivesNothing() {
        Case of = Sample.with(Sample.SIDE);
        Plan plan = Sample.plan(of, Sample.gel(300, 11.9, 4.1), Sample.gel(450, 12.2, 5.5));
        assertTrue(plan.left().foldByMethod().stream().anyMatch(
                method -> method.name().equals("dimension minus capacity") && !method.drives()));
        Evidence changed = Sample.SHIPPED.with(CONSTANTS.with("DIM-03",
                new Constant.Override(5, LocalDate.of(2026, 3, 4), "to see whether it drives anything")));
        Plan other = Planner.plan(of, Sample.list(Sample.gel(300, 11.9, 4.1), Sample.gel(450, 12.2, 5.5)), changed,
                PlanOptions.DEFAULT);
        assertEquals(plan.left().foldTargetCm(), other.left().foldTargetCm());
        assertEquals(plan.candidates(), other.candidates());
    }
}
