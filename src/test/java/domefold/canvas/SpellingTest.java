package domefold.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpellingTest {
    @Test
    void asciiSpellsWhatItCannotShow() {
        assertEquals("265-330 mL, -0.3 cm, 11.0 +- 0.6", Glyphs.ASCII.spell("265–330 mL, −0.3 cm, 11.0 ± 0.6"));
        assertEquals("nee, naive, Zoe >= 1", Glyphs.ASCII.spell("née, naïve, Zoë ≥ 1"));
        assertEquals("?", Glyphs.ASCII.spell("日"));
    }

    @Test
    void unicodeIsLeftAlone() {
        assertEquals("11.0 ± 0.6", Glyphs.UNICODE.spell("11.0 ± 0.6"));
    }

    @Test
    void widthsAndLinesAreThoseOfTheSpelling() {
        Canvas canvas = new Canvas(12, 2, Glyphs.ASCII);
        assertEquals(11, canvas.width("11.0 ± 0.6"));
        assertEquals(List.of("11.0 +-", "0.6"), canvas.wrap("11.0 ± 0.6", 10));
        canvas.textRight(12, 0, "11.0 ± 0.6", Role.BODY);
        assertEquals(" 11.0 +- 0.6\n\n", canvas.picture());
    }
}
