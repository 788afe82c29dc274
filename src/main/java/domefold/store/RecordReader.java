package domefold.store;

import domefold.outcome.Band;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Verdict;
import domefold.record.Amendment;
import domefold.record.Authorship;
import domefold.record.ConsultRecord;
import domefold.record.Considered;
import domefold.record.FollowUp;
import domefold.record.OutcomeShown;
import domefold.record.OverrideShown;
import domefold.record.RecordStatus;
import domefold.record.Settlement;
import domefold.record.Topic;
import domefold.record.TypedAnswer;
import domefold.record.Versions;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** The fields of {@code domefold-record/1}. */
final class RecordReader {
    private static final int MOST_VERSIONS = 1_000_000;
    private static final int LATEST_YEAR = 200;

    private RecordReader() {}

    static ConsultRecord read(Fields top) {
        FormatLine.require(top, ConsultRecord.FORMAT, "a record");
        top.only("format", "id", "version", "status", "practice", "authorship", "amendment", "versions", "case", "answers",
                "settled", "considered", "topics", "followUp", "outcomes", "overrides", "plan");
        RecordStatus status = top.needWord("status", RecordStatus.values(), RecordStatus::key);
        Authorship authorship = authorship(top.needObject("authorship"));
        if (status.isFrozen() != authorship.signedAt().isPresent()) {
            throw top.refusal("signature-and-status", "status", "is " + status.key() + " and the record "
                    + (status.isFrozen() ? "is not signed" : "is signed") + "; a record is signed exactly when it is no draft");
        }
        Fields settled = top.needObject("settled");
        settled.only("left", "right");
        Case inputs = CaseReader.read(top.needObject("case"), false);
        return new ConsultRecord(id(top), top.needInteger("version", 1, MOST_VERSIONS), status, top.needBool("practice"),
                inputs, top.objects("answers", RecordReader::answer), top.needObject("plan").source(),
                settled.object("left").map(side -> settlement(Side.LEFT, side)),
                settled.object("right").map(side -> settlement(Side.RIGHT, side)),
                top.objects("considered", RecordReader::considered), top.objects("topics", RecordReader::topic),
                top.object("followUp").map(RecordReader::followUp), top.objects("outcomes", RecordReader::outcome),
                top.objects("overrides", RecordReader::override), versions(top.needObject("versions")), authorship,
                top.object("amendment").map(RecordReader::amendment));
    }

    private static String id(Fields top) {
        String id = top.needText("id");
        if (id.isBlank()) {
            throw top.refusal("bad-case-code", "id", "is blank; it should be the case code");
        }
        return id;
    }

    private static Authorship authorship(Fields fields) {
        fields.only("author", "createdAt", "savedAt", "signedAt");
        return new Authorship(fields.needText("author"), fields.needInstant("createdAt"), fields.needInstant("savedAt"),
                fields.instant("signedAt"));
    }

    private static Amendment amendment(Fields fields) {
        fields.only("supersedesVersion", "supersedesSha256", "reason", "author", "at", "changes");
        return new Amendment(fields.needInteger("supersedesVersion", 1, MOST_VERSIONS), fields.needText("supersedesSha256"),
                fields.needText("reason"), fields.needText("author"), fields.needInstant("at"),
                fields.objects("changes", change -> {
                    change.only("field", "before", "after");
                    return new Amendment.FieldChange(change.needText("field"), change.needText("before"),
                            change.needText("after"));
                }));
    }

    private static Versions versions(Fields fields) {
        fields.only("engine", "catalogue", "tablesSha256");
        Fields catalogue = fields.needObject("catalogue");
        catalogue.only("name", "date", "sha256", "invented");
        return new Versions(fields.needText("engine"), catalogue.needText("name"), catalogue.needText("date"),
                catalogue.needText("sha256"), catalogue.needBool("invented"), fields.needText("tablesSha256"));
    }

    private static TypedAnswer answer(Fields fields) {
        fields.only("question", "side", "text");
        return new TypedAnswer(fields.needText("question"), fields.word("side", Side.values(), Side::key),
                fields.needText("text"));
    }

    private static Settlement settlement(Side side, Fields fields) {
        fields.only("device", "fillMl", "pocket", "fold", "route", "incisionCm", "openingCm", "neighbours", "verdict", "margins",
                "reasons", "whyOutside");
        Fields fold = fields.needObject("fold");
        fold.only("targetCm", "loweringCm", "plan");
        return new Settlement(side, DeviceJson.read(fields.needObject("device")), fields.needNumber("fillMl"),
                fields.word("pocket", Pocket.values(), Pocket::key),
                new Settlement.Fold(fold.number("targetCm"), fold.number("loweringCm"), fold.needText("plan")),
                fields.word("route", Route.values(), Route::key), fields.object("incisionCm").map(DeviceJson::incision),
                fields.number("openingCm"),
                fields.objects("neighbours", DeviceJson::read), fields.word("verdict", Verdict.values(), Verdict::key),
                fields.texts("margins"), fields.texts("reasons"), fields.text("whyOutside"));
    }

    private static Considered considered(Fields fields) {
        fields.only("device", "whyNot");
        return new Considered(DeviceJson.read(fields.needObject("device")), fields.texts("whyNot"));
    }

    private static Topic topic(Fields fields) {
        fields.only("id", "words", "discussed");
        return new Topic(fields.needText("id"), fields.needText("words"), fields.needBool("discussed"));
    }

    private static FollowUp followUp(Fields fields) {
        fields.only("schedule", "issuer", "source", "status", "text", "sides", "densest", "sparsest");
        return new FollowUp(fields.needText("schedule"), fields.needText("issuer"), fields.needText("source"),
                fields.needText("status"), fields.needText("text"), fields.words("sides", Side.values(), Side::key),
                reminders(fields, "densest"), reminders(fields, "sparsest"));
    }

    private static List<FollowUp.Reminder> reminders(Fields fields, String name) {
        return fields.objects(name, reminder -> {
            reminder.only("date", "uid");
            return new FollowUp.Reminder(reminder.needDate("date"), uid(reminder));
        });
    }

    private static UUID uid(Fields fields) {
        String text = fields.needText("uid");
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException notOne) {
            throw fields.refusal("bad-uid", "uid", "is " + Shown.quoted(text) + "; it should be a random id (UUID)");
        }
    }

    private static OutcomeShown outcome(Fields fields) {
        fields.only("outcome", "year", "per100", "unit", "cohorts", "status");
        Optional<Band> per100 = DeviceJson.band(fields, "per100");
        Band range = per100.orElseThrow(() -> missing(fields, "per100"));
        return new OutcomeShown(fields.needText("outcome"), fields.needInteger("year", 0, LATEST_YEAR), range.low(),
                range.high(), fields.needText("unit"), fields.texts("cohorts"), fields.needText("status"));
    }

    private static OverrideShown override(Fields fields) {
        fields.only("constant", "quantity", "shippedValue", "value", "unit", "date", "reason");
        return new OverrideShown(fields.needText("constant"), fields.needText("quantity"), fields.needNumber("shippedValue"),
                fields.needNumber("value"), fields.needText("unit"), fields.needDate("date"), fields.needText("reason"));
    }

    private static Refusal missing(Fields fields, String name) {
        return fields.refusal("missing-field", name, "is missing; it should be a range from low to high");
    }
}
