package domefold.store;

import domefold.device.Fill;
import domefold.device.Profile;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.practice.FellowPlan;
import domefold.practice.Mark;
import domefold.practice.Marking;
import domefold.practice.PracticeCase;
import domefold.practice.SidePlan;
import domefold.practice.TutorSheet;
import java.util.List;
import java.util.Locale;

/** A practice case with its reference marking, {@code domefold-practice/1}: a tutor's sheet. Nothing of it is clinical. */
public final class PracticeJson {
    public static final String FORMAT = "domefold-practice/1";

    private final JsonOut out = new JsonOut();

    private PracticeJson() {}

    /** The sheet as text; its {@code case} is a {@code domefold-case/1} of its own. */
    public static String write(TutorSheet sheet) {
        PracticeJson writer = new PracticeJson();
        writer.sheet(sheet);
        return writer.out.text();
    }

    private void sheet(TutorSheet sheet) {
        PracticeCase practice = sheet.practice();
        out.object(() -> {
            out.text("format", FORMAT).bool("practice", true).text("banner", sheet.banner())
                    .number("number", practice.number()).number("level", practice.level())
                    .text("history", practice.history()).text("wish", practice.wish());
            out.texts("sightings", practice.sightings().stream().map(seen -> seen.text()).toList());
            out.objects("traps", practice.traps(), trap -> out.text("code", trap.code()).text("text", trap.words()));
            out.object("case", () -> CaseWriter.fields(out, practice.of()));
            out.objects("flags", List.copyOf(sheet.flags().entrySet()),
                    flag -> out.text("code", flag.getKey()).text("text", flag.getValue()));
            out.object("reference", () -> plan(sheet.reference()));
            out.object("marking", () -> marking(sheet.marking()));
        });
    }

    private void plan(FellowPlan plan) {
        out.bool("declined", plan.declined());
        for (Side side : Side.values()) {
            out.object(side.key(), () -> side(plan.side(side)));
        }
        out.text("route", plan.route().map(Route::key)).bool("funnel", plan.funnel())
                .number("incisionCm", plan.incisionCm()).text("surveillance", plan.schedule())
                .texts("warnings", plan.warnings()).text("reason", plan.reason());
    }

    private void side(SidePlan side) {
        out.number("widthCeilingCm", side.ceilingCm()).number("volumeMl", side.volumeMl())
                .text("pocket", side.pocket().map(Pocket::key)).number("foldLoweringCm", side.foldLoweringCm())
                .text("device", side.deviceId()).text("fill", side.fill().map(Fill::key))
                .number("fillMl", side.fillMl()).text("profile", side.profile().map(Profile::key));
    }

    private void marking(Marking marking) {
        out.number("percent", marking.percent()).number("points", marking.points()).number("outOf", marking.outOf());
        out.objects("marks", marking.marks(), this::mark);
    }

    private void mark(Mark mark) {
        out.text("decision", code(mark.decision())).text("side", mark.side().map(Side::key)).text("code", mark.code())
                .text("standing", code(mark.standing())).text("said", mark.said()).text("decidedBy", mark.decidedBy());
        if (!mark.readingError().isEmpty()) {
            out.text("readingError", mark.readingError());
        }
        out.text("bothHeld", mark.bothHeld()).number("weight", mark.weight()).number("credit", mark.credit());
        out.objects("working", mark.working(), line -> {
            out.text("quantity", line.quantity()).text("expression", line.expression());
            if (Double.isFinite(line.value())) {
                out.number("value", line.value());
            }
            out.text("unit", line.unit()).text("source", line.source()).text("status", line.status().code());
        });
    }

    private static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
