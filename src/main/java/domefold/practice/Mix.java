package domefold.practice;

/**
 * Standard normal numbers that go with others.
 *
 * <p>{@code r z + sqrt(1 - r^2) e} has correlation r with z; with two independent partners
 * {@code a y + b z + sqrt(1 - a^2 - b^2) e}.
 */
final class Mix {
    private Mix() {}

    static double of(double r, double z, double fresh) {
        return r * z + StrictMath.sqrt(1 - r * r) * fresh;
    }

    static double of(double a, double y, double b, double z, double fresh) {
        return a * y + b * z + StrictMath.sqrt(1 - a * a - b * b) * fresh;
    }
}
