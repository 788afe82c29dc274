package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The start in small windows and with many unfinished consults. */
class StartScreenTest {
    private static final String WARNING = "This device list is invented";

    private static StartScreen with(int consults) {
        return StartScreen.of(ListLine.SHIPPED, IntStream.range(0, consults).mapToObj(i ->
                new StartScreen.Left("j" + i, "C-2026-" + (100000 + i), 17, "3 Mar 2026 16:2" + i % 10)).toList());
    }

    @ParameterizedTest(name = "{0}x{1}, {2} consults")
    @CsvSource({"60, 18, 5", "60, 18, 0", "60, 18, 12", "80, 24, 12", "80, 24, 40", "160, 48, 60"})
    void theLineInFocusIsAlwaysDrawn(int columns, int rows, int consults) {
        Walk walk = Walk.on(with(consults));
        for (int i = 0; i < consults + 4; i++) {
            Canvas canvas = Frame.of(walk.screen(), columns, rows, Glyphs.UNICODE);
            String picture = canvas.picture();
            String focus = i < consults ? "▸ Continue C-2026-" + (100000 + i)
                    : "▸ " + List.of("New consult", "Practise", "Records", "Leave").get(i - consults);
            assertTrue(picture.contains(focus), focus + "\n" + picture);
            assertTrue(picture.lines().toList().get(canvas.cursorRow()).contains(focus), picture);
            assertTrue(picture.contains(WARNING), picture);
            walk.key(Key.Kind.DOWN);
        }
    }

    @Test
    void aListLongerThanTheWindowSaysHowMuchIsOutOfSight() {
        Walk walk = Walk.on(with(12));
        assertTrue(walk.picture(60, 18).contains("more below"), walk.picture(60, 18));
        assertTrue(walk.key(Key.Kind.END).picture(60, 18).contains("more above"), walk.picture(60, 18));
        assertFalse(walk.picture(60, 18).contains("more below"), walk.picture(60, 18));
    }

    @ParameterizedTest(name = "{0}x{1}, {2} consults")
    @CsvSource({"60, 18, 5", "60, 18, 0", "60, 19, 2", "60, 20, 3", "60, 24, 5", "80, 24, 12", "80, 24, 0"})
    void theCautionStandsWholeOrNotAtAll(int columns, int rows, int consults) {
        StartScreen start = with(consults);
        for (StartScreen screen : List.of(start, new StartScreen(start.list(), start.left(), 0, "The journal could not be read."))) {
            String picture = Walk.on(screen).picture(columns, rows);
            String text = picture.replaceAll("\\s+", " ");
            assertEquals(text.contains("For licensed surgeons."), text.contains("replaces none of it"), picture);
            assertEquals(text.contains("device labelling"), text.contains("Group figures do not foretell one woman's result."), picture);
            assertTrue(text.contains(screen.said()) && picture.contains(WARNING), picture);
            assertFalse(picture.lines().anyMatch(line -> line.endsWith("…")), picture);
        }
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"60, 18", "70, 20", "80, 24", "160, 48"})
    void theCodeAndTheTimeAreReadWhole(int columns, int rows) {
        String picture = Walk.on(with(1)).picture(columns, rows);
        assertTrue(picture.lines().anyMatch(line -> line.contains("Continue C-2026-100000 ") && line.contains("3 Mar 2026 16:20")), picture);
        assertFalse(picture.contains("100000…"), picture);
    }
}
