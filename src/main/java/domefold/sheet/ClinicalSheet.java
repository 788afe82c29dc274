package domefold.sheet;

import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.FollowUp;
import domefold.record.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The clinical summary: one page that could be read aloud in theatre, and behind it what it rests on. */
public final class ClinicalSheet {
    private ClinicalSheet() {}

    /**
     * The summary of a record.
     *
     * @param sha256 digest of the file it was read from
     * @param limits what the saved plan allowed, by side
     */
    public static Sheet of(ConsultRecord record, String sha256, Map<Side, Limits> limits) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(facts(record));
        blocks.add(new Block.Heading("Settled"));
        blocks.add(SettledGrid.of(record));
        blocks.add(new Block.Words("LEFT and RIGHT are the patient's own.", true));
        blocks.add(new Block.Heading("What the tissues allowed"));
        blocks.add(SettledGrid.limits(limits));
        blocks.addAll(drawing(record, limits));
        blocks.add(new Block.Heading("Readings"));
        blocks.add(ReadingsGrid.ofSides(record.inputs()));
        blocks.add(ReadingsGrid.ofPatient(record.inputs()));
        blocks.add(new Block.Heading("Wishes"));
        blocks.add(ReadingsGrid.wishes(record.inputs()));
        considered(record, blocks);
        followUp(record, blocks);
        PatientSheet.figures(record.outcomes(), blocks);
        topics(record.topics(), blocks);
        basis(record, blocks);
        record.amendment().ifPresent(change -> amendment(change, blocks));
        blocks.add(new Block.Signatures(List.of("Surgeon", "Date")));
        blocks.add(new Block.Words("For trained surgeons. It supports their judgement and replaces neither examination nor"
                + " sizers, label or instructions for use. Check side and size against the implant's label at the time-out.",
                true));
        return new Sheet("Clinical summary", List.of(Mark.of(record, sha256)), Banners.of(record), blocks);
    }

    private static Block facts(ConsultRecord record) {
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("Case", record.id()));
        facts.add(new Block.Fact("Day of the consult", DayText.both(record.inputs().date())));
        facts.add(new Block.Fact("Version", record.version() + ", " + record.status().words()));
        String author = record.authorship().author().isBlank() ? "not given" : record.authorship().author();
        facts.add(new Block.Fact("Author", author));
        facts.add(new Block.Fact("Saved", DayText.of(record.authorship().savedAt())));
        record.authorship().signedAt().ifPresent(at -> facts.add(new Block.Fact("Signed", DayText.of(at))));
        return new Block.Facts(facts);
    }

    private static List<Block> drawing(ConsultRecord record, Map<Side, Limits> limits) {
        List<Block.SideDrawing> sides = new ArrayList<>();
        for (Side side : Side.values()) {
            record.side(side).ifPresent(settled -> sides.add(new Block.SideDrawing(side, settled.device(),
                    record.inputs().side(side).readings().value(domefold.patient.Measure.BASE_WIDTH),
                    limits.getOrDefault(side, Limits.UNKNOWN).widthCeilingCm())));
        }
        return sides.isEmpty() ? List.of() : List.of(new Block.Drawing(sides));
    }

    private static void considered(ConsultRecord record, List<Block> blocks) {
        if (record.considered().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Compared and not chosen"));
        blocks.add(new Block.Grid(List.of("Device", "Size", "Why not"), List.of(40, 15, 60), record.considered().stream()
                .map(other -> List.of(other.device().id() + ", " + DeviceWords.kind(other.device()),
                        DeviceWords.exactMl(other.device().nominalMl()), String.join("; ", other.whyNot()))).toList()));
    }

    private static void followUp(ConsultRecord record, List<Block> blocks) {
        blocks.add(new Block.Heading("Follow-up"));
        if (record.followUp().isEmpty()) {
            blocks.add(new Block.Words("No imaging schedule was chosen.", false));
            return;
        }
        FollowUp plan = record.followUp().get();
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("Schedule", plan.scheduleId() + ", " + plan.issuer()));
        facts.add(new Block.Fact("Holds for", String.join(" and ", plan.sides().stream().map(Side::name).toList())));
        facts.add(new Block.Fact("Rule", plan.text()));
        facts.add(new Block.Fact("Earliest dates", plan.densest().isEmpty() ? "none" : PatientSheet.days(plan.densest())));
        facts.add(new Block.Fact("Latest dates", plan.sparsest().isEmpty() ? "none" : PatientSheet.days(plan.sparsest())));
        facts.add(new Block.Fact("Source", plan.source() + " (" + PatientSheet.statusWords(plan.status()) + ")"));
        blocks.add(new Block.Facts(facts));
    }

    private static void topics(List<Topic> topics, List<Block> blocks) {
        blocks.add(new Block.Heading("Discussed and open"));
        if (topics.isEmpty()) {
            blocks.add(new Block.Words("No topic was recorded.", false));
            return;
        }
        blocks.add(new Block.Boxes(topics.stream()
                .map(topic -> new Block.Box(topic.words() + (topic.discussed() ? "" : " (open)"), topic.discussed())).toList()));
    }

    private static void basis(ConsultRecord record, List<Block> blocks) {
        blocks.add(new Block.Heading("What it rests on"));
        blocks.add(new Block.Facts(List.of(new Block.Fact("Engine", record.versions().engine()),
                new Block.Fact("Device list", OrderSheet.listWords(record.versions())),
                new Block.Fact("Evidence tables", "sha256 " + record.versions().tablesSha256()))));
        if (!record.overrides().isEmpty()) {
            blocks.add(new Block.Grid(List.of("Surgeon's own value", "In use", "As shipped", "Since and why"),
                    List.of(35, 15, 15, 40), record.overrides().stream().map(own -> List.of(
                            own.quantity() + " (" + own.id() + ")", plain(own.value()) + " " + own.unit(),
                            plain(own.shippedValue()) + " " + own.unit(), DayText.of(own.date()) + ": " + own.reason())).toList()));
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Numbers.plain(value, 0)
                : java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static void amendment(Amendment change, List<Block> blocks) {
        blocks.add(new Block.Heading("Amendment"));
        blocks.add(new Block.Facts(List.of(new Block.Fact("In place of", "version " + change.supersedesVersion() + ", sha256 "
                        + change.supersedesSha256()), new Block.Fact("Reason", change.reason()),
                new Block.Fact("By", change.author() + ", " + DayText.of(change.at())))));
        blocks.add(new Block.Grid(List.of("Field", "Before", "Now"), List.of(40, 35, 35), change.changes().stream()
                .map(one -> List.of(one.field(), none(one.before()), none(one.after()))).toList()));
    }

    private static String none(String text) {
        return text.isEmpty() ? "(absent)" : text;
    }
}
