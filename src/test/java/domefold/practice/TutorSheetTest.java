package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.plan.PlanOptions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TutorSheetTest {
    private static final PlanOptions OPTIONS = PlanOptions.DEFAULT;
    private static final PatientDraw PATIENTS = PatientDraw.from(Drawn.EVIDENCE);

    @Test
    void theReferenceStaysInsideTheLimitsItIsMarkedBy() {
        Catalogue list = thinned();
        for (int number = 1; number <= 45; number++) {
            TutorSheet sheet = TutorSheet.of(PATIENTS.of(number), list, Drawn.EVIDENCE, OPTIONS);
            String where = "case " + number;
            assertEquals(sheet.flags().keySet(), sheet.reference().warnings(), where);
            assertTrue(sheet.marking().marks().stream().noneMatch(mark -> mark.standing() == Standing.OUTSIDE), where
                    + " " + sheet.marking().lost());
            assertTrue(sheet.marking().percent() > 80, where);
        }
    }

    @Test
    void aBlockedCaseIsDeclinedAndTheSheetSaysWhy() {
        PracticeCase blocked = blocked();
        TutorSheet sheet = TutorSheet.of(blocked, thinned(), Drawn.EVIDENCE, OPTIONS);
        assertTrue(sheet.reference().declined());
        assertTrue(sheet.flags().containsKey("contraindication"));
        assertEquals(100, sheet.marking().percent());
    }

    @Test
    void aTutorsOwnCaseWithFewReadingsIsMarkedWhereItCanBe() {
        Breast bare = new Breast(Readings.NONE.with(Measure.BASE_WIDTH, 12.5), Optional.empty());
        Case own = Case.empty("TUTOR-1", LocalDate.of(2026, 3, 4)).withPatient(Readings.NONE.with(Measure.AGE, 30))
                .withSide(Side.LEFT, bare).withSide(Side.RIGHT, bare);
        PracticeCase practice = new PracticeCase(1, 1, own, "a tutor's own case", "as wished", List.of(), Set.of());
        TutorSheet sheet = TutorSheet.of(practice, thinned(), Drawn.EVIDENCE, OPTIONS);
        assertTrue(sheet.marking().marks().stream().anyMatch(mark -> mark.decision() == Decision.POCKET
                && mark.standing() == Standing.UNMARKED), "no pinch, no mark for the pocket");
        assertTrue(sheet.marking().marks().stream().anyMatch(mark -> mark.decision() == Decision.VOLUME
                && mark.standing() == Standing.INSIDE));
    }

    @Test
    void theSheetOfANumberIsTheSameHoweverOftenItIsAskedFor() {
        assertEquals(TutorSheet.of(6, 3, thinned(), Drawn.EVIDENCE, OPTIONS),
                TutorSheet.of(6, 3, thinned(), Drawn.EVIDENCE, OPTIONS));
    }

    private static PracticeCase blocked() {
        for (int number = 3;; number += 3) {
            PracticeCase practice = PATIENTS.of(number);
            if (practice.traps().contains(Trap.CONTRAINDICATION)) {
                return practice;
            }
        }
    }

    /** Every third device, for speed. */
    private static Catalogue thinned() {
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < Fellows.LIST.devices().size(); i += 3) {
            devices.add(Fellows.LIST.devices().get(i));
        }
        return Fellows.with(devices);
    }
}
