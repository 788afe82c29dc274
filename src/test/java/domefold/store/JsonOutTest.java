package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
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

    /** A pretty printed value reads the same the first time, where it is written, and after that, where its bytes are. */
    @Test
    void whatStandsInManyPlacesIsWrittenTheSameEachTime() {
        Object first = new Object();
        Object second = new Object();
        JsonOut again = new JsonOut();
        JsonOut each = new JsonOut();
        again.object(() -> again.objects("list", List.of(first, second, first, first), item ->
                again.text("id", "x").again("held", item, () -> held(again, item == first)).number("after", 1)));
        each.object(() -> each.objects("list", List.of(first, second, first, first), item ->
                each.text("id", "x").object("held", () -> held(each, item == first)).number("after", 1)));
        assertEquals(each.text(), again.text());
    }

    private static void held(JsonOut out, boolean one) {
        out.text("words", one ? "\u00b1 \" {one} \uD83D\uDE00" : "two");
        out.objects("list", List.of(1, 2), number -> out.number("number", number));
        out.object("empty", () -> {});
    }
}
