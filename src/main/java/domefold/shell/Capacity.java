package domefold.shell;

import domefold.basics.GaussLegendre;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The most a shell can hold without stretch: the limit of infinite pressure, where weight no longer counts.
 *
 * <p>In the band sin psi = (r / r_e)^2 with r_e^2 = r1^2 / sin psi1, x = r1 / r_e. With
 * <pre>
 *   I(x) = int_x^1 du / sqrt(1 - u^4),  M(x) = int_x^1 u^2 / sqrt(1 - u^4) du,  J(x) = int_x^1 u^4 / sqrt(1 - u^4) du
 * </pre>
 * (u = cos phi removes the end singularity) closure is S(t1) + r_e [I(x) + I(0)] = L, height z1 + r_e [M(x) + M(0)] and
 * volume V_cap(t1) + pi r_e^3 [J(x) + J(0)].
 */
record Capacity(double volumeMl, double widthCm, double heightCm, double parameter) {

    static Capacity of(DomeCurve curve) {
        double t1 = new BrentSolver(1e-15, 1e-13).solve(200, t -> closure(curve, t), 1e-6, Math.PI / 2 - 1e-6);
        double r1 = curve.a * Math.sin(t1);
        double equator = r1 / Math.sqrt(Math.sin(curve.slope(t1)));
        double x = r1 / equator;
        double volume = curve.capVolume(t1) + Math.PI * cube(equator) * (moment(x, 4) + moment(0, 4));
        double height = curve.depth(t1) + equator * (moment(x, 2) + moment(0, 2));
        return new Capacity(volume, 2 * equator, height, t1);
    }

    private static double closure(DomeCurve curve, double t1) {
        double r1 = curve.a * Math.sin(t1);
        double equator = r1 / Math.sqrt(Math.sin(curve.slope(t1)));
        return curve.arcTo(t1) + equator * (moment(r1 / equator, 0) + moment(0, 0)) - curve.meridian();
    }

    /** int_x^1 u^power / sqrt(1 - u^4) du. */
    static double moment(double x, int power) {
        return GaussLegendre.THIRTY.integrate(phi -> {
            double u = Math.cos(phi);
            return Math.pow(u, power) / Math.sqrt(1 + u * u);
        }, 0, Math.acos(Math.min(1, x)));
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
