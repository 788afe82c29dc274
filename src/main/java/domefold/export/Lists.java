package domefold.export;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.patient.Side;
import domefold.records.DueList;
import domefold.records.RecordHeader;
import domefold.sheet.Order;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lists for a spreadsheet and for other programs: found records, who is due, what to order. One table each; CSV and JSON are
 * made from it, so they cannot disagree. A column that holds a number names its unit; sides are columns called left and right.
 */
public final class Lists {
    private final String format;
    private final List<String> columns;
    private final List<List<Object>> rows;

    private Lists(String format, List<String> columns, List<List<Object>> rows) {
        this.format = format;
        this.columns = columns;
        this.rows = rows;
    }

    /** Records as found. */
    public static Lists ofRecords(List<RecordHeader> headers) {
        List<String> columns = new ArrayList<>(List.of("case", "version", "status", "stands", "date", "author", "practice"));
        for (Side side : Side.values()) {
            columns.addAll(List.of(side.key() + "Device", side.key() + "Fill", side.key() + "ListedMl", side.key() + "FillMl"));
        }
        columns.addAll(List.of("schedule", "savedAt"));
        List<List<Object>> rows = new ArrayList<>();
        for (RecordHeader header : headers) {
            List<Object> row = new ArrayList<>(List.of(header.id(), header.version(), header.status().key(), header.stands(),
                    header.day().toString(), header.author(), header.practice()));
            for (Side side : Side.values()) {
                Optional<RecordHeader.SideLine> line = header.side(side);
                row.add(line.<Object>map(RecordHeader.SideLine::deviceId).orElse(""));
                row.add(line.<Object>map(found -> found.fill().key()).orElse(""));
                row.add(line.<Object>map(found -> exact(found.nominalMl())).orElse(""));
                row.add(line.<Object>map(found -> exact(found.fillMl())).orElse(""));
            }
            row.add(header.exams().map(RecordHeader.ExamDates::scheduleId).orElse(""));
            row.add(header.savedAt().toString());
            rows.add(row);
        }
        return new Lists("domefold-records/1", columns, rows);
    }

    /** Who is due. */
    public static Lists ofDue(List<DueList.Due> due) {
        List<String> columns = List.of("case", "date", "exam", "schedule", "issuer", "from", "to", "how", "bookedFor",
                "operationEntered", "reason");
        List<List<Object>> rows = new ArrayList<>();
        for (DueList.Due one : due) {
            rows.add(List.of(one.header().id(), one.header().day().toString(), one.exam(), one.scheduleId(), one.issuer(),
                    one.firstDay().toString(), one.lastDay().toString(), one.how().words(),
                    one.booked().map(Object::toString).orElse(""), one.implanted(), one.reason()));
        }
        return new Lists("domefold-due/1", columns, rows);
    }

    /** What to order, line by line. */
    public static Lists ofOrders(List<Order> orders) {
        List<String> columns = List.of("case", "version", "side", "purpose", "orderCode", "line", "fill", "surface", "profile",
                "listedMl", "fillMl", "widthCm", "projectionCm", "quantity", "list", "listDate", "listSha256", "recordSha256");
        List<List<Object>> rows = new ArrayList<>();
        for (Order order : orders) {
            for (Order.Line line : order.lines()) {
                rows.add(List.of(order.mark().id(), order.mark().version(), line.side().name(), line.purpose().words(),
                        line.device().id(), line.device().line(), line.device().fill().key(), line.device().surface().key(),
                        line.device().profile().key(), exact(line.device().nominalMl()), exact(line.fillMl()),
                        exact(line.device().widthCm()), exact(line.device().projectionCm()), line.quantity(),
                        order.versions().catalogueName(), order.versions().catalogueDate(),
                        order.versions().catalogueSha256(), order.mark().sha256()));
            }
        }
        return new Lists("domefold-order/1", columns, rows);
    }

    public String asCsv() {
        return CsvLines.of(columns, rows.stream().map(row -> row.stream().map(Lists::cell).toList()).toList());
    }

    /** One object with the list's format and its rows as objects; an empty cell is left out. */
    public String asJson() {
        ObjectNode list = JsonNodeFactory.withExactBigDecimals(true).objectNode().put("format", format);
        ArrayNode items = list.putArray("rows");
        for (List<Object> row : rows) {
            ObjectNode item = items.addObject();
            for (int i = 0; i < columns.size(); i++) {
                put(item, columns.get(i), row.get(i));
            }
        }
        try {
            return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT)
                    .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN).writeValueAsString(list) + "\n";
        } catch (JsonProcessingException inMemory) {
            throw new IllegalStateException("a list could not be written", inMemory);
        }
    }

    private static void put(ObjectNode item, String column, Object value) {
        if (value instanceof BigDecimal number) {
            item.put(column, number);
        } else if (value instanceof Integer number) {
            item.put(column, number);
        } else if (value instanceof Boolean yes) {
            item.put(column, yes);
        } else if (!value.equals("")) {
            item.put(column, value.toString());
        }
    }

    private static String cell(Object value) {
        return value instanceof BigDecimal number ? number.toPlainString()
                : value instanceof Boolean yes ? yes ? "yes" : "no" : value.toString();
    }

    /** As entered, without a trailing nought. */
    private static BigDecimal exact(double value) {
        BigDecimal number = BigDecimal.valueOf(value).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }
}
