package domefold.practice;

import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import java.util.ArrayList;
import java.util.List;

/** The other views on a decision, as the rules table states them, each with its source. */
final class Held {
    private Held() {}

    /** "Both are held: ..." over the rows of those ids. */
    static String by(Evidence evidence, String... ruleIds) {
        List<String> views = new ArrayList<>();
        for (String id : ruleIds) {
            views.add(view(evidence, id));
        }
        return "Views differ and are held side by side: " + String.join("; ", views);
    }

    private static String view(Evidence evidence, String id) {
        for (Table.Row row : evidence.table("sizing-rules").rows()) {
            if (row.text("rule_id").equals(id)) {
                Status status = Status.of(row.text("status"));
                if (status == Status.MEMORY_LOW || row.text("note").contains("DO NOT USE")) {
                    throw new IllegalArgumentException("rule " + id + " is marked DO NOT USE");
                }
                String words = row.text("source").equals(status.words()) ? status.words()
                        : row.text("source") + ", " + status.words();
                return row.text("condition") + ": " + row.text("result") + unit(row.text("unit")) + " (" + id + ": "
                        + words + ")";
            }
        }
        throw new IllegalArgumentException("no rule " + id);
    }

    private static String unit(String unit) {
        return unit.equals("cm") || unit.equals("%") ? " " + unit : "";
    }
}
