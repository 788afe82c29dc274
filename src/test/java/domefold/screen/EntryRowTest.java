package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The line typed in a room that shows more than it asks: longer than the window, its end and its cursor stay in sight. */
class EntryRowTest {
    private static final String LONG = "x".repeat(90) + " the end";

    private static Walk room(String room) {
        Walk walk = Walk.consult().lines(Walk.ORDINARY);
        return switch (room) {
            case "Limits" -> walk;
            case "Devices" -> walk.key(Key.Kind.F3);
            case "Record" -> walk.key(Key.Kind.F3).key(Key.Kind.F3).key(Key.Kind.F3);
            default -> walk.line("if base width 12.9 13.0");
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"Limits", "Devices", "Record", "what if"})
    void aLongLineScrollsSideways(String room) {
        for (int columns : new int[] {60, 80, 120}) {
            ConsultScreen idleScreen = (ConsultScreen) room(room).screen();
            Canvas before = Frame.of(idleScreen, columns, 24, Glyphs.UNICODE);
            Canvas canvas = Frame.of(idleScreen.withEntry(EntryLine.of(LONG)), columns, 24, Glyphs.UNICODE);
            int row = Chrome.entryRow(canvas);
            String line = canvas.picture().lines().toList().get(row);
            assertEquals(row, canvas.cursorRow(), canvas.picture());
            assertTrue(canvas.cursorColumn() < columns - 1 && line.substring(0, canvas.cursorColumn()).endsWith("the end"), canvas.picture());
            String idle = before.picture().lines().toList().get(row);
            int count = idle.indexOf("rows ");
            if (count >= 0) {
                assertTrue(line.endsWith("  " + idle.substring(count)), canvas.picture());
            }
            Canvas home = Frame.of(idleScreen.withEntry(new EntryLine(LONG, 0)), columns, 24, Glyphs.UNICODE);
            assertEquals(3, home.cursorColumn(), home.picture());
        }
    }
}
