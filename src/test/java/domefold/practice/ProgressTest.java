package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Constants;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.store.CsvText;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final Constants CONSTANTS = Drawn.EVIDENCE.constants();
    private static final PatientDraw PATIENTS = PatientDraw.from(Drawn.EVIDENCE);
    private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

    @Test
    void scoresAddUpByKindOfDecision() {
        Progress progress = Progress.NONE.with(marking(1, 1, 0.75, 1), DAY).with(marking(4, 1, 0.25, 1), DAY);
        assertEquals(50, progress.byDecision().get(Decision.POCKET).percent());
        assertEquals(100, progress.byDecision().get(Decision.VOLUME).percent());
        assertEquals(List.of(Decision.POCKET), progress.weakSpots(CONSTANTS));
        assertEquals(List.of(Decision.VOLUME), progress.strengths(CONSTANTS));
    }

    @Test
    void oldCasesStopCountingAsWeakSpots() {
        Progress progress = Progress.NONE.with(marking(1, 1, 0, 0), DAY);
        for (int i = 0; i < 10; i++) {
            progress = progress.with(marking(4 + 3 * i, 1, 1, 1), DAY);
        }
        assertEquals(List.of(), progress.weakSpots(CONSTANTS));
        assertTrue(progress.byDecision().get(Decision.POCKET).percent() < 100, "the whole history still holds them");
    }

    @Test
    void theFirstCaseIsTheFirstOrdinaryOne() {
        NextCase next = NextCase.after(Progress.NONE, PATIENTS, CONSTANTS);
        assertEquals(1, next.number());
        assertEquals(1, next.level());
        assertEquals(Optional.empty(), next.towards());
    }

    @Test
    void threeGoodCasesLeadUpAndThreePoorOnesDown() {
        assertEquals(1, NextCase.level(cases(1, 0.8, 2), CONSTANTS));
        assertEquals(2, NextCase.level(cases(1, 0.8, 3), CONSTANTS));
        assertEquals(1, NextCase.level(cases(1, 0.75, 3), CONSTANTS));
        assertEquals(2, NextCase.level(cases(3, 0.25, 3), CONSTANTS));
        assertEquals(3, NextCase.level(cases(3, 1, 3), CONSTANTS));
        assertEquals(1, NextCase.level(cases(1, 0, 3), CONSTANTS));
    }

    @Test
    void theNextCaseExercisesTheWeakestSpotAndIsNew() {
        Progress progress = Progress.NONE;
        List<Integer> given = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            NextCase next = NextCase.after(progress, PATIENTS, CONSTANTS);
            assertFalse(given.contains(next.number()), "case " + next.number() + " was given before");
            given.add(next.number());
            assertEquals(next, NextCase.after(progress, PATIENTS, CONSTANTS));
            if (i > 0) {
                assertEquals(Optional.of(Decision.POCKET), next.towards());
                var of = PATIENTS.of(next.number(), next.level()).of();
                assertTrue(thin(of, Measure.UPPER_PINCH, 2.0) || thin(of, Measure.FOLD_PINCH, 0.5), next.toString());
            }
            progress = progress.with(marking(next.number(), next.level(), 0.25, 1), DAY);
        }
    }

    @Test
    void aMissedTrapIsSetAgain() {
        Mark missed = new Mark(Decision.WARNING, Optional.empty(), Optional.of("constricted-base"), Standing.OUTSIDE,
                "not named", "because", "", Optional.empty(), List.of(), 5, 0);
        Progress progress = Progress.NONE.with(new Marking(3, 3, List.of(missed)), DAY);
        NextCase next = NextCase.after(progress, PATIENTS, CONSTANTS);
        assertTrue(PATIENTS.of(next.number(), next.level()).traps().contains(Trap.CONSTRICTED_BASE), next.toString());
        assertEquals(List.of("constricted-base"), progress.missedWarnings(CONSTANTS));
    }

    @Test
    void theTrainingLogHoldsEveryLineAndSaysPractice() {
        Progress progress = Progress.NONE.with(marking(7, 1, 0.75, 1), DAY);
        assertEquals("kind,session,date,case,level,decision,side,warning,standing,weight,credit\r\n"
                + "practice,1,2026-03-04,7,1,pocket,left,,defensible,2,0.75\r\n"
                + "practice,1,2026-03-04,7,1,volume,,,inside,2,1\r\n", TrainingLog.csv(progress));
    }

    @Test
    void aLogIsReadBackAsItWasAndNoCellNeedsQuotes() {
        Dice dice = new Dice(5);
        Progress progress = Progress.NONE;
        for (int number = 1; number <= 30; number++) {
            progress = progress.with(Fellows.mark(PATIENTS.of(number), Fellows.random(dice)), DAY);
        }
        assertEquals(progress, TrainingLog.read(CsvText.read("log", TrainingLog.csv(progress))));
        for (String line : TrainingLog.csv(progress).split("\r\n")) {
            assertTrue(line.matches("[a-z0-9.-]*(,[a-z0-9.-]*){10}"), line);
        }
    }

    @Test
    void whatIsNoLogIsRefusedByItsLine() {
        String log = TrainingLog.csv(Progress.NONE.with(marking(7, 1, 0.75, 1), DAY));
        for (String wrong : List.of(log.replace("pocket", "pickpocket"), log.replace("2026-03-04", "04/03/2026"),
                log.replace("practice,1", "clinical,1"), log.replace(",7,1,volume", ",8,1,volume"), log.replace("2,0.75", "NaN,0.75"), log.replace("0.75", "7.5"))) {
            Refusal refusal = assertThrows(Refusal.class, () -> TrainingLog.read(CsvText.read("log", wrong)));
            assertTrue(refusal.where().startsWith("log line "), refusal.where());
        }
        assertThrows(Refusal.class, () -> TrainingLog.read(CsvText.read("log", "a,b\r\n1,2\r\n")));
    }

    private static Progress cases(int level, double credit, int cases) {
        Progress progress = Progress.NONE;
        for (int i = 0; i < cases; i++) {
            progress = progress.with(marking(level + 3 * i, level, credit, credit), DAY);
        }
        return progress;
    }

    private static boolean thin(domefold.patient.Case of, Measure measure, double cm) {
        return of.left().readings().value(measure).orElseThrow() < cm
                || of.right().readings().value(measure).orElseThrow() < cm;
    }

    private static Marking marking(int number, int level, double pocketCredit, double volumeCredit) {
        return new Marking(number, level, List.of(
                new Mark(Decision.POCKET, Optional.of(Side.LEFT), Optional.empty(), Standing.DEFENSIBLE, "said", "because",
                        "", Optional.empty(), List.of(), 2, pocketCredit),
                new Mark(Decision.VOLUME, Optional.empty(), Optional.empty(), Standing.INSIDE, "said", "because", "",
                        Optional.empty(), List.of(), 2, volumeCredit)));
    }
}
