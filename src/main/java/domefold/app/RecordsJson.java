package domefold.app;

import domefold.records.DueList;
import domefold.records.RecordHeader;
import domefold.sheet.Order;
import domefold.store.Verification;
import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Answers of the records commands as maps. */
final class RecordsJson {
    private RecordsJson() {}

    static Map<String, Object> found(List<RecordHeader> found) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-records/1");
        json.put("records", found.stream().map(RecordsJson::header).toList());
        return json;
    }

    private static Map<String, Object> header(RecordHeader header) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", header.id());
        json.put("version", header.version());
        json.put("status", header.status().key());
        json.put("stands", header.stands());
        json.put("practice", header.practice());
        json.put("date", header.day());
        json.put("author", header.author());
        json.put("left", header.left().map(RecordsJson::side));
        json.put("right", header.right().map(RecordsJson::side));
        return json;
    }

    private static Map<String, Object> side(RecordHeader.SideLine line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("device", line.deviceId());
        json.put("fill", line.fill().key());
        json.put("nominalMl", line.nominalMl());
        json.put("fillMl", line.fillMl());
        return json;
    }

    static Map<String, Object> due(YearMonth month, List<DueList.Due> due) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-due/1");
        json.put("month", month);
        json.put("due", due.stream().map(one -> {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("id", one.header().id());
            row.put("exam", one.exam());
            row.put("schedule", one.scheduleId());
            row.put("firstDay", one.firstDay());
            row.put("lastDay", one.lastDay());
            row.put("booked", one.booked());
            row.put("text", one.reason());
            return row;
        }).toList());
        return json;
    }

    static Map<String, Object> order(String id, Order order) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-order/1");
        json.put("id", id);
        json.put("version", order.mark().version());
        json.put("sha256", order.mark().sha256());
        json.put("inventedCatalogue", order.catalogueInvented());
        json.put("lines", order.lines().stream().map(line -> {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("side", line.side().key());
            row.put("purpose", line.purpose().words());
            row.put("device", line.device().id());
            row.put("nominalMl", line.device().nominalMl());
            row.put("fillMl", line.fillMl());
            row.put("quantity", line.quantity());
            return row;
        }).toList());
        return json;
    }

    static Map<String, Object> verify(Verification check) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-verification/1");
        json.put("records", check.records());
        json.put("files", check.files());
        json.put("lines", check.lines());
        json.put("sound", check.sound());
        json.put("heads", check.heads());
        json.put("findings", check.findings().stream().map(finding -> Map.of("code", finding.code(), "where", finding.where(),
                "text", finding.text())).toList());
        return json;
    }

    /** One line a finding, a count at the end. */
    static String verifyText(Verification check) {
        StringBuilder out = new StringBuilder();
        check.findings().forEach(finding -> out.append(finding.text()).append(" [").append(finding.code()).append("]\n"));
        return out.append(check.records()).append(" records, ").append(check.files()).append(" files, ").append(check.lines())
                .append(" lines in the audit logs: ").append(check.sound() ? "nothing was changed" : check.findings().size()
                        + (check.findings().size() == 1 ? " finding" : " findings")).append(".\n").toString();
    }
}
