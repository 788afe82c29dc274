package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.engine.CaseGate;
import domefold.engine.CrossChecks;
import domefold.engine.Gate;
import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.ReadBy;
import domefold.patient.Side;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PatientDrawPropertyTest {
    private static final int CASES = 1500;
    private static final PatientDraw DRAW = PatientDraw.from(Drawn.EVIDENCE);

    @Test
    void stretchedIsNeverShorterThanResting() {
        forAll((patient, number) -> {
            for (Side side : Side.values()) {
                assertTrue(value(patient.of(), side, Measure.NIPPLE_TO_FOLD_STRETCHED)
                        >= value(patient.of(), side, Measure.NIPPLE_TO_FOLD), patient.of().code());
            }
        });
    }

    @Test
    void basesAndGapFitTheFrontOfTheChest() {
        forAll((patient, number) -> assertTrue(value(patient.of(), Side.LEFT, Measure.BASE_WIDTH)
                + value(patient.of(), Side.RIGHT, Measure.BASE_WIDTH)
                + patient.of().chest().value(Measure.INTERMAMMARY).orElseThrow()
                <= patient.of().patient().value(Measure.THORACIC_PERIMETER).orElseThrow() / 2, patient.of().code()));
    }

    @Test
    void onlyTheThirdLevelHidesSomething() {
        forAll((patient, number) -> assertEquals(patient.level() == 3, !patient.traps().isEmpty()));
    }

    @Test
    void everyTrapIsWhatItSays() {
        Set<Trap> met = EnumSet.noneOf(Trap.class);
        for (int number = 1; number <= CASES; number++) {
            PracticeCase patient = DRAW.of(number, 3);
            met.addAll(patient.traps());
            for (Trap trap : patient.traps()) {
                assertTrue(holds(trap, patient.of()), trap + " in " + patient.of().code());
            }
        }
        assertEquals(EnumSet.allOf(Trap.class), met);
    }

    @Test
    void theFirstLevelIsOrdinary() {
        for (int number = 1; number <= CASES; number++) {
            Case of = DRAW.of(number, 1).of();
            assertTrue(of.history().values().stream().noneMatch(answer -> answer), of.code());
            for (Trap trap : Trap.values()) {
                assertTrue(trap == Trap.WISH_BEYOND_BASE || !holds(trap, of), trap + " in " + of.code());
            }
        }
    }

    @Test
    void aPatientIsTheSameHoweverOftenAndInWhateverOrderSheIsDrawn() {
        for (int number = CASES; number >= 1; number -= 97) {
            for (int level = 1; level <= 3; level++) {
                assertEquals(DRAW.of(number, level), PatientDraw.of(number, level, Drawn.EVIDENCE));
            }
        }
    }

    @Test
    void theEngineTakesEveryPatient() {
        forAll((patient, number) -> {
            assertTrue(CrossChecks.of(patient.of(), Drawn.EVIDENCE).stream().noneMatch(found -> found.refuse()),
                    patient.of().code());
            for (Side side : Side.values()) {
                patient.of().side(side).readings().byMeasure().forEach((measure, reading) -> assertTrue(
                        !Gate.check(measure, reading.value(), Drawn.EVIDENCE).refused(), patient.of().code()));
            }
        });
    }

    @Test
    void aCaseFileHoldsThePatientAsDrawn() {
        for (int number = 1; number <= 60; number++) {
            Case of = DRAW.of(number).of();
            byte[] file = CaseFile.write(of).getBytes(StandardCharsets.UTF_8);
            assertEquals(of, CaseFile.read(file, of.code(), CaseRules.of(Drawn.EVIDENCE,
                    read -> CaseGate.check(read, Drawn.EVIDENCE))), of.code());
        }
    }

    @Test
    void theSurgeonsOwnValuesMakeNoOtherPatient() {
        Constants changed = Drawn.EVIDENCE.constants();
        for (String id : List.of("VOL-10.5", "CON-01", "LIM-02", "PRA-STRETCH-MEAN")) {
            changed = changed.with(id, new Constant.Override(1, LocalDate.of(2026, 3, 4), "to try"));
        }
        for (int number = 1; number <= 30; number++) {
            assertEquals(DRAW.of(number), PatientDraw.of(number, PatientDraw.levelOf(number),
                    Drawn.EVIDENCE.with(changed)));
        }
    }

    @Test
    void numbersAreDifferentPatients() {
        Set<Object> seen = new HashSet<>();
        for (int number = 1; number <= CASES; number++) {
            PracticeCase patient = DRAW.of(number, 1);
            assertTrue(seen.add(patient.of().left().readings()), patient.of().code());
        }
    }

    @Test
    void everyTextSaysThatItIsInvented() {
        forAll((patient, number) -> {
            assertTrue(patient.history().startsWith("Invented"));
            assertTrue(patient.wish().startsWith("Invented"));
        });
    }

    @Test
    void mirroringTwiceGivesThePatientBack() {
        forAll((patient, number) -> assertEquals(patient, patient.mirrored().mirrored()));
    }

    @Test
    void aNumberBelowOneOrALevelThatDoesNotExistIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> DRAW.of(0, 1));
        assertThrows(IllegalArgumentException.class, () -> DRAW.of(1, 4));
    }

    private static boolean holds(Trap trap, Case of) {
        return switch (trap) {
            case AGE_BELOW_LABEL -> of.patient().value(Measure.AGE).orElseThrow() < 22;
            case CONTRAINDICATION -> of.history().get(HealthQuestion.PREGNANT_OR_NURSING)
                    || of.history().get(HealthQuestion.ACTIVE_INFECTION)
                    || of.history().get(HealthQuestion.UNTREATED_BREAST_DISEASE);
            case CONSTRICTED_BASE -> either(of, Measure.BASE_WIDTH, 10.5)
                    || either(of, Measure.NIPPLE_TO_FOLD_STRETCHED, 5);
            case PTOSIS_FOR_LIFT -> of.left().ptosis().orElseThrow().compareTo(Ptosis.GRADE_II) >= 0
                    || of.right().ptosis().orElseThrow().compareTo(Ptosis.GRADE_II) >= 0;
            case WISH_BEYOND_BASE -> of.wishes().sizeWishMl().orElseThrow() > 250
                    + 200 + (Math.min(value(of, Side.LEFT, Measure.BASE_WIDTH),
                            value(of, Side.RIGHT, Measure.BASE_WIDTH)) - 10.5) / 4.5 * 200 - 6;
            case MIXED_METHODS -> readBy(of, Side.LEFT) != readBy(of, Side.RIGHT);
        };
    }

    private static boolean either(Case of, Measure measure, double below) {
        return value(of, Side.LEFT, measure) < below || value(of, Side.RIGHT, measure) < below;
    }

    private static ReadBy readBy(Case of, Side side) {
        return of.side(side).readings().get(Measure.BASE_WIDTH).orElseThrow().readBy();
    }

    private static double value(Case of, Side side, Measure measure) {
        return of.side(side).readings().value(measure).orElseThrow();
    }

    private interface Check {
        void on(PracticeCase patient, int number);
    }

    private static void forAll(Check check) {
        for (int number = 1; number <= CASES; number++) {
            check.on(DRAW.of(number), number);
        }
    }
}
