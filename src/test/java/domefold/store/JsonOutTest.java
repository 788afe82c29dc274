package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class JsonOutTest {
    private static JsonOut holding(String text) {
        JsonOut out = new JsonOut(false);
        return out.object(() -> out.text("note", text));
    }

    @Test
    void aCharacterBeyondTheFirstPlaneStaysOneCharacter() {
        assertEquals("{\"note\":\"\uD83D\uDE00\"}\n", holding("\uD83D\uDE00").text());
    }

    @Test
    void halfACharacterBecomesAQuestionMark() {
        assertEquals("{\"note\":\"a?b\"}\n", holding("a\uD800b").text());
        assertEquals("{\"note\":\"?\"}\n", holding("\uDC00").text());
    }

    @Test
    void theBytesAreTheTextInUtf8() {
        String text = "12 ± 1 – \u001b\"\\";
        assertArrayEquals(holding(text).text().getBytes(StandardCharsets.UTF_8), holding(text).bytes());
    }
}
