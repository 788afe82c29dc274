package domefold.engine;

import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.outcome.Working;

/**
 * A published rule that holds no number of its own, as a row of the sizing rules.
 *
 * @param id for example {@code PTO-01}
 * @param result what the rule says
 * @param source who published it
 * @param status how it came to us
 * @param note what else a reader should know
 */
public record SizingRule(String id, String result, String source, Status status, String note) {

    /**
     * The rule of that id.
     *
     * @throws IllegalArgumentException if there is none, or it must not be used
     */
    public static SizingRule of(String id, Evidence evidence) {
        for (Table.Row row : evidence.table("sizing-rules").rows()) {
            if (row.text("rule_id").equals(id)) {
                SizingRule rule = new SizingRule(id, row.text("result"), row.text("source"),
                        Status.of(row.text("status")), row.text("note"));
                if (rule.status() == Status.MEMORY_LOW || rule.note().contains("DO NOT USE")) {
                    throw new IllegalArgumentException("rule " + id + " is marked DO NOT USE");
                }
                return rule;
            }
        }
        throw new IllegalArgumentException("no rule " + id);
    }

    /** A line of working whose result is a word. */
    public Working working(String quantity, String expression) {
        return new Working(quantity, expression, Double.NaN, "", id + ": " + source, status);
    }
}
