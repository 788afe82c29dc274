package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.advise.Advisor;
import domefold.device.Catalogue;
import domefold.interview.Dossier;
import domefold.interview.Guide;
import domefold.interview.Interview;
import domefold.plan.PlanOptions;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keys and words of the devices room. */
class DevicesScreenTest {
    private static Walk devices() {
        return Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3);
    }

    private static Walk pinned(Walk walk, String ids) {
        ConsultScreen screen = (ConsultScreen) walk.screen();
        return Walk.on(screen.with(screen.interview().answer("pins", ids), screen.shown()));
    }

    private static Walk threeSaline() {
        return pinned(devices(), "saline-smooth-full-240 saline-smooth-full-280 saline-smooth-full-320").key(Key.Kind.F5).key(Key.Kind.F5);
    }

    @Test
    void aMessageGoesWithTheNextKeyThatMoves() {
        for (Key.Kind kind : List.of(Key.Kind.UP, Key.Kind.DOWN, Key.Kind.PAGE_UP, Key.Kind.PAGE_DOWN, Key.Kind.LEFT, Key.Kind.RIGHT,
                Key.Kind.HOME, Key.Kind.END, Key.Kind.F5, Key.Kind.F6, Key.Kind.F7, Key.Kind.F8)) {
            Walk walk = pinned(devices(), "gel-smooth-full-240 gel-smooth-full-270 gel-smooth-full-300 gel-smooth-full-330").key(Key.Kind.F7);
            ConsultScreen screen = (ConsultScreen) walk.screen();
            List<String> pins = screen.interview().dossier().choices().pinned();
            while (pins.contains(DeviceRows.of(screen.interview(), screen.devices()).get(screen.devices().cursor()).device().id())) {
                screen = (ConsultScreen) walk.key(Key.Kind.DOWN).screen();
            }
            walk.key(Key.character(' '));
            assertTrue(walk.picture(80, 24).contains("Four devices stand side by side already"), walk.picture(80, 24));
            walk.key(kind);
            assertFalse(walk.picture(80, 24).contains("Four devices"), kind + "\n" + walk.picture(80, 24));
        }
    }

    @Test
    void anAnswerThatNoConversationShowsIsSaid() {
        Walk volume = Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F2).key(Key.Kind.F3).key(Key.Kind.F3).line("320 330");
        assertTrue(volume.picture(80, 24).contains("Taken: breast volume, LEFT 320 mL   RIGHT 330 mL."), volume.picture(80, 24));
    }

    @Test
    void theHeadingOfTheListStandsWholeInTheNarrowestWindow() {
        String picture = devices().picture(60, 18);
        assertTrue(picture.contains("by her weights"), picture);
    }

    @Test
    void theFillTurnedIsThatOfTheFirstColumnHoweverOftenRightWasPressed() {
        for (int size : new int[] {60, 80, 160}) {
            Walk walk = threeSaline();
            for (int i = 0; i < 4; i++) {
                walk.key(Key.Kind.RIGHT);
                assertTurnsTheFirst(Walk.on(walk.screen()), size);
            }
            String last = firstColumn(walk, size);
            walk.key(Key.Kind.LEFT);
            assertNotEquals(last, firstColumn(walk, size));
            assertTurnsTheFirst(walk, size);
        }
    }

    @Test
    void aCodeThatIsCutKeepsItsSize() {
        assertEquals("saline…extra-full-320", DeviceCode.within("saline-smooth-extra-full-320", 21));
        assertEquals("salin…smooth-extra-full-320", DeviceCode.within("saline-smooth-extra-full-320", 27));
        assertEquals("saline-…extra-full-320", DeviceCode.within("saline-smooth-extra-full-320", 22));
        assertEquals("gel-smooth-full-300", DeviceCode.within("gel-smooth-full-300", 19));
        assertEquals("ABCD…44320", DeviceCode.within("ABCDEFGH12344320", 10));
        assertEquals("A…", DeviceCode.within("ABC", 2));
        String columns = pinned(devices(), "saline-smooth-extra-full-320 saline-smooth-extra-full-360").key(Key.Kind.F5).key(Key.Kind.F5)
                .picture(80, 24);
        assertTrue(columns.lines().anyMatch(line -> line.contains("…smooth-extra-full-320 ") && line.contains("…smooth-extra-full-360")), columns);
    }

    @Test
    void oneDeviceIsOneDevice() {
        Desk desk = Walk.desk();
        Guide guide = desk.guide();
        Catalogue one = new Catalogue("one", "", "", "", true, guide.catalogue().find("saline-smooth-full-280").stream().toList());
        Guide small = new Guide(guide.evidence(), one, guide.topics(), new Advisor(one, guide.evidence(), PlanOptions.DEFAULT), "20260042-9");
        Dossier answered = ((ConsultScreen) devices().screen()).interview().dossier();
        Walk walk = Walk.on(ConsultScreen.of(new Desk(small, desk.today(), false), Interview.begin(small, answered))).key(Key.Kind.F3)
                .key(Key.Kind.F3);
        assertTrue(walk.picture(80, 24).contains(" 1 of 1 device, "), walk.picture(80, 24));
        assertTrue(walk.key(Key.Kind.F7).picture(80, 24).contains(" 1 device, "), walk.picture(80, 24));
    }

    @Test
    void pairsNameBothSidesAlikeAndSayTheWayBack() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY.subList(0, Walk.ORDINARY.size() - 1)).line("310 245").key(Key.Kind.F3).key(Key.Kind.F10);
        for (int columns = 60; columns < 130; columns++) {
            for (int pair = 0; pair < 6; pair++) {
                String names = walk.picture(columns, 24).lines().filter(line -> line.matches(" LEFT  \\S+-.*")).findFirst().orElseThrow();
                assertEquals(names.indexOf(" at ") > 0, names.lastIndexOf(" at ") > columns / 2, names);
                assertTrue(names.matches(" LEFT  .*-\\d{3}( at \\d+ mL)? +RIGHT  .*-\\d{3}( at \\d+ mL)?"), names);
                walk.key(Key.Kind.DOWN);
            }
            walk.key(Key.Kind.HOME);
        }
        List<String> lines = walk.picture(60, 18).lines().toList();
        assertTrue(lines.get(4).endsWith("verdict"), lines.get(4));
        assertEquals(lines.get(4).indexOf("verdict"), lines.get(5).indexOf("fits"));
        assertTrue(lines.get(17).contains("Esc closes"), lines.get(17));
    }

    @Test
    void theWordsThatWorkEverywhereStandInColumns() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY.subList(0, 21)).key(Key.character('?')).key(Key.Kind.END);
        List<String> wide = walk.picture(80, 24).lines().filter(line -> line.contains("12.5 same") || line.contains("left 12.5")
                || line.contains("again 12.6") || line.contains("go base width")).toList();
        assertEquals(4, wide.size());
        assertEquals(1, wide.stream().map(line -> line.replaceFirst("(12.5 same|left 12.5|again 12.6|go base).*", "").length()).distinct().count());
        List<String> narrow = walk.picture(60, 18).lines().toList();
        int at = narrow.indexOf(narrow.stream().filter(line -> line.contains("adds a second reading, averaged")).findFirst().orElseThrow());
        assertEquals("again 12.6 12.9", narrow.get(at + 1).strip());
        assertEquals(narrow.get(at).indexOf("adds"), narrow.get(at + 1).indexOf("again"));
    }

    @Test
    void aPageThatFitsNamesNoKeyToScrollIt() {
        assertFalse(Walk.consult().key(Key.Kind.F4).picture(80, 24).contains("scroll"));
        assertTrue(Walk.consult().key(Key.Kind.F1).picture(80, 24).contains("PgUp PgDn"));
    }

    private static void assertTurnsTheFirst(Walk walk, int columns) {
        String first = firstColumn(walk, columns);
        List<String> said = ((ConsultScreen) walk.key(Key.character('+')).screen()).said();
        assertEquals(first, said.get(0).split(" at ")[0]);
    }

    private static String firstColumn(Walk walk, int columns) {
        String heading = walk.picture(columns, 24).lines().skip(3).findFirst().orElseThrow().strip();
        return heading.split(" +")[1];
    }
}
