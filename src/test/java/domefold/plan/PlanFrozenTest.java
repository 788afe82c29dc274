package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.store.CatalogueFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Our own output of one whole plan, frozen: an ordinary left, a right between rows with a tight skin, the shipped list. A
 * difference is no fault in itself, but somebody must look at it before the file is written anew.
 */
class PlanFrozenTest {
    @Test
    void oneWholePlanIsWhatItWas() throws IOException {
        Readings right = Sample.SIDE.with(Measure.BASE_WIDTH, 12.8).with(Measure.SKIN_STRETCH, 1.8)
                .with(Measure.UPPER_PINCH, 1.6);
        Plan plan = Planner.plan(Sample.with(Sample.SIDE, right), CatalogueFile.invented(), Sample.SHIPPED,
                PlanOptions.DEFAULT);
        try (InputStream in = PlanFrozenTest.class.getResourceAsStream("/frozen/plan-ordinary.txt")) {
            String frozen = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(frozen.lines().toList(), lines(plan));
        }
    }

    static List<String> lines(Plan plan) {
        List<String> lines = new ArrayList<>();
        lines.add("notes " + codes(plan.notes()));
        for (Side side : Side.values()) {
            SideLimits limits = plan.side(side);
            lines.add(side.key() + " ceiling " + number(limits.widthCeilingCm()) + " sd " + number(limits.widthCeilingSdCm())
                    + " start " + number(limits.startingVolumeMl()) + " band " + band(limits.volumeBandMl().orElseThrow())
                    + " fold " + number(limits.foldTargetCm()) + " lowering " + number(limits.foldLoweringCm())
                    + " pocket " + limits.pocket().orElseThrow().key() + " notes " + codes(limits.notes()));
            for (Working line : limits.working()) {
                lines.add(side.key() + " " + line.quantity() + " | " + line.expression() + " | "
                        + number(OptionalDouble.of(line.value())) + " " + line.unit() + " | "
                        + line.source().split(":")[0] + " " + line.status().code());
            }
        }
        for (Candidate candidate : plan.candidates()) {
            for (Side side : Side.values()) {
                SideFit fit = candidate.side(side);
                lines.add(candidate.device().id() + " " + side.key() + " " + fit.verdict().key() + " reasons "
                        + codes(fit.reasons()) + " notes " + codes(fit.notes()) + " margins "
                        + number(fit.widthMarginCm()) + " " + number(fit.volumeMarginMl()) + " fold "
                        + number(fit.foldTargetCm()) + " " + number(fit.foldLoweringCm()) + " shares "
                        + number(fit.stability()) + " " + number(fit.fitShare()) + " "
                        + fit.decidingReading().map(Measure::field).orElse("-") + " ways "
                        + fit.wouldChange().stream().map(Note::text).collect(Collectors.joining("; ")));
            }
        }
        return lines;
    }

    private static String codes(List<Note> notes) {
        return notes.stream().map(Note::code).collect(Collectors.joining(",", "[", "]"));
    }

    private static String number(OptionalDouble value) {
        return value.isEmpty() ? "-" : String.format(Locale.ROOT, "%.6f", value.getAsDouble());
    }

    private static String band(Band band) {
        return String.format(Locale.ROOT, "%.6f to %.6f", band.low(), band.high());
    }
}
