package domefold.store;

import domefold.device.Device;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.SideLimits;
import java.util.List;
import java.util.Optional;

/** A plan as {@code domefold-plan/1}; the schema is {@code shared/schema/plan-1.json}. */
public final class PlanJson {
    public static final String FORMAT = "domefold-plan/1";

    /** A candidate with all it has to say. */
    private static final int BYTES_A_CANDIDATE = 10_000;

    private final JsonOut out;

    private PlanJson(JsonOut out) {
        this.out = out;
    }

    /**
     * The plan as text.
     *
     * @param engine version of this program
     */
    public static String write(Plan plan, String engine) {
        return written(plan, engine).text();
    }

    /** The same in UTF-8. */
    public static byte[] bytes(Plan plan, String engine) {
        return written(plan, engine).bytes();
    }

    /** Writes a device list and forgets it, for a caller who has a thread to spare before the first plan is written. */
    public static void prepare(List<Device> devices) {
        JsonOut out = new JsonOut();
        out.object(() -> out.objects("candidates", devices, device -> {
            DeviceJson.fields(out, device);
            out.number("stability", device.widthCm() / device.nominalMl()).text("text", device.line());
        }));
        out.bytes();
    }

    private static JsonOut written(Plan plan, String engine) {
        PlanJson writer = new PlanJson(new JsonOut(true, BYTES_A_CANDIDATE * (1 + plan.candidates().size())));
        writer.plan(plan, engine);
        return writer.out;
    }

    private void plan(Plan plan, String engine) {
        out.object(() -> {
            out.text("format", FORMAT).text("case", plan.of().code()).text("engine", engine);
            out.object("catalogue", () -> out.text("name", plan.catalogueName()).text("sha256", plan.catalogueSha256()));
            notes("blocked", plan.blocked());
            notes("notes", plan.notes());
            for (Side side : Side.values()) {
                out.object(side.key(), () -> limits(plan.side(side)));
            }
            out.objects("candidates", plan.candidates(), this::candidate);
            out.objects("pairs", plan.pairs(), this::pair);
        });
    }

    private void limits(SideLimits limits) {
        out.numberOrNull("widthCeilingCm", limits.widthCeilingCm()).numberOrNull("widthCeilingSdCm", limits.widthCeilingSdCm())
                .numberOrNull("startingVolumeMl", limits.startingVolumeMl());
        band("volumeBandMl", limits.volumeBandMl());
        out.numberOrNull("foldTargetCm", limits.foldTargetCm()).numberOrNull("foldLoweringCm", limits.foldLoweringCm());
        out.objects("foldByMethod", limits.foldByMethod(), method -> out.text("name", method.name())
                .number("targetCm", method.targetCm()).bool("drives", method.drives()).text("remark", method.remark()));
        out.textOrNull("pocket", limits.pocket().map(Pocket::key));
        notes("notes", limits.notes());
        out.texts("incomplete", limits.incomplete());
        out.objects("working", limits.working(), this::working);
    }

    private void working(Working line) {
        out.text("quantity", line.quantity()).text("expression", line.expression());
        if (Double.isNaN(line.value())) {
            out.nothing("value");
        } else {
            out.number("value", line.value());
        }
        out.text("unit", line.unit()).text("source", line.source()).text("status", line.status().code());
    }

    private void candidate(Candidate candidate) {
        DeviceJson.fields(out, candidate.device());
        for (Side side : Side.values()) {
            out.object(side.key(), () -> fit(candidate.side(side)));
        }
        if (candidate.incision().isPresent()) {
            out.object("incisionCm", () -> DeviceJson.incision(out, candidate.incision().get()));
        } else {
            out.nothing("incisionCm");
        }
        if (candidate.followUp().isPresent()) {
            out.again("followUp", candidate.followUp().get(), () -> followUp(candidate.followUp().get()));
        } else {
            out.nothing("followUp");
        }
        if (candidate.ripple().isPresent()) {
            out.object("ripple", () -> out.number("index", candidate.ripple().get().index())
                    .text("text", candidate.ripple().get().text()));
        } else {
            out.nothing("ripple");
        }
    }

    private void fit(SideFit fit) {
        out.text("verdict", fit.verdict().key());
        notes("reasons", fit.reasons());
        notes("notes", fit.notes());
        out.numberOrNull("widthMarginCm", fit.widthMarginCm()).numberOrNull("volumeMarginMl", fit.volumeMarginMl())
                .numberOrNull("foldTargetCm", fit.foldTargetCm()).numberOrNull("foldLoweringCm", fit.foldLoweringCm())
                .numberOrNull("stability", fit.stability()).numberOrNull("fitShare", fit.fitShare());
        out.textOrNull("decidingReading", fit.decidingReading().map(Measure::field));
        out.object("projected", () -> {
            band("projectionGainCm", fit.projectionGainCm());
            band("upperPolePercent", fit.upperPolePercent());
        });
        notes("wouldChange", fit.wouldChange());
    }

    /** {@code examYears} holds the sparsest sequence first, then the densest. */
    private void followUp(Candidate.FollowUp followUp) {
        out.text("schedule", followUp.schedule());
        out.object("exams", () -> out.number("low", followUp.examsLow()).number("high", followUp.examsHigh()));
        out.list("examYears", List.of(followUp.sparsestYears(), followUp.densestYears()),
                years -> out.list(years, year -> out.number(year)));
        out.number("horizonYears", followUp.horizonYears()).text("text", followUp.text());
        out.objects("outcomes", followUp.outcomes(), outcome -> {
            out.text("outcome", outcome.outcome()).number("year", outcome.year());
            out.object("per100", () -> out.number("low", outcome.per100Low()).number("high", outcome.per100High()));
            out.text("unit", outcome.unit()).texts("cohorts", outcome.cohorts());
        });
    }

    private void pair(DevicePair pair) {
        out.text("left", pair.leftId()).text("right", pair.rightId());
        out.object("fillMl", () -> out.number("left", pair.leftFillMl()).number("right", pair.rightFillMl()));
        out.numberOrNull("volumeGapMl", pair.volumeGapMl()).text("text", pair.text());
    }

    private void notes(String name, List<Note> notes) {
        out.objects(name, notes, note -> out.text("code", note.code()).text("text", note.text()));
    }

    private void band(String name, Optional<Band> band) {
        if (band.isPresent()) {
            out.object(name, () -> DeviceJson.band(out, band.get()));
        } else {
            out.nothing(name);
        }
    }
}
