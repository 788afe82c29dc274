package domefold.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import de.siegmar.fastcsv.reader.CsvReader;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvLinesTest {
    /** RFC 4180, section 2: rules 1, 5, 6 and 7 with its own cells. */
    @Test
    void writesTheStandardsExamples() {
        assertEquals("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
                CsvLines.of(List.of("aaa", "bbb", "ccc"), List.of(List.of("zzz", "yyy", "xxx"))));
        assertEquals("h,i,j\r\naaa,\"b\r\nbb\",ccc\r\n",
                CsvLines.of(List.of("h", "i", "j"), List.of(List.of("aaa", "b\r\nbb", "ccc"))));
        assertEquals("h,i,j\r\naaa,\"b\"\"bb\",ccc\r\n",
                CsvLines.of(List.of("h", "i", "j"), List.of(List.of("aaa", "b\"bb", "ccc"))));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '"', value = {"=1+2,'=1+2", "+SUM(A1),'+SUM(A1)", "-2+3,'-2+3", "@x,'@x", "-0.4,-0.4", "+0.2,+0.2", "12.5,12.5", "a=b,a=b"})
    void aCellThatASpreadsheetWouldComputeIsMadeText(String cell, String written) {
        assertEquals("h\r\n" + written + "\r\n", CsvLines.of(List.of("h"), List.of(List.of(cell))));
    }

    @Test
    void anIndependentReaderFindsTheCellsAgain() {
        Random random = new Random(4180);
        String alphabet = "ab ,\"\r\n;é–'";
        for (int round = 0; round < 500; round++) {
            List<String> cells = new java.util.ArrayList<>();
            for (int i = 0; i < 4; i++) {
                StringBuilder cell = new StringBuilder("x");
                for (int j = random.nextInt(9); j > 0; j--) {
                    cell.append(alphabet.charAt(random.nextInt(alphabet.length())));
                }
                cells.add(cell.toString());
            }
            String text = CsvLines.of(List.of("a", "b", "c", "d"), List.of(cells));
            List<String> read = CsvReader.builder().ofCsvRecord(text).stream().skip(1).findFirst().orElseThrow().getFields();
            assertEquals(cells, read, "seed 4180, round " + round);
        }
    }

    @Test
    void aRowOfAnotherLengthIsADefect() {
        assertThrows(IllegalArgumentException.class, () -> CsvLines.of(List.of("a", "b"), List.of(List.of("1"))));
    }
}
