package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;

/** A whole window's picture: the screen and its hints, or the sentence for a window too small. */
public final class Frame {
    private Frame() {}

    public static Canvas of(Screen screen, int columns, int rows, Glyphs glyphs) {
        Canvas canvas = new Canvas(columns, rows, glyphs);
        if (SmallWindow.isTooSmall(columns, rows)) {
            SmallWindow.draw(canvas);
        } else {
            screen.draw(canvas);
            HintLine.draw(canvas, screen.hints());
        }
        return canvas;
    }
}
