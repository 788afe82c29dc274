package domefold.screen;

import domefold.canvas.Canvas;
import java.util.List;

/** A screen as a value. */
public interface Screen {
    /** What a key leads to: the next screen and what the shell should do. */
    Step onKey(Key key);

    /** Draws the whole screen; the canvas starts blank. Leaves the last row to the hints. */
    void draw(Canvas canvas);

    /** The keys that work now, most useful first. The hint line, the help page and {@code docs/keys.md} come from here. */
    List<Hint> hints();

    /** What the shell has to tell after carrying out an effect, or after time passed in the world. */
    default Screen onOutcome(Effect.Outcome outcome) {
        return this;
    }

    /**
     * @param next the screen to show, {@code this} where nothing changed
     * @param effect what the shell should do
     */
    record Step(Screen next, Effect effect) {
        public static Step to(Screen next) {
            return new Step(next, Effect.NOTHING);
        }
    }

    /**
     * @param key as a person reads it, for example {@code Ctrl-Z}
     * @param meaning one or two words
     */
    record Hint(String key, String meaning) {}
}
