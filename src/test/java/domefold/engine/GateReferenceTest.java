package domefold.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.evidence.Evidence;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.store.EvidenceFiles;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class GateReferenceTest {
    private static final Evidence SHIPPED = EvidenceFiles.shipped();

    /** checks.csv: engineering gate, not published (proposal). */
    @Test
    @Check("C-INP-02")
    void aBaseWidthOf16IsQueriedAndOneOf20Point5Refused() {
        assertTrue(Gate.check(Measure.BASE_WIDTH, 16.0, SHIPPED).queried());
        assertTrue(Gate.check(Measure.BASE_WIDTH, 20.5, SHIPPED).refused());
        assertEquals(ReadingCheck.Answer.ACCEPTED, Gate.check(Measure.BASE_WIDTH, 15.5, SHIPPED).answer());
        assertTrue(Gate.check(Measure.BASE_WIDTH, 20.0, SHIPPED).queried());
    }

    /** checks.csv: second reading asked within 0.5 of the threshold at 3 (proposal). */
    @Test
    @Check("C-REP-04")
    void aSkinStretchOf2Point6IsReadTwice() {
        assertTrue(SecondReading.advise(Measure.SKIN_STRETCH, Reading.byHand(2.6), SHIPPED.constants()).isPresent());
        assertTrue(SecondReading.advise(Measure.SKIN_STRETCH, Reading.byHand(5.5), SHIPPED.constants()).isEmpty());
        Reading twice = new Reading(2.6, "2.6", ReadBy.HAND, 2);
        assertTrue(SecondReading.advise(Measure.SKIN_STRETCH, twice, SHIPPED.constants()).isEmpty());
    }

    @Test
    void aLostDecimalPointIsNamed() {
        String text = Gate.check(Measure.BASE_WIDTH, 125, SHIPPED).note().orElseThrow().text();
        assertEquals("base width 125 cm is outside 7 to 20 cm; did you mean 12.5?", text);
    }

    @Test
    void inchesAreNamedAndNotConverted() {
        ReadingCheck check = Gate.check(Measure.BASE_WIDTH, 4.9, SHIPPED);
        assertTrue(check.refused());
        assertTrue(check.note().orElseThrow().text().contains("did you mean 12.4 (the value reads like inches)?"));
    }

    @Test
    void everyMeasureHasAGate() {
        for (Measure measure : Measure.values()) {
            Gate gate = Gate.of(measure, SHIPPED);
            assertTrue(gate.possible().low() <= gate.usual().low() && gate.usual().high() <= gate.possible().high(),
                    measure.field());
        }
    }

    @Test
    void aNumberIsReadWithCommaAndUnit() {
        assertEquals(12.5, TypedReading.value(Measure.BASE_WIDTH, "12,5"));
        assertEquals(12.4, TypedReading.value(Measure.BASE_WIDTH, "124 mm"));
        assertEquals(12.4, TypedReading.value(Measure.BASE_WIDTH, " 12.4cm "));
        assertEquals(300, TypedReading.value(Measure.BREAST_VOLUME, "300 cc"));
        Refusal refusal = Assertions.assertThrows(Refusal.class,
                () -> TypedReading.value(Measure.BASE_WIDTH, "12.5 kg"));
        assertEquals("wrong-unit", refusal.code());
        Assertions.assertThrows(Refusal.class, () -> TypedReading.value(Measure.BASE_WIDTH, "wide"));
    }
}
