package domefold.followup.survival;

import domefold.outcome.Band;
import domefold.outcome.Refusal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A Weibull through published points.
 *
 * <p>On x = ln t, y = ln(-ln(1-p)) the curve is y = k x - k ln s. Two points fix it; more are fitted by least squares, with
 * weights 1/SE² where every point has a 95 % interval (SE as in {@link LogLog}), else unweighted. The interval of the curve
 * comes from the points' standard errors and exists only where all have one; points of one cohort are taken as independent
 * for it, which they are not quite.
 *
 * @param error how sure the line is, where it is weighted
 * @param lastTime last time of the points
 */
public record PointFit(Weibull curve, Optional<LineError> error, double lastTime, List<Point> points) {

    /** Share failed by a time, 0 to 1, with its 95 % interval where printed. */
    public record Point(double time, double share, Optional<Band> interval) {
        public Point {
            if (!(time > 0 && share > 0 && share < 1)) {
                throw new IllegalArgumentException("a point needs a time above 0 and a share between 0 and 1");
            }
        }

        /** True when the interval can give a weight. */
        boolean weighable() {
            return interval.isPresent() && interval.get().low() > 0 && interval.get().high() < 1
                    && interval.get().low() < interval.get().high();
        }
    }

    /** Variance of the line at the weighted mean of x and of its slope, which are uncorrelated. */
    public record LineError(double meanX, double varianceAtMean, double varianceOfSlope) {
        double standardErrorAt(double x) {
            return Math.sqrt(varianceAtMean + (x - meanX) * (x - meanX) * varianceOfSlope);
        }
    }

    public PointFit {
        points = List.copyOf(points);
    }

    /**
     * The fit, weighted where every point has an interval.
     *
     * @throws Refusal if the points do not fix a curve
     */
    public static PointFit of(List<Point> points) {
        return of(points, points.stream().allMatch(Point::weighable));
    }

    /** The fit without weights, whatever intervals there are. */
    public static PointFit unweighted(List<Point> points) {
        return of(points, false);
    }

    private static PointFit of(List<Point> points, boolean weighted) {
        if (points.stream().mapToDouble(Point::time).distinct().count() < 2) {
            throw new IllegalArgumentException("a curve needs points at two different times");
        }
        double sw = 0;
        double swx = 0;
        double swy = 0;
        for (Point point : points) {
            double w = weight(point, weighted);
            sw += w;
            swx += w * Math.log(point.time());
            swy += w * LogLog.of(point.share());
        }
        double xMean = swx / sw;
        double sxx = 0;
        double sxy = 0;
        for (Point point : points) {
            double dx = Math.log(point.time()) - xMean;
            sxx += weight(point, weighted) * dx * dx;
            sxy += weight(point, weighted) * dx * (LogLog.of(point.share()) - swy / sw);
        }
        double slope = sxy / sxx;
        double intercept = swy / sw - slope * xMean;
        double scale = Math.exp(-intercept / slope);
        if (!(slope > 0 && Double.isFinite(slope) && scale > 0 && Double.isFinite(scale))) {
            throw new Refusal("no-fit", "points", "these points fix no curve: the share that has failed hardly rises with time");
        }
        Optional<LineError> error = weighted ? Optional.of(new LineError(xMean, 1 / sw, 1 / sxx)) : Optional.empty();
        return new PointFit(new Weibull(scale, slope), error,
                points.stream().map(Point::time).max(Comparator.naturalOrder()).orElseThrow(), points);
    }

    private static double weight(Point point, boolean weighted) {
        if (!weighted) {
            return 1;
        }
        double se = LogLog.standardError(point.interval().orElseThrow());
        return 1 / (se * se);
    }

    public boolean weighted() {
        return error.isPresent();
    }

    /** The curve at a time, with its interval and whether the data reach so far. */
    public CurveValue at(double time) {
        double share = curve.cumulative(time);
        Optional<Band> interval = share > 0 && share < 1
                ? error.map(line -> LogLog.interval(share, line.standardErrorAt(Math.log(time)))) : Optional.empty();
        return new CurveValue(time, share, interval, time > lastTime, lastTime);
    }
}
