package domefold.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.engine.Gate;
import domefold.evidence.Evidence;
import domefold.interview.Interview;
import domefold.interview.Reply;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.screen.ConsultScreen;
import domefold.screen.Walk;
import domefold.store.EvidenceFiles;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A number typed in one unit is never silently read in another. */
class UnitsConfusedTest {
    private static final Evidence SHIPPED = EvidenceFiles.shipped();

    private static Reply typed(String question, String line) {
        Interview fresh = ((ConsultScreen) Walk.consult().lines(List.of("", "31")).screen()).interview();
        return fresh.go(question).interview().say(line);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"12.5 12.5|12.5", "12,5 12,5|12.5", "12.5cm 12.5 cm|12.5", "125mm 125 mm|12.5",
        "4.92in 4.92 in|12.4968", "0.125m 0.125 m|12.5"})
    void aLengthIsReadInTheUnitItWasTypedIn(String line, double cm) {
        Reply reply = typed("base width", line);
        assertEquals(Reply.Kind.TAKEN, reply.kind(), reply.lines().toString());
        assertEquals(cm, reply.interview().dossier().patientCase().side(Side.RIGHT).readings()
                .value(Measure.BASE_WIDTH).orElseThrow(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"125 125|did you mean 12.5", "4.92 4.92|inches", "12.5kg 12.5|no unit",
        "1.25 1.25|12.5", "12.5.1 12|is no number"})
    void withoutAUnitWhatReadsLikeAnotherIsRefusedAndTheLikelySlipNamed(String line, String says) {
        Reply reply = typed("base width", line);
        assertEquals(Reply.Kind.REFUSED, reply.kind());
        assertTrue(reply.lines().get(0).contains(says), reply.lines().toString());
    }

    /**
     * The lowest usual value of a small reading, in millimetres, is a possible value in centimetres; for these the control
     * is the unit beside every question and every answer, and the query outside the usual.
     */
    @Test
    void onlySmallReadingsOverlapTheirOwnMillimetresAndTheirMiddleIsAlwaysQuestioned() {
        List<Measure> lengths = Arrays.stream(Measure.values()).filter(measure -> measure.unit().equals("cm")).toList();
        List<Measure> overlapping = lengths.stream().filter(measure -> 10 * Gate.of(measure, SHIPPED).usual().low()
                <= Gate.of(measure, SHIPPED).possible().high()).toList();
        assertEquals(List.of(Measure.INTERMAMMARY, Measure.UPPER_PINCH, Measure.FOLD_PINCH, Measure.MEDIAL_PINCH,
                Measure.LATERAL_PINCH, Measure.BREAST_PROJECTION), overlapping);
        for (Measure measure : lengths) {
            double middle = (Gate.of(measure, SHIPPED).usual().low() + Gate.of(measure, SHIPPED).usual().high()) / 2;
            assertTrue(Gate.check(measure, 10 * middle, SHIPPED).note().isPresent(), measure + " at " + 10 * middle + " cm");
        }
    }
}
