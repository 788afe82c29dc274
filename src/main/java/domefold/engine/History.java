package domefold.engine;

import domefold.evidence.Evidence;
import domefold.outcome.Note;
import domefold.patient.HealthQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the health questions block (LIM-04 to LIM-06) and what they caution against (LIM-07 and practice). A question that
 * was not asked is not answered "no": it is listed.
 */
public final class History {
    private History() {}

    /** Contraindications, each with its reason and source; empty if none was answered with yes. */
    public static List<Note> blocks(Map<HealthQuestion, Boolean> history, Evidence evidence) {
        List<Note> blocks = new ArrayList<>();
        block(blocks, history, HealthQuestion.ACTIVE_INFECTION, "LIM-04", "an active infection", evidence);
        block(blocks, history, HealthQuestion.UNTREATED_BREAST_DISEASE, "LIM-05",
                "breast cancer or a pre-cancer without adequate treatment", evidence);
        block(blocks, history, HealthQuestion.PREGNANT_OR_NURSING, "LIM-06", "pregnancy or nursing", evidence);
        return blocks;
    }

    private static void block(List<Note> blocks, Map<HealthQuestion, Boolean> history, HealthQuestion question,
            String rule, String words, Evidence evidence) {
        if (history.getOrDefault(question, false)) {
            SizingRule row = SizingRule.of(rule, evidence);
            String wait = question == HealthQuestion.PREGNANT_OR_NURSING ? "; " + row.note() : "";
            blocks.add(new Note("contraindication", words + " is a contraindication to augmentation (" + row.source()
                    + ", " + row.status().words() + ")" + wait));
        }
    }

    /** Relative cautions: nicotine, irradiation, earlier surgery. */
    public static List<Note> cautions(Map<HealthQuestion, Boolean> history, Evidence evidence) {
        List<Note> cautions = new ArrayList<>();
        SizingRule relative = SizingRule.of("LIM-07", evidence);
        String source = " (" + relative.source() + ", " + relative.status().words() + ")";
        if (history.getOrDefault(HealthQuestion.NICOTINE, false)) {
            cautions.add(new Note("nicotine", "nicotine: a relative contraindication where heavy" + source));
        }
        if (history.getOrDefault(HealthQuestion.CHEST_IRRADIATION, false)) {
            cautions.add(new Note("irradiation", "chest irradiation: a relative contraindication" + source));
        }
        if (history.getOrDefault(HealthQuestion.EARLIER_BREAST_SURGERY, false)) {
            cautions.add(new Note("earlier-surgery", "earlier breast surgery: the volume and fold rules were made for"
                    + " first operations (common practice, no source)"));
        }
        return cautions;
    }

    /** One note naming the gating questions that were not asked; empty if all were. */
    public static List<Note> notAsked(Map<HealthQuestion, Boolean> history) {
        List<String> missing = new ArrayList<>();
        for (HealthQuestion question : HealthQuestion.values()) {
            if (!history.containsKey(question)) {
                missing.add(question.words());
            }
        }
        return missing.isEmpty() ? List.of() : List.of(new Note("history-not-asked",
                "not asked, which is not \"no\": " + String.join(", ", missing)));
    }
}
