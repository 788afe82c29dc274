package domefold.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Evidence;
import domefold.outcome.Refusal;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CrossChecksTest {
    private static final Evidence SHIPPED = EvidenceFiles.shipped();

    private static Case bases(double left, double right, double chest, double gap) {
        return Case.empty("K-1", LocalDate.of(2026, 3, 4))
                .withPatient(Readings.NONE.with(Measure.THORACIC_PERIMETER, chest))
                .withChest(Readings.NONE.with(Measure.INTERMAMMARY, gap))
                .withSide(Side.LEFT, new Breast(Readings.NONE.with(Measure.BASE_WIDTH, left), Optional.empty()))
                .withSide(Side.RIGHT, new Breast(Readings.NONE.with(Measure.BASE_WIDTH, right), Optional.empty()));
    }

    private static List<String> codes(Case of) {
        return CrossChecks.of(of, SHIPPED).stream().map(finding -> finding.note().code()).toList();
    }

    @Test
    void basesAndGapMustGoIntoTheFrontOfTheChest() {
        assertEquals(List.of(), codes(bases(16, 16, 70, 3)));
        assertEquals(List.of("bases-wider-than-chest"), codes(bases(16, 16, 70, 3.1)));
        assertFalse(CrossChecks.of(bases(16, 16, 70, 3.1), SHIPPED).get(0).refuse());
    }

    /** Three error SDs of a difference of two base widths are 3 x 0.49 x sqrt 2 = 2.08 cm. */
    @Test
    void sidesFurtherApartThanTheReadingErrorAreAskedAgain() {
        assertEquals(List.of(), codes(bases(11.0, 13.0, 90, 2)));
        assertEquals(List.of("sides-differ"), codes(bases(11.0, 13.1, 90, 2)));
        Reading twice = new Reading(13.0, "13.0", ReadBy.HAND, 2);
        assertTrue(CrossChecks.sidesApart(Measure.BASE_WIDTH, twice, new Reading(11.4, "11.4", ReadBy.HAND, 2),
                SHIPPED.constants()));
        assertFalse(CrossChecks.sidesApart(Measure.BASE_WIDTH, Reading.byHand(13.0), Reading.byHand(11.4),
                SHIPPED.constants()));
    }

    @Test
    void twoMethodsOnOneMeasureAreNamedWithTheirOffset() {
        Reading hand = Reading.byHand(12.0);
        Reading scan = new Reading(13.3, "13.3", ReadBy.SURFACE_SCAN, 1);
        assertTrue(CrossChecks.mixedMethods(Measure.BASE_WIDTH, hand, scan, SHIPPED.constants()).orElseThrow().text()
                .startsWith("base width 12.0 cm (hand) and 13.3 cm (surface-scan): "));
        assertTrue(CrossChecks.mixedMethods(Measure.BASE_WIDTH, hand, hand, SHIPPED.constants()).isEmpty());
    }

    @Test
    void aReadingNoBodyHasRefusesTheCaseByItsField() {
        Refusal refusal = assertThrows(Refusal.class, () -> CaseGate.check(bases(125, 12, 90, 2), SHIPPED));
        assertEquals("left.baseWidthCm", refusal.where());
        assertEquals("left base width 125 cm is outside 7 to 20 cm; did you mean 12.5?", refusal.getMessage());
        Readings swapped = Readings.NONE.with(Measure.HEIGHT, 58).with(Measure.WEIGHT, 166);
        assertEquals("height-weight-exchanged", assertThrows(Refusal.class,
                () -> CaseGate.check(bases(12, 12, 90, 2).withPatient(swapped), SHIPPED)).code());
        assertEquals("height 58 cm is outside 120 to 220 cm; did you mean 147.3 (the value reads like inches)? Or were height"
                + " and weight exchanged?", Gate.check(Measure.HEIGHT, 58, SHIPPED).note().orElseThrow().text());
        assertEquals("height 1.66 cm is outside 120 to 220 cm; did you mean 166 (the value reads like metres)?",
                Gate.check(Measure.HEIGHT, 1.66, SHIPPED).note().orElseThrow().text());
        Readings exchanged = Readings.NONE.with(Measure.HEIGHT, 121).with(Measure.WEIGHT, 190);
        Case of = bases(12, 12, 90, 2).withPatient(exchanged);
        assertEquals("bmi-out-of-range", assertThrows(Refusal.class, () -> CaseGate.check(of, SHIPPED)).code());
    }
}
