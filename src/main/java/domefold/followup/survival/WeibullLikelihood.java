package domefold.followup.survival;

import java.util.List;

/**
 * Log-likelihood of a Weibull for exact and censored times, with its first and second derivatives.
 *
 * <p>Parameters m = ln s and q = ln k. With w = k (ln t - m) and H = e^w: an exact time adds q - ln t + w - H, a time still
 * intact -H, a failure before u ln(1 - e^-H(u)), a failure between l and u -H(l) + ln(1 - e^-(H(u) - H(l))). Derivatives:
 * dw/dm = -k, dw/dq = w, d²w/dmdq = -k, d²w/dq² = w; dH = H dw; d²H = H (dw dw + d²w). Standard theory (Kalbfleisch and
 * Prentice, The Statistical Analysis of Failure Time Data; from memory, fairly sure).
 */
final class WeibullLikelihood {
    private final double[] lnLower;
    private final double[] lnUpper;
    private double value;
    private double gm;
    private double gq;
    private double hmm;
    private double hmq;
    private double hqq;

    /** Times are divided by {@code unit} first, so that the numbers stay near 1. */
    WeibullLikelihood(List<Lifetime> times, double unit) {
        lnLower = times.stream().mapToDouble(time -> Math.log(time.lower() / unit)).toArray();
        lnUpper = times.stream().mapToDouble(time -> Math.log(time.upper() / unit)).toArray();
    }

    /** The log-likelihood alone. */
    double value(double m, double q) {
        double k = Math.exp(q);
        double sum = 0;
        for (int i = 0; i < lnLower.length; i++) {
            double lo = k * (lnLower[i] - m);
            if (lnLower[i] == lnUpper[i]) {
                sum += q - lnLower[i] + lo - Math.exp(lo);
            } else {
                double low = Math.exp(lo);
                sum -= low;
                if (lnUpper[i] != Double.POSITIVE_INFINITY) {
                    sum += Math.log(-Math.expm1(low - Math.exp(k * (lnUpper[i] - m))));
                }
            }
        }
        return sum;
    }

    /** Value, gradient and Hessian at a place; read them with the methods below. */
    void evaluate(double m, double q) {
        value = value(m, q);
        gm = gq = hmm = hmq = hqq = 0;
        double k = Math.exp(q);
        for (int i = 0; i < lnLower.length; i++) {
            if (lnLower[i] == lnUpper[i]) {
                exact(k, k * (lnLower[i] - m));
            } else {
                censored(k, m, lnLower[i], lnUpper[i]);
            }
        }
    }

    private void exact(double k, double w) {
        double h = Math.exp(w);
        gm += -k + k * h;
        gq += 1 + w - w * h;
        hmm -= h * k * k;
        hmq += -k + h * (k * w + k);
        hqq += w - h * (w * w + w);
    }

    /** -H(l) + ln(1 - e^-D) with D = H(u) - H(l); the second part is absent where nothing failed. */
    private void censored(double k, double m, double lnL, double lnU) {
        double wl = lnL == Double.NEGATIVE_INFINITY ? 0 : k * (lnL - m);
        double hl = lnL == Double.NEGATIVE_INFINITY ? 0 : Math.exp(wl);
        double lm = -k * hl;
        double lq = wl * hl;
        double lmm = k * k * hl;
        double lmq = -hl * (k * wl + k);
        double lqq = hl * (wl * wl + wl);
        add(-1, 0, lm, lq, lmm, lmq, lqq);
        if (lnU == Double.POSITIVE_INFINITY) {
            return;
        }
        double wu = k * (lnU - m);
        double hu = Math.exp(wu);
        double e = Math.expm1(hu - hl);
        add(1 / e, -(e + 1) / (e * e), -k * hu - lm, wu * hu - lq, k * k * hu - lmm,
                -hu * (k * wu + k) - lmq, hu * (wu * wu + wu) - lqq);
    }

    /** Chain rule for f(D): first and second derivative of f, then first and second derivatives of D. */
    private void add(double f1, double f2, double dm, double dq, double dmm, double dmq, double dqq) {
        if (!Double.isFinite(f2)) {
            f2 = 0;
        }
        gm += f1 * dm;
        gq += f1 * dq;
        hmm += f2 * dm * dm + f1 * dmm;
        hmq += f2 * dm * dq + f1 * dmq;
        hqq += f2 * dq * dq + f1 * dqq;
    }

    double value() {
        return value;
    }

    double gradientM() {
        return gm;
    }

    double gradientQ() {
        return gq;
    }

    double hessianMM() {
        return hmm;
    }

    double hessianMQ() {
        return hmq;
    }

    double hessianQQ() {
        return hqq;
    }
}
