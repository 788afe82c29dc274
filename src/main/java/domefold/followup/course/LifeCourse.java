package domefold.followup.course;

import domefold.basics.GaussLegendre;
import domefold.followup.survival.Weibull;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What silent rupture and its surveillance come to, per 100 women (or implants) up to a horizon H.
 *
 * <p>T is the time of rupture with distribution F; e1 &lt; e2 &lt; … are the exams. An operation, needed or not, ends the count:
 * a new device starts a new clock. With p0 and p1 the chance that a due exam ends in an operation while intact or ruptured,
 * the women still watched at exam i are S(e_i) (1-p0)^(i-1) intact and R_i = R_(i-1) (1-p1) + (1-p0)^(i-1) dF_(i-1) ruptured,
 * dF_j being the ruptures between exams j and j+1. The mean time from rupture to detection needs the integral of t dF over
 * each gap, taken by quadrature over T. Rupture is found by imaging only. Our own model of a published situation
 * ({@code proposal}); a simulation of the same assumptions is its test.
 *
 * @param ruptured women with a rupture while they were watched
 * @param exams exams attended
 * @param falseAlarms alarms of the first test in intact women
 * @param confirmations MRI done to confirm an alarm
 * @param found ruptures found by imaging and operated on
 * @param needlessOperations operations that find the implant intact
 * @param silentAtHorizon ruptured and not found by the horizon
 * @param yearsToDetection mean time from rupture to detection among those found; empty when none is
 * @param silentYears years lived with an unfound rupture up to the horizon
 */
public record LifeCourse(
        double ruptured,
        double exams,
        double falseAlarms,
        double confirmations,
        double found,
        double needlessOperations,
        double silentAtHorizon,
        OptionalDouble yearsToDetection,
        double silentYears) {
    private static final double PER = 100;
    private static final GaussLegendre RULE = new GaussLegendre(32);

    /** The course under a curve, a row of exam years within the horizon and a way of watching. */
    public static LifeCourse of(Weibull rupture, List<Integer> examYears, Watch watch, double horizonYears) {
        double p0 = watch.adherence() * watch.operationIfIntact();
        double p1 = watch.adherence() * watch.operationIfRuptured();
        double watched = 1;
        double ruptured = 0;
        double silent = 0;
        double silentMoment = 0;
        double exams = 0;
        double intactExams = 0;
        double silentExams = 0;
        double found = 0;
        double delay = 0;
        double from = 0;
        for (int exam : examYears) {
            if (exam <= from || exam > horizonYears) {
                throw new IllegalArgumentException("exam years rise from above 0 to the horizon");
            }
            double broke = watched * (rupture.cumulative(exam) - rupture.cumulative(from));
            ruptured += broke;
            silent += broke;
            silentMoment += watched * moment(rupture, from, exam);
            double intact = watched * rupture.survival(exam);
            exams += watch.adherence() * (intact + silent);
            intactExams += watch.adherence() * intact;
            silentExams += watch.adherence() * silent;
            found += p1 * silent;
            delay += p1 * (exam * silent - silentMoment);
            silent *= 1 - p1;
            silentMoment *= 1 - p1;
            watched *= 1 - p0;
            from = exam;
        }
        double broke = watched * (rupture.cumulative(horizonYears) - rupture.cumulative(from));
        silent += broke;
        silentMoment += watched * moment(rupture, from, horizonYears);
        double alarms = watch.alarmIfIntact() * intactExams;
        return new LifeCourse(PER * (ruptured + broke), PER * exams, PER * alarms,
                watch.confirms() ? PER * (alarms + watch.alarmIfRuptured() * silentExams) : 0, PER * found,
                PER * watch.operationIfIntact() * intactExams, PER * silent,
                found > 0 ? OptionalDouble.of(delay / found) : OptionalDouble.empty(),
                PER * (delay + horizonYears * silent - silentMoment));
    }

    /** Integral of t dF from a to b, by parts: b F(b) - a F(a) - integral of F. */
    private static double moment(Weibull rupture, double a, double b) {
        if (b <= a) {
            return 0;
        }
        return b * rupture.cumulative(b) - a * rupture.cumulative(a) - RULE.integrate(rupture::cumulative, a, b);
    }

    /** Operations that follow from the watching. */
    public double operations() {
        return found + needlessOperations;
    }
}
