package domefold.store;

import domefold.device.Device;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Verdict;
import domefold.record.Amendment;
import domefold.record.Authorship;
import domefold.record.ConsultRecord;
import domefold.record.FollowUp;
import domefold.record.OutcomeShown;
import domefold.record.Settlement;
import domefold.record.Versions;
import java.util.List;

/** A record as {@code domefold-record/1}. */
final class RecordWriter {
    private final JsonOut out;

    private RecordWriter(JsonOut out) {
        this.out = out;
    }

    static void write(JsonOut out, ConsultRecord record) {
        new RecordWriter(out).object(record);
    }

    private void object(ConsultRecord record) {
        out.object(() -> {
            out.text("format", ConsultRecord.FORMAT).text("id", record.id()).number("version", record.version())
                    .text("status", record.status().key()).bool("practice", record.practice());
            out.object("authorship", () -> authorship(record.authorship()));
            record.amendment().ifPresent(amendment -> out.object("amendment", () -> amendment(amendment)));
            out.object("versions", () -> versions(record.versions()));
            out.object("case", () -> CaseWriter.fields(out, record.inputs()));
            out.objects("answers", record.answers(), answer -> out.text("question", answer.question())
                    .text("side", answer.side().map(Side::key)).text("text", answer.text()));
            out.object("settled", () -> {
                for (Side side : Side.values()) {
                    record.side(side).ifPresent(settled -> out.object(side.key(), () -> settlement(settled)));
                }
            });
            out.objects("considered", record.considered(), considered -> {
                out.object("device", () -> DeviceJson.fields(out, considered.device()));
                out.texts("whyNot", considered.whyNot());
            });
            out.objects("topics", record.topics(), topic -> out.text("id", topic.id()).text("words", topic.words())
                    .bool("discussed", topic.discussed()));
            record.followUp().ifPresent(followUp -> out.object("followUp", () -> followUp(followUp)));
            out.objects("outcomes", record.outcomes(), this::outcome);
            out.objects("overrides", record.overrides(), change -> out.text("constant", change.id())
                    .text("quantity", change.quantity()).number("shippedValue", change.shippedValue())
                    .number("value", change.value()).text("unit", change.unit()).text("date", change.date().toString())
                    .text("reason", change.reason()));
            out.raw("plan", record.planJson().strip());
        });
    }

    private void authorship(Authorship by) {
        out.text("author", by.author()).text("createdAt", by.createdAt().toString()).text("savedAt", by.savedAt().toString())
                .text("signedAt", by.signedAt().map(Object::toString));
    }

    private void amendment(Amendment amendment) {
        out.number("supersedesVersion", amendment.supersedesVersion()).text("supersedesSha256", amendment.supersedesSha256())
                .text("reason", amendment.reason()).text("author", amendment.author()).text("at", amendment.at().toString());
        out.objects("changes", amendment.changes(), change -> out.text("field", change.field())
                .text("before", change.before()).text("after", change.after()));
    }

    private void versions(Versions versions) {
        out.text("engine", versions.engine());
        out.object("catalogue", () -> out.text("name", versions.catalogueName()).text("date", versions.catalogueDate())
                .text("sha256", versions.catalogueSha256()).bool("invented", versions.catalogueInvented()));
        out.text("tablesSha256", versions.tablesSha256());
    }

    private void settlement(Settlement settled) {
        device("device", settled.device());
        out.number("fillMl", settled.fillMl()).text("pocket", settled.pocket().map(Pocket::key));
        out.object("fold", () -> out.number("targetCm", settled.fold().targetCm())
                .number("loweringCm", settled.fold().loweringCm()).text("plan", settled.fold().plan()));
        out.text("route", settled.route().map(Route::key));
        settled.incision().ifPresent(incision -> out.object("incisionCm", () -> DeviceJson.incision(out, incision)));
        out.number("openingCm", settled.openingCm());
        out.objects("neighbours", settled.neighbours(), device -> DeviceJson.fields(out, device));
        out.text("verdict", settled.verdict().map(Verdict::key)).texts("margins", settled.margins())
                .texts("reasons", settled.reasons()).text("whyOutside", settled.whyOutside());
    }

    private void device(String name, Device device) {
        out.object(name, () -> DeviceJson.fields(out, device));
    }

    private void followUp(FollowUp followUp) {
        out.text("schedule", followUp.scheduleId()).text("issuer", followUp.issuer()).text("source", followUp.source())
                .text("status", followUp.status()).text("text", followUp.text())
                .texts("sides", followUp.sides().stream().map(Side::key).toList());
        reminders("densest", followUp.densest());
        reminders("sparsest", followUp.sparsest());
    }

    private void reminders(String name, List<FollowUp.Reminder> reminders) {
        out.objects(name, reminders, reminder -> out.text("date", reminder.date().toString())
                .text("uid", reminder.uid().toString()));
    }

    private void outcome(OutcomeShown shown) {
        out.text("outcome", shown.outcome()).number("year", shown.year());
        out.object("per100", () -> out.number("low", shown.per100Low()).number("high", shown.per100High()));
        out.text("unit", shown.unit()).texts("cohorts", shown.cohorts()).text("status", shown.status());
    }
}
