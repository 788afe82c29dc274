package domefold.terminal;

import domefold.canvas.Glyphs;
import domefold.screen.Frame;
import domefold.screen.Key;
import domefold.screen.Screen;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What a key costs from its arrival to the bytes of its frame: the screen's answer, the drawing, and the changed cells; no
 * tty, no link.
 */
public final class FrameTimer {
    private final CountingTerminal terminal;
    private final Glass glass;
    private final int columns;
    private final int rows;
    private Screen screen;

    /**
     * @param medianMs middle of the times
     * @param slowestMs longest of the times
     * @param bytesPerKey mean bytes sent
     * @param writesPerKey mean writes
     */
    public record Cost(double medianMs, double slowestMs, double bytesPerKey, double writesPerKey) {}

    public FrameTimer(Screen first, int columns, int rows) throws IOException {
        this.terminal = CountingTerminal.of(columns, rows);
        this.glass = new Glass(terminal, new Palette(ColourMode.INDEXED_256, Ground.DARK));
        this.columns = columns;
        this.rows = rows;
        this.screen = first;
        glass.enter();
        paint();
    }

    /** Presses the keys one after the other; effects are not carried out. */
    public Cost press(List<Key> keys) throws IOException {
        long bytes = terminal.bytes();
        long writes = terminal.writes();
        List<Double> timesMs = new ArrayList<>();
        for (Key key : keys) {
            long start = System.nanoTime();
            screen = screen.onKey(key).next();
            paint();
            timesMs.add((System.nanoTime() - start) / 1e6);
        }
        Collections.sort(timesMs);
        double count = Math.max(1, keys.size());
        return new Cost(timesMs.isEmpty() ? 0 : timesMs.get(timesMs.size() / 2),
                timesMs.isEmpty() ? 0 : timesMs.get(timesMs.size() - 1), (terminal.bytes() - bytes) / count,
                (terminal.writes() - writes) / count);
    }

    public Screen screen() {
        return screen;
    }

    private void paint() throws IOException {
        glass.show(Frame.of(screen, columns, rows, Glyphs.UNICODE));
    }
}
