package domefold.report;

import domefold.followup.survival.CurveValue;
import domefold.followup.survival.SurvivalAnswer;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import java.util.List;
import java.util.OptionalDouble;

/** A fitted curve, to read; past the data it gives no number. */
public final class SurvivalText {
    private static final int[] WIDTHS = {-8, -14, -18};

    private SurvivalText() {}

    public static String of(SurvivalAnswer answer) {
        Page page = new Page();
        page.line(answer.kind().equals("points")
                ? "Curve through " + Numbers.count(answer.n(), "published point", "published points")
                : "Curve for " + Numbers.count(answer.n(), "device", "devices") + ", one line each");
        page.blank();
        page.line("shape k  " + Numbers.plain(answer.shape(), 4) + standardError("ln k", answer.seLogShape()));
        page.line("scale s  " + Numbers.plain(answer.scale(), 4) + " in the unit of the file's times"
                + standardError("ln s", answer.seLogScale()));
        if (answer.logLik().isPresent()) {
            page.line("log likelihood  " + Numbers.plain(answer.logLik().getAsDouble(), 4));
        }
        page.paragraph(0, answer.method() + ".");
        page.blank().row(WIDTHS, List.of("time", "failed, %", "95 % interval"));
        for (CurveValue value : answer.at()) {
            String time = Numbers.plain(value.time(), value.time() == Math.rint(value.time()) ? 0 : 2);
            if (value.beyondData()) {
                page.line(" ".repeat(Math.max(0, 8 - time.length())) + time + "   " + value.words());
            } else {
                page.row(WIDTHS, List.of(time, Numbers.plain(100 * value.cumulative(), 1),
                        value.interval().map(SurvivalText::percent).orElse(Numbers.NONE)));
            }
        }
        page.blank().paragraph(0, "F(t) = 1 - exp(-(t/s)^k). Risks per implant and per patient are different things: the curve"
                + " counts what a line of the file counts.");
        return page.paragraph(0, Statements.SUPPORTS).text();
    }

    private static String percent(Band share) {
        return Numbers.range(new Band(100 * share.low(), 100 * share.high()), 1);
    }

    private static String standardError(String of, OptionalDouble value) {
        return value.isPresent() ? ", standard error of " + of + " " + Numbers.plain(value.getAsDouble(), 4) : "";
    }
}
