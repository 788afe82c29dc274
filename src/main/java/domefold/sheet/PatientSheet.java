package domefold.sheet;

import domefold.evidence.Status;
import domefold.outcome.Numbers;
import domefold.outcome.Band;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.FollowUp;
import domefold.record.OutcomeShown;
import domefold.record.Settlement;
import domefold.record.Topic;
import java.util.ArrayList;
import java.util.List;

/**
 * The patient's sheet: what was talked about, who advises which follow-up, and published figures with what they count. It
 * holds no limit, verdict or margin computed from her readings; it is the surgeon's to hand over.
 */
public final class PatientSheet {
    private PatientSheet() {}

    public static Sheet of(ConsultRecord record, String sha256) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Facts(List.of(new Block.Fact("Case", record.id()),
                new Block.Fact("Day of the consult", DayText.both(record.inputs().date())))));
        blocks.add(new Block.Words("Your surgeon hands you this sheet and answers your questions about it. It records a"
                + " conversation; it is not a prediction of your own result.", false));
        blocks.add(new Block.Heading("What was settled"));
        for (Side side : Side.values()) {
            blocks.add(new Block.Words(record.side(side).map(PatientSheet::settled)
                    .orElse("Your " + side.name() + " side: nothing was settled."), false));
        }
        topics(record.topics(), blocks);
        blocks.add(new Block.Heading("Follow-up"));
        record.followUp().ifPresentOrElse(plan -> followUp(plan, blocks), () -> blocks.add(new Block.Words(
                "No imaging schedule was chosen in this consult. Ask your surgeon which one applies to you.", false)));
        blocks.add(new Block.Words("See your surgeon about any change you notice, at any time, whatever the schedule says.",
                false));
        figures(record.outcomes(), blocks);
        blocks.add(new Block.Signatures(List.of("Handed over by", "Date")));
        return new Sheet("For the patient", List.of(Mark.of(record, sha256)), Banners.of(record), blocks);
    }

    private static String settled(Settlement settled) {
        return "Your " + settled.side().name() + " side: " + settled.device().fill().key() + " implant, "
                + settled.device().surface().key() + ", " + DeviceWords.exactMl(settled.fillMl()) + ", "
                + Numbers.cm(settled.device().widthCm()) + " wide"
                + settled.route().map(route -> "; incision: " + route.key()).orElse("")
                + settled.pocket().map(pocket -> "; pocket: " + pocket.key()).orElse("") + ".";
    }

    private static void topics(List<Topic> topics, List<Block> blocks) {
        blocks.add(new Block.Heading("What was discussed"));
        if (topics.isEmpty()) {
            blocks.add(new Block.Words("No topic was recorded.", false));
            return;
        }
        blocks.add(new Block.Boxes(topics.stream().map(topic -> new Block.Box(
                topic.words() + (topic.discussed() ? "" : " (still to be discussed)"), topic.discussed())).toList()));
    }

    private static void followUp(FollowUp plan, List<Block> blocks) {
        blocks.add(new Block.Words("Advised by " + plan.issuer() + " (schedule " + plan.scheduleId() + "): " + plan.text(),
                false));
        if (!plan.densest().isEmpty()) {
            blocks.add(new Block.Words("Earliest dates: " + days(plan.densest()) + ".", false));
        }
        if (!plan.sparsest().isEmpty()) {
            blocks.add(new Block.Words("Latest dates: " + days(plan.sparsest()) + ".", false));
        }
        blocks.add(new Block.Words("Published in: " + plan.source() + " (" + statusWords(plan.status()) + ").", true));
    }

    static String days(List<FollowUp.Reminder> reminders) {
        return String.join(", ", reminders.stream().map(reminder -> DayText.of(reminder.date())).toList());
    }

    static void figures(List<OutcomeShown> outcomes, List<Block> blocks) {
        if (outcomes.isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Published figures that were shown"));
        blocks.add(new Block.Words("They describe groups of people who took part in studies. They do not say what will happen"
                + " to one person.", false));
        for (OutcomeShown shown : outcomes) {
            blocks.add(new Block.Words(figure(shown), false));
            blocks.add(new Block.Words("From: " + String.join("; ", shown.cohorts()) + ". Least sure of these: "
                    + statusWords(shown.status()) + ".", true));
        }
    }

    /** For example "Capsular contracture within 10 years: 9 to 19 of 100 women have it, 81 to 91 of 100 do not". */
    public static String figure(OutcomeShown shown) {
        Band range = new Band(shown.per100Low(), shown.per100High());
        String low = Numbers.per100(range.low());
        String high = Numbers.per100(range.high());
        String words = shown.outcome().substring(0, 1).toUpperCase(java.util.Locale.ROOT) + shown.outcome().substring(1);
        return words + " within " + Numbers.count(shown.year(), "year", "years") + ": "
                + (low.equals(high) ? low : low + " to " + high) + " of 100 " + counted(shown.unit()) + " have it, "
                + others(range) + " of 100 do not";
    }

    private static String others(Band have) {
        String fewest = without(have.high());
        String most = without(have.low());
        return fewest.equals(most) ? most : fewest + " to " + most;
    }

    /** What is left of a hundred by the number printed, so that both add up. */
    private static String without(double per100) {
        double printed = Double.parseDouble(Numbers.per100(per100));
        return Numbers.plain(100 - printed, printed == Math.rint(printed) ? 0 : 1);
    }

    static String counted(String unit) {
        return unit.equals("patient") ? "women" : unit.equals("implant") ? "implants" : unit + "s";
    }

    static String statusWords(String code) {
        return Status.of(code).words();
    }
}
