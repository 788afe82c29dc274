package domefold.followup.survival;

import domefold.outcome.Band;
import domefold.outcome.Refusal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleValueChecker;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * The Weibull of greatest likelihood for individual times, exact or censored in any way.
 *
 * <p>A simplex search finds the neighbourhood, Newton steps on the exact derivatives the maximum. Standard errors come from
 * the observed information there.
 *
 * @param logLik natural logarithm of the likelihood, densities in the unit of the times
 * @param covariance of (ln scale, ln shape)
 * @param lastTime last time at which anything was seen
 */
public record WeibullMle(Weibull curve, double logLik, Covariance covariance, int n, double lastTime) {
    private static final double SEARCH_TOLERANCE = 1e-5;
    private static final int MOST_EVALUATIONS = 2000;
    private static final int MOST_STEPS = 50;
    private static final double SMALL_STEP = 1e-12;
    private static final double STEEPEST_LOG_SHAPE = 6;

    /**
     * The fit.
     *
     * @throws Refusal if the times do not fix a curve
     */
    public static WeibullMle fit(List<Lifetime> times) {
        long failures = times.stream().filter(time -> !time.isRightCensored()).count();
        if (failures < 2) {
            throw noFit("a fit needs at least two failures, these times hold " + failures);
        }
        double unit = times.stream().mapToDouble(Lifetime::last).average().orElseThrow();
        WeibullLikelihood likelihood = new WeibullLikelihood(times, unit);
        double[] best = newton(likelihood, search(likelihood, times, unit, failures));
        likelihood.evaluate(best[0], best[1]);
        if (!Double.isFinite(unit * Math.exp(best[0]))) {
            throw noFit("these times do not fix a curve: next to nothing failed");
        }
        long exact = times.stream().filter(Lifetime::isExact).count();
        return new WeibullMle(new Weibull(unit * Math.exp(best[0]), Math.exp(best[1])),
                likelihood.value() - exact * Math.log(unit),
                Covariance.inverse(-likelihood.hessianMM(), -likelihood.hessianMQ(), -likelihood.hessianQQ()), times.size(),
                times.stream().mapToDouble(Lifetime::last).max().orElseThrow());
    }

    /** From the exponential's estimate, total time over failures, to the neighbourhood of the maximum. */
    private static double[] search(WeibullLikelihood likelihood, List<Lifetime> times, double unit, long failures) {
        double total = times.stream().mapToDouble(time -> (time.lower() + time.last()) / 2).sum();
        try {
            return new SimplexOptimizer(new SimpleValueChecker(SEARCH_TOLERANCE, SEARCH_TOLERANCE)).optimize(
                    new MaxEval(MOST_EVALUATIONS), GoalType.MAXIMIZE,
                    new ObjectiveFunction(place -> finite(likelihood.value(place[0], place[1]))),
                    new InitialGuess(new double[] {Math.log(total / failures / unit), 0}),
                    new NelderMeadSimplex(2, 0.3)).getPoint();
        } catch (TooManyEvaluationsException failure) {
            throw noFit("these times do not fix a curve: the likelihood has no highest place");
        }
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : -1e300;
    }

    private static double[] newton(WeibullLikelihood likelihood, double[] start) {
        double m = start[0];
        double q = start[1];
        for (int step = 0; step < MOST_STEPS; step++) {
            likelihood.evaluate(m, q);
            double det = likelihood.hessianMM() * likelihood.hessianQQ() - likelihood.hessianMQ() * likelihood.hessianMQ();
            if (!(det > 0 && likelihood.hessianMM() < 0) || Math.abs(q) > STEEPEST_LOG_SHAPE) {
                break;
            }
            double dm = -(likelihood.hessianQQ() * likelihood.gradientM() - likelihood.hessianMQ() * likelihood.gradientQ()) / det;
            double dq = -(likelihood.hessianMM() * likelihood.gradientQ() - likelihood.hessianMQ() * likelihood.gradientM()) / det;
            m += dm;
            q += dq;
            if (Math.abs(dm) + Math.abs(dq) < SMALL_STEP * (1 + Math.abs(m) + Math.abs(q))) {
                return new double[] {m, q};
            }
        }
        throw noFit("these times do not fix a curve: all failures at one time, or none bounded on both sides");
    }

    private static Refusal noFit(String text) {
        return new Refusal("no-fit", "times", text);
    }

    /** Standard error of ln scale. */
    public double seLogScale() {
        return Math.sqrt(covariance.var1());
    }

    /** Standard error of ln shape. */
    public double seLogShape() {
        return Math.sqrt(covariance.var2());
    }

    /** The curve at a time; its interval by the delta method on w = k (ln t - ln s): dw/d ln s = -k, dw/d ln k = w. */
    public CurveValue at(double time) {
        double share = curve.cumulative(time);
        double w = curve.shape() * Math.log(time / curve.scale());
        Optional<Band> interval = share > 0 && share < 1
                ? Optional.of(LogLog.interval(share, Math.sqrt(covariance.of(-curve.shape(), w)))) : Optional.empty();
        return new CurveValue(time, share, interval, time > lastTime, lastTime);
    }
}
