package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Side;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class MarkingPropertyTest {
    private static final long SEED = 20260304L;
    private static final PatientDraw PATIENTS = PatientDraw.from(Drawn.EVIDENCE);

    /** A mark without its sentences, which name a side. */
    private record Bare(Decision decision, Optional<Side> side, Optional<String> code, Standing standing, double weight,
            double credit, int lines) implements Comparable<Bare> {
        static Bare of(Mark mark, boolean exchanged) {
            return new Bare(mark.decision(), exchanged ? mark.side().map(Side::other) : mark.side(), mark.code(),
                    mark.standing(), mark.weight(), mark.credit(), mark.working().size());
        }

        @Override
        public int compareTo(Bare other) {
            return toString().compareTo(other.toString());
        }
    }

    @Test
    void swappingTheSidesSwapsTheMarksAndNothingElse() {
        Dice dice = new Dice(SEED);
        for (int number = 1; number <= 150; number++) {
            PracticeCase practice = PATIENTS.of(number);
            FellowPlan fellow = Fellows.random(dice);
            Marking one = Fellows.mark(practice, fellow);
            Marking other = Fellows.mark(practice.mirrored(), fellow.mirrored());
            String where = "seed " + SEED + ", case " + number;
            assertEquals(bare(one, false), bare(other, true), where);
            assertEquals(one.points(), other.points(), where);
            assertEquals(one.outOf(), other.outOf(), where);
        }
    }

    @Test
    void everyMarkGivesItsReasonAndEveryReadingItsError() {
        Dice dice = new Dice(SEED);
        for (int number = 1; number <= 150; number++) {
            for (Mark mark : Fellows.mark(PATIENTS.of(number), Fellows.random(dice)).marks()) {
                String where = "case " + number + " " + mark;
                assertFalse(mark.decidedBy().isBlank() || mark.said().isBlank(), where);
                assertEquals(mark.standing() == Standing.UNMARKED, mark.weight() == 0, where);
                boolean measured = List.of(Decision.WIDTH_CEILING, Decision.VOLUME, Decision.POCKET, Decision.FOLD)
                        .contains(mark.decision());
                if (measured && mark.standing() != Standing.UNMARKED) {
                    assertFalse(mark.readingError().isBlank() || mark.working().isEmpty()
                            || mark.bothHeld().isEmpty(), where);
                }
            }
        }
    }

    @Test
    void aMissedBlockWeighsMost() {
        int blocked = 0;
        Dice dice = new Dice(SEED);
        for (int number = 3; number <= 300; number += 3) {
            PracticeCase practice = PATIENTS.of(number);
            if (!practice.traps().contains(Trap.CONTRAINDICATION)) {
                continue;
            }
            blocked++;
            FellowPlan fellow = Fellows.random(dice);
            FellowPlan blind = new FellowPlan(false, fellow.left(), fellow.right(), fellow.route(), fellow.funnel(),
                    fellow.incisionCm(), fellow.schedule(), new TreeSet<>(), fellow.reason());
            List<Mark> lost = Fellows.mark(practice, blind).lost();
            assertEquals(Decision.PROCEED, first(lost, 0).decision());
            assertEquals(Optional.of("contraindication"), first(lost, 1).code());
            double rest = lost.stream().skip(2).mapToDouble(Mark::weight).max().orElse(0);
            assertTrue(rest < first(lost, 0).weight() && rest < first(lost, 1).weight());
        }
        assertTrue(blocked > 5);
    }

    @Test
    void decliningWhatIsBlockedIsInsideAndDecliningWithoutCauseIsOutside() {
        for (int number = 1; number <= 120; number++) {
            PracticeCase practice = PATIENTS.of(number);
            FellowPlan declined = FellowPlan.declining(new TreeSet<>(), "not now");
            Mark mark = Fellows.mark(practice, declined).marks().stream()
                    .filter(one -> one.decision() == Decision.PROCEED).findFirst().orElseThrow();
            if (practice.traps().contains(Trap.CONTRAINDICATION)) {
                assertEquals(Standing.INSIDE, mark.standing());
            } else if (practice.level() == 1) {
                assertEquals(Standing.OUTSIDE, mark.standing());
            }
        }
    }

    @Test
    void everyTrapIsFlaggedByTheEngineOrByPractice() {
        for (int number = 3; number <= 600; number += 3) {
            PracticeCase practice = PATIENTS.of(number);
            FellowPlan nothing = FellowPlan.declining(new TreeSet<>(), "");
            var flags = Flags.of(Fellows.plan(practice, nothing), Drawn.EVIDENCE.constants());
            for (Trap trap : practice.traps()) {
                assertTrue(flags.containsKey(trap.code()), trap + " in case " + number + ": " + flags.keySet());
            }
        }
    }

    private static Mark first(List<Mark> marks, int index) {
        return marks.stream().sorted(java.util.Comparator.comparingDouble((Mark mark) -> -mark.weight())
                .thenComparing(Mark::decision)).toList().get(index);
    }

    private static TreeSet<Bare> bare(Marking marking, boolean exchanged) {
        TreeSet<Bare> bare = new TreeSet<>();
        marking.marks().forEach(mark -> bare.add(Bare.of(mark, exchanged)));
        return bare;
    }
}
