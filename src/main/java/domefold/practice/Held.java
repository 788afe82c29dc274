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
                String condition = row.text("condition").equals("always") ? "" : plain(row.text("condition")) + ": ";
                return condition + measured(plain(row.text("result")), row.text("unit")) + " (" + id + ": " + words + ")";
            }
        }
        throw new IllegalArgumentException("no rule " + id);
    }

    private static String measured(String result, String unit) {
        if (!unit.equals("cm") || result.contains(unit)) {
            return result;
        }
        return Character.isDigit(result.charAt(result.length() - 1)) ? result + " cm" : result + " (in cm)";
    }

    /** The table's short names as a person says them. */
    private static String plain(String words) {
        return words.replace("n_imf_stretched", "nipple to fold, stretched").replaceAll("\\bbw\\b", "base width");
    }
}
