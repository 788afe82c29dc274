package domefold.app;

import domefold.outcome.Numbers;
import domefold.store.Verification;
import java.util.LinkedHashMap;
import java.util.Map;

/** What verifying found, as a map and as text. */
final class RecordsJson {
    private RecordsJson() {}

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
        return out.append(Numbers.count(check.records(), "record", "records")).append(", ")
                .append(Numbers.count(check.files(), "file", "files")).append(", ")
                .append(Numbers.count(check.lines(), "line", "lines")).append(" in the audit logs: ").append(check.sound() ? "nothing was changed" : check.findings().size()
                        + (check.findings().size() == 1 ? " finding" : " findings")).append(".\n").toString();
    }
}
