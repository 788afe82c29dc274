package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
        assertEquals("saline-smooth…full-320", DeviceCode.within("saline-smooth-extra-full-320", 22));
        assertEquals("gel-smooth-full-300", DeviceCode.within("gel-smooth-full-300", 19));
        assertEquals("ABCD…44320", DeviceCode.within("ABCDEFGH12344320", 10));
        assertEquals("A…", DeviceCode.within("ABC", 2));
        String columns = pinned(devices(), "saline-smooth-extra-full-320 saline-smooth-extra-full-360").key(Key.Kind.F5).key(Key.Kind.F5)
                .picture(80, 24);
        assertTrue(columns.lines().anyMatch(line -> line.contains("-320 ") && line.contains("-360") && line.contains("…")), columns);
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
