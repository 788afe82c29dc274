package domefold.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import domefold.records.DueList;
import domefold.records.RecordHeader;
import domefold.sheet.Order;
import domefold.sheet.SampleRecords;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class ListsTest {
    private static final List<RecordHeader> HEADERS = List.of(RecordHeader.of(SampleRecords.signed(), List.of()));

    @Test
    void eachListReadsBackAlikeFromCsvAndFromJson() throws JsonProcessingException {
        for (Lists list : List.of(Lists.ofRecords(HEADERS), Lists.ofDue(DueList.of(HEADERS, YearMonth.of(2031, 3))),
                Lists.ofOrders(List.of(Order.of(SampleRecords.signed(), SampleRecords.SHA))))) {
            List<NamedCsvRecord> lines = CsvReader.builder().ofNamedCsvRecord(list.asCsv()).stream().toList();
            JsonNode rows = new ObjectMapper().readTree(list.asJson()).path("rows");
            assertFalse(lines.isEmpty());
            assertEquals(lines.size(), rows.size());
            for (int i = 0; i < lines.size(); i++) {
                for (String column : lines.get(i).getHeader()) {
                    String json = rows.get(i).path(column).asText();
                    assertEquals(lines.get(i).getField(column), json.equals("true") ? "yes" : json.equals("false") ? "no" : json,
                            column);
                }
            }
        }
    }

    @Test
    void anOrderLineNamesItsSideInWordsAndTheListItComesFrom() {
        String[] lines = Lists.ofOrders(List.of(Order.of(SampleRecords.signed(), SampleRecords.SHA))).asCsv().split("\r\n");
        assertTrue(lines[1].startsWith("K-2041,1,LEFT,settled,GEL-M-290,Round M,gel,smooth,moderate-plus,290,290,11,4.1,1,"
                + "Invented ladder,2026-01-05," + "ab".repeat(32)), lines[1]);
        assertTrue(lines[4].startsWith("K-2041,1,RIGHT,settled,GEL-M-330"), lines[4]);
    }

    @Test
    void anEmptyListKeepsItsHeader() {
        assertTrue(Lists.ofDue(List.of()).asCsv().startsWith("case,date,exam,"));
        assertTrue(Lists.ofDue(List.of()).asJson().contains("\"rows\" : [ ]"));
    }

    @Test
    void theDueListNamesTheScheduleAndWhyWithoutAnybodysName() {
        String csv = Lists.ofDue(DueList.of(HEADERS, YearMonth.of(2033, 1))).asCsv();
        assertTrue(csv.contains("US-2020") && csv.contains("overdue"), csv);
        assertFalse(csv.contains("Ngũgĩ"));
    }
}
