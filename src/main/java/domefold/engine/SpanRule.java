package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Round or anatomical by two spans.
 *
 * <pre>
 *   A - B &lt;= SPN-01: round, else anatomical      A  upper border to nipple, cm     B  nipple to fold at rest, cm
 * </pre>
 *
 * Source: Rev Bras Cir Plast 2015;30(3), 59 women.
 */
public final class SpanRule {
    private SpanRule() {}

    /** True where a round device is favoured, false where an anatomical one is. */
    public static boolean round(double upperSpanCm, double nippleToFoldCm, Constants constants) {
        return !Exact.above(upperSpanCm - nippleToFoldCm, constants.value("SPN-01"));
    }

    public static Working working(double upperSpanCm, double nippleToFoldCm, Constants constants) {
        return Working.by(constants.get("SPN-01"), "shape by the span rule", Figures.cm(upperSpanCm) + " - "
                + Figures.cm(nippleToFoldCm) + ": "
                + (round(upperSpanCm, nippleToFoldCm, constants) ? "round" : "anatomical favoured"),
                upperSpanCm - nippleToFoldCm, "cm");
    }
}
