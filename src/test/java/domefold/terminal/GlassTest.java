package domefold.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import domefold.screen.Key;
import domefold.screen.Screen;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class GlassTest {
    /** Longest a key may take to a painted frame at 160 x 48. */
    private static final double LONGEST_MS = 30;

    @Test
    void aKeyCostsOneWriteOfItsChanges() throws IOException {
        FrameTimer timer = new FrameTimer(KeyBoardScreen.EMPTY, 160, 48);
        FrameTimer.Cost cost = timer.press(Collections.nCopies(40, Key.character('a')));
        assertEquals(1, cost.writesPerKey());
        assertTrue(cost.bytesPerKey() < 120, cost.toString());
    }

    @Test
    void aFrameInWhichEveryCellChangesIsPaintedInTime() throws IOException {
        FrameTimer timer = new FrameTimer(new Changing(0), 160, 48);
        timer.press(Collections.nCopies(100, Key.character('a')));
        FrameTimer.Cost cost = timer.press(Collections.nCopies(100, Key.character('a')));
        assertTrue(cost.medianMs() < LONGEST_MS, cost.toString());
        System.out.println("every cell of 160 x 48 changed: " + cost);
    }

    @Test
    void anUnchangedFrameSendsNoCells() throws IOException {
        CountingTerminal terminal = CountingTerminal.of(160, 48);
        Glass glass = new Glass(terminal, new Palette(ColourMode.RGB, Ground.DARK));
        glass.enter();
        Canvas canvas = new Canvas(160, 48, Glyphs.UNICODE);
        canvas.text(3, 3, "12.4 cm · µ é ⣿", Role.BODY);
        glass.show(canvas);
        long before = terminal.bytes();
        glass.show(canvas);
        assertTrue(terminal.bytes() - before < 24, "sent " + (terminal.bytes() - before));
    }

    @Test
    void afterLeavingNothingIsPainted() throws IOException {
        CountingTerminal terminal = CountingTerminal.of(80, 24);
        Glass glass = new Glass(terminal, new Palette(ColourMode.RGB, Ground.DARK));
        glass.enter();
        glass.leave();
        long before = terminal.bytes();
        glass.show(new Canvas(80, 24, Glyphs.UNICODE));
        glass.leave();
        assertEquals(before, terminal.bytes());
    }

    /** Every cell differs from frame to frame. */
    private record Changing(int frame) implements Screen {
        @Override
        public Step onKey(Key key) {
            return Step.to(new Changing(frame + 1));
        }

        @Override
        public void draw(Canvas canvas) {
            for (int row = 0; row < canvas.rows(); row++) {
                canvas.fill(0, row, canvas.columns(), 'a' + (frame + row) % 20, Role.values()[(frame + row) % 15]);
            }
        }

        @Override
        public List<Hint> hints() {
            return List.of();
        }
    }
}
