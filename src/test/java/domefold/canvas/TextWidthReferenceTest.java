package domefold.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;

/** Source: the JDK's normaliser (Unicode Standard Annex 15), asked about every character. */
class TextWidthReferenceTest {
    @Test
    void whatIsTakenForComposedIsComposed() {
        for (char c = 0; c < 0xd800; c++) {
            String text = "e" + c + "e";
            assertEquals(Normalizer.normalize(text, Normalizer.Form.NFC), TextWidth.composed(text), text);
        }
    }

    @Test
    void aLetterAndItsAccentAreOneCharacterWhateverStandsBeside() {
        assertEquals("\u00e9\u2013", TextWidth.composed("e\u0301\u2013"));
        assertEquals("\u2013\u00e9", TextWidth.composed("\u2013e\u0301"));
    }
}
