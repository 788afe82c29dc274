package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is a line of a table, and what is refused before a wrong number is read from it. */
class CsvLinesTest {
    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        CsvLines.of(text).forEach(line -> lines.add(line.number() + (line.comment() ? " #" : " ") + line.cells()));
        return lines;
    }

    @Test
    void everyLineEndIsOneAndEmptyLinesArePassedOver() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            assertEquals(List.of("1 #[ note]", "3 [a, b]", "4 [1, ]", "5 [x" + end + "y, \"]", "7 [ ]"),
                    lines(String.join(end, "# note", "", "a,b", "1,", "\"x", "y\",\"\"\"\"", " ")));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,b\n\"12\"3,4", "a,b\n\"12\" ,4", "a\n\"1\"\"2\"3"})
    void textBehindAClosingQuoteIsRefusedAndNotJoined(String text) {
        Refusal refusal = assertThrows(Refusal.class, () -> CatalogueFile.sheet(text, "list.csv"));
        assertEquals("not-csv", refusal.code());
    }

    @Test
    void aLineOfMillionsOfCellsIsRefusedBeforeTheyAreKept() {
        assertEquals("not-csv", assertThrows(Refusal.class, () -> CatalogueFile.sheet(",".repeat(4_000_000), "list.csv")).code());
        assertEquals(1, lines(",".repeat(16_000)).size());
    }
}
