package domefold.shell;

/**
 * A quarter of an ellipse's perimeter: A E(m), A the longer half axis, m = 1 - (B/A)^2, E the complete elliptic integral
 * of the second kind, by the arithmetic-geometric mean (exact to rounding).
 */
final class EllipseArc {
    private EllipseArc() {}

    static double quarterCm(double oneHalfAxisCm, double otherHalfAxisCm) {
        double longer = Math.max(oneHalfAxisCm, otherHalfAxisCm);
        double shorter = Math.min(oneHalfAxisCm, otherHalfAxisCm);
        if (shorter <= 0) {
            return longer;
        }
        double mean = 1;
        double root = shorter / longer;
        double power = 0.5;
        double sum = 1 - root * root;
        double lost = power * sum;
        while (Math.abs(mean - root) > 1e-15) {
            double half = (mean - root) / 2;
            double next = (mean + root) / 2;
            root = Math.sqrt(mean * root);
            mean = next;
            power *= 2;
            lost += power * half * half;
        }
        return longer * Math.PI / (2 * mean) * (1 - lost);
    }
}
