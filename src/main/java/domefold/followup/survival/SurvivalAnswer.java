package domefold.followup.survival;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A Weibull fitted to a file of follow-up: the answer {@code domefold-survival/1}.
 *
 * @param kind {@code intervals} for individual times, {@code points} for published shares
 * @param n times or points
 * @param shape k
 * @param scale s, in the unit of the file's times
 * @param logLik for individual times
 * @param seLogScale standard error of ln scale, for individual times
 * @param seLogShape standard error of ln shape, for individual times
 * @param method how it was fitted, in a sentence
 * @param at the curve at a row of times; those past the data are marked
 */
public record SurvivalAnswer(
        String kind,
        int n,
        double shape,
        double scale,
        OptionalDouble logLik,
        OptionalDouble seLogScale,
        OptionalDouble seLogShape,
        String method,
        List<CurveValue> at) {
    private static final int STEPS = 10;
    private static final int MOST_WHOLE_TIMES = 40;
    private static final double BEYOND = 1.5;

    public SurvivalAnswer {
        at = List.copyOf(at);
    }

    /** @throws domefold.outcome.Refusal if the times do not fix a curve */
    public static SurvivalAnswer ofTimes(List<Lifetime> times) {
        WeibullMle fit = WeibullMle.fit(times);
        return new SurvivalAnswer("intervals", fit.n(), fit.curve().shape(), fit.curve().scale(),
                OptionalDouble.of(fit.logLik()), OptionalDouble.of(fit.seLogScale()), OptionalDouble.of(fit.seLogShape()),
                "Weibull of greatest likelihood; standard errors from the observed information",
                times(fit.lastTime()).mapToObj(fit::at).toList());
    }

    public static SurvivalAnswer ofPoints(List<PointFit.Point> points) {
        PointFit fit = PointFit.of(points);
        String method = fit.weighted() ? "weights from the intervals of all points"
                : "no weights, since not every point has an interval";
        return new SurvivalAnswer("points", points.size(), fit.curve().shape(), fit.curve().scale(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), "Weibull by least squares of ln(-ln S) on ln t; " + method,
                times(fit.lastTime()).mapToObj(fit::at).toList());
    }

    /** Whole times up to the last, or ten even steps where that would be many or few; then one past the data. */
    private static DoubleStream times(double last) {
        boolean whole = last >= STEPS / 2.0 && last <= MOST_WHOLE_TIMES;
        DoubleStream within = whole ? DoubleStream.iterate(1, time -> time <= last, time -> time + 1)
                : DoubleStream.iterate(1, step -> step <= STEPS, step -> step + 1).map(step -> last * step / STEPS);
        return DoubleStream.concat(within, DoubleStream.of(last * BEYOND));
    }
}
