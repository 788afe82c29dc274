package domefold.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Side;
import domefold.screen.ConsultScreen;
import domefold.screen.Walk;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is settled, by the words a surgeon types. */
class SettleTest {
    private static Interview ready() {
        return ((ConsultScreen) Walk.consult().lines(Walk.ORDINARY).screen()).interview()
                .answer("pins", "gel-smooth-moderate-plus-300 gel-smooth-full-300 saline-smooth-full-280");
    }

    private static double lowering(Interview interview, Side side) {
        return interview.dossier().choices().on(side).foldLoweringCm().orElseThrow();
    }

    @Test
    void aPinnedNumberOrACodeNamesADevice_andASideIsNeverAssumed() {
        Interview interview = ready().answer("device", "1 2");
        assertEquals("gel-smooth-moderate-plus-300", interview.dossier().choices().on(Side.LEFT).deviceId().orElseThrow());
        assertEquals("gel-smooth-full-300", interview.dossier().choices().on(Side.RIGHT).deviceId().orElseThrow());
        assertEquals(Reply.Kind.REFUSED, ready().go("device").interview().goTo(Room.SETTLE).go("device").interview().say("1").kind());
        assertEquals(Reply.Kind.REFUSED, ready().go("device").interview().say("same 1").kind());
    }

    @Test
    void theFoldFollowsTheSchoolChosen() {
        Interview interview = ready().answer("device", "1 same");
        assertEquals(0.4, lowering(interview.answer("lowering", "rows same"), Side.LEFT), 1e-9);
        assertEquals(0.4, lowering(interview.answer("lowering", "target keep"), Side.LEFT), 1e-9);
        assertEquals(0.0, lowering(interview.answer("lowering", "target keep"), Side.RIGHT));
        double arc = lowering(interview.answer("lowering", "arc same"), Side.LEFT);
        assertTrue(arc > 0.4 && arc < 1.5, "the dome arc asks for more here: " + arc);
        assertEquals(1.2, lowering(interview.answer("lowering", "1.2 0,8"), Side.LEFT), 1e-9);
    }

    @Test
    void onlyASalineDeviceIsAskedForItsFill_andTheLabelIsHeldUp() {
        Interview gel = ready().answer("device", "1 same");
        assertTrue(gel.question("fill").pointless(gel.dossier(), gel.guide()));
        Interview saline = ready().answer("device", "3 same");
        Interview over = saline.answer("fill", "330 300");
        List<Exchange> said = over.exchanges();
        assertEquals("fill-over-label", said.get(said.size() - 1).remarks().get(0).code());
        assertEquals(300, over.dossier().choices().on(Side.RIGHT).fillMl().orElseThrow());
    }

    @Test
    void aDeviceOutsideTheLimitsAsksForAReason() {
        Interview outside = ready().answer("device", "gel-smooth-moderate-600 same");
        assertTrue(!outside.question("reason").pointless(outside.dossier(), outside.guide()));
        assertTrue(!outside.complete());
        assertTrue(outside.answer("reason", "her wish, discussed twice").complete());
    }

    @Test
    void sayingThatNothingWasTalkedOverIsAnAnswer() {
        Interview none = ready().answer("discussed", "none");
        assertTrue(none.openIn(Room.SETTLE).stream().noneMatch(question -> question.id().equals("discussed")));
        assertTrue(none.dossier().choices().discussed().isEmpty());
    }

    @Test
    void topicsAreNumbersOrAllBut() {
        int all = ready().guide().topics().size();
        assertEquals(all, ready().answer("discussed", "all").dossier().choices().discussed().size());
        assertEquals(all - 2, ready().answer("discussed", "all but 3 4").dossier().choices().discussed().size());
        assertEquals(2, ready().answer("discussed", "1 2").dossier().choices().discussed().size());
    }
}
