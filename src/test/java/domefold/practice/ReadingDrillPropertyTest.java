package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Side;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ReadingDrillPropertyTest {
    private static final int DRILLS = 600;
    private static final PatientDraw PATIENTS = PatientDraw.from(Drawn.EVIDENCE);

    @Test
    void theChecksFindWhatWasPlantedAndNothingElse() {
        Set<ReadingSlip> met = EnumSet.noneOf(ReadingSlip.class);
        int clean = 0;
        for (int number = 1; number <= DRILLS; number++) {
            ReadingDrill drill = drill(number);
            assertEquals(drill.planted(), SlipCheck.find(drill.shown(), drill.sightings(), Drawn.EVIDENCE).keySet(),
                    "drill " + number);
            drill.planted().forEach(slip -> met.add(slip.slip()));
            clean += drill.planted().isEmpty() ? 1 : 0;
        }
        assertEquals(EnumSet.allOf(ReadingSlip.class), met);
        assertTrue(clean > DRILLS / 8, "some drills are clean, so that finding nothing is an answer");
    }

    @Test
    void namingAllIsAllRightAndLeavingOneOutIsMissed() {
        for (int number = 1; number <= DRILLS; number++) {
            ReadingDrill drill = drill(number);
            assertTrue(drill.check(drill.planted(), Drawn.EVIDENCE).allRight());
            for (Slipped slip : drill.planted()) {
                Set<Slipped> rest = new HashSet<>(drill.planted());
                rest.remove(slip);
                ReadingDrill.Answered answered = drill.check(rest, Drawn.EVIDENCE);
                assertEquals(1, answered.missed().size(), "drill " + number);
                assertTrue(answered.missed().get(0).startsWith(slip.text() + ": "), answered.missed().get(0));
                assertFalse(answered.missed().get(0).contains("no check finds it"), answered.missed().get(0));
            }
        }
    }

    @Test
    void theRightSlipOnTheWrongSideIsNotFound() {
        ReadingDrill drill = numbers().filter(one -> one.planted().stream()
                .anyMatch(slip -> slip.slip() == ReadingSlip.STRETCHED_SHORTER)).findFirst().orElseThrow();
        Slipped planted = drill.planted().stream()
                .filter(slip -> slip.slip() == ReadingSlip.STRETCHED_SHORTER).findFirst().orElseThrow();
        Side other = planted.side().orElseThrow().other();
        ReadingDrill.Answered answered =
                drill.check(Set.of(Slipped.on(other, ReadingSlip.STRETCHED_SHORTER)), Drawn.EVIDENCE);
        assertEquals(Set.of(), answered.found());
        assertEquals(Set.of(Slipped.on(other, ReadingSlip.STRETCHED_SHORTER)), answered.unfounded());
    }

    @Test
    void aDrillIsTheSameHoweverOftenItIsGiven() {
        for (int number = 1; number <= 20; number++) {
            assertEquals(drill(number), ReadingDrill.of(number, Drawn.EVIDENCE));
        }
    }

    private static java.util.stream.Stream<ReadingDrill> numbers() {
        return java.util.stream.IntStream.rangeClosed(1, DRILLS).mapToObj(ReadingDrillPropertyTest::drill);
    }

    private static ReadingDrill drill(int number) {
        return ReadingDrill.of(number, PATIENTS, Drawn.EVIDENCE);
    }
}
