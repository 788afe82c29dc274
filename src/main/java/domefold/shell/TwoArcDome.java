package domefold.shell;

import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A dome with an edge radius: spherical cap, quarter-torus edge, flat base disc.
 *
 * <p>a half width, P height, rho edge radius (0 &lt; rho &lt; P/2), b = a - rho,
 * <pre>
 *   R     = [b^2 + (P - rho)^2 - rho^2] / [2 (P - 2 rho)]     cap radius
 *   psi_j = atan2(b, R - P + rho)                            tangent angle where cap and edge join
 *   V = pi R^3 q^2 (3 - q) / 3, q = 1 - cos psi_j
 *     + pi rho [-b^2 cos x + b rho (x - sin 2x / 2) + rho^2 (-cos x + cos^3 x / 3)] from psi_j to pi
 *   A = 2 pi R^2 q + 2 pi rho [b (pi - psi_j) + rho (1 + cos psi_j)] + pi b^2
 *   L = R psi_j + rho (pi - psi_j) + b                       meridian from pole to pole
 * </pre>
 * Exact, solid geometry.
 */
public record TwoArcDome(double halfWidthCm, double domeCm, double edgeRadiusCm) {
    public TwoArcDome {
        if (!(edgeRadiusCm > 0 && 2 * edgeRadiusCm < domeCm && edgeRadiusCm < halfWidthCm)) {
            throw new IllegalArgumentException("the edge radius must lie between 0 and half the dome's height");
        }
    }

    /** Radius of the cap. */
    public double capRadiusCm() {
        double b = halfWidthCm - edgeRadiusCm;
        double rise = domeCm - edgeRadiusCm;
        return (b * b + rise * rise - edgeRadiusCm * edgeRadiusCm) / (2 * (domeCm - 2 * edgeRadiusCm));
    }

    /** Tangent angle at the join, radians. */
    public double joinAngle() {
        return Math.atan2(halfWidthCm - edgeRadiusCm, capRadiusCm() - domeCm + edgeRadiusCm);
    }

    public double volumeMl() {
        double radius = capRadiusCm();
        double join = joinAngle();
        double half = Math.sin(join / 2);
        double q = 2 * half * half;
        return Math.PI * radius * radius * radius * q * q * (3 - q) / 3
                + Math.PI * edgeRadiusCm * (edge(Math.PI) - edge(join));
    }

    private double edge(double x) {
        double b = halfWidthCm - edgeRadiusCm;
        double c = Math.cos(x);
        return -b * b * c + b * edgeRadiusCm * (x - Math.sin(2 * x) / 2)
                + edgeRadiusCm * edgeRadiusCm * (-c + c * c * c / 3);
    }

    /** Whole surface, base disc included. */
    public double areaCm2() {
        double b = halfWidthCm - edgeRadiusCm;
        double radius = capRadiusCm();
        double c = Math.cos(joinAngle());
        return 2 * Math.PI * radius * radius * (1 - c)
                + 2 * Math.PI * edgeRadiusCm * (b * (Math.PI - joinAngle()) + edgeRadiusCm * (1 + c))
                + Math.PI * b * b;
    }

    /** Meridian from pole to pole. */
    public double meridianCm() {
        return capRadiusCm() * joinAngle() + edgeRadiusCm * (Math.PI - joinAngle()) + halfWidthCm - edgeRadiusCm;
    }

    /**
     * The dome of that width, height and volume. Empty where no edge radius gives the volume: below the spherical cap
     * (form factor under 1/2 + (P/a)^2 / 6) or beyond the roundest edge.
     */
    public static Optional<TwoArcDome> of(double widthCm, double projectionCm, double volumeMl) {
        double a = widthCm / 2;
        double lowest = 1e-9 * projectionCm;
        double highest = Math.min(projectionCm / 2 * (1 - 1e-6), a * (1 - 1e-9));
        double least = new TwoArcDome(a, projectionCm, lowest).volumeMl();
        double most = new TwoArcDome(a, projectionCm, highest).volumeMl();
        if (volumeMl <= least || volumeMl >= most) {
            return Optional.empty();
        }
        double radius = new BrentSolver(1e-14, 1e-13).solve(200,
                rho -> new TwoArcDome(a, projectionCm, rho).volumeMl() - volumeMl, lowest, highest);
        return Optional.of(new TwoArcDome(a, projectionCm, radius));
    }
}
