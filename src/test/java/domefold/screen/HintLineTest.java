package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import java.util.List;
import org.junit.jupiter.api.Test;

class HintLineTest {
    private static final List<Screen.Hint> HINTS = List.of(new Screen.Hint("Enter", "accept"),
            new Screen.Hint("Ctrl-Z", "undo"), new Screen.Hint("F1", "help"));

    @Test
    void hintsThatDoNotFitAreLeftOutWholeAndTheWayToAllKeysLast() {
        assertEquals("\n Enter accept   Ctrl-Z undo   F1 help\n", at(40));
        assertEquals("\n Enter accept   F1 help\n", at(37));
        assertEquals("\n F1 help\n", at(20));
        assertEquals("\n\n", at(5));
        assertEquals("\n\n", at(0));
    }

    @Test
    void aSmallWindowSaysWhatItNeeds() {
        Canvas canvas = Frame.of(new Blank(), 20, 5, Glyphs.UNICODE);
        assertEquals("The window is\n20 x 5; Domefold\nneeds at least\n60 x 18.\n",
                canvas.picture().strip() + "\n");
        Frame.of(new Blank(), 1, 1, Glyphs.ASCII);
        Frame.of(new Blank(), 0, 0, Glyphs.ASCII);
    }

    @Test
    void theSmallestWindowShowsTheScreen() {
        assertEquals(17, Frame.of(new Blank(), 60, 18, Glyphs.UNICODE).picture().indexOf("Enter") - 1);
    }

    private static String at(int columns) {
        Canvas canvas = new Canvas(columns, 2, Glyphs.UNICODE);
        HintLine.draw(canvas, HINTS);
        return canvas.picture();
    }

    private record Blank() implements Screen {
        @Override
        public Step onKey(Key key) {
            return Step.to(this);
        }

        @Override
        public void draw(Canvas canvas) {}

        @Override
        public List<Hint> hints() {
            return HINTS;
        }
    }
}
