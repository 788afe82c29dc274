package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A real exchange of height and weight in open data: the data set Davis of the R package carData (Fox and Weisberg,
 * after C. Davis, self-reported and measured heights and weights), row 12: weight 166 kg, height 57 cm, reported weight
 * 56 kg, reported height 163 cm.
 */
class SlipCheckReferenceTest {
    private static final Readings ROW_12 = Readings.NONE.with(Measure.WEIGHT, 166).with(Measure.HEIGHT, 57);
    private static final Readings ROW_12_AS_REPORTED =
            Readings.NONE.with(Measure.WEIGHT, 56).with(Measure.HEIGHT, 163);

    @Test
    void theExchangedRowOfOpenDataIsCaught() {
        Case of = Case.empty("P-DAVIS", LocalDate.of(2026, 1, 5)).withPatient(ROW_12);
        assertEquals(Set.of(Slipped.whole(ReadingSlip.HEIGHT_WEIGHT_EXCHANGED)),
                SlipCheck.find(of, List.of(), Drawn.EVIDENCE).keySet());
        String text = SlipCheck.heightAndWeight(ROW_12, Drawn.EVIDENCE).orElseThrow();
        assertTrue(text.contains("57 cm") && text.contains("166 kg"), text);
    }

    @Test
    void theRowAsReportedPasses() {
        assertTrue(SlipCheck.heightAndWeight(ROW_12_AS_REPORTED, Drawn.EVIDENCE).isEmpty());
    }

    @Test
    void theRowPutRightPasses() {
        Readings right = Readings.NONE.with(Measure.WEIGHT, 57).with(Measure.HEIGHT, 166);
        assertTrue(SlipCheck.heightAndWeight(right, Drawn.EVIDENCE).isEmpty());
    }
}
