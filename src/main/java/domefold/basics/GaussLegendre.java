package domefold.basics;

import java.util.function.DoubleUnaryOperator;

/** Gauss-Legendre quadrature with a fixed number of points; nodes by Newton on the Legendre recurrence. */
public final class GaussLegendre {
    public static final GaussLegendre FIVE = new GaussLegendre(5);
    public static final GaussLegendre THIRTY = new GaussLegendre(30);

    private final double[] node;
    private final double[] weight;

    public GaussLegendre(int points) {
        node = new double[points];
        weight = new double[points];
        for (int i = 0; i < points; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (points + 0.5));
            double slope = 0;
            for (int round = 0; round < 20; round++) {
                double before = 1;
                double value = x;
                for (int j = 2; j <= points; j++) {
                    double next = ((2 * j - 1) * x * value - (j - 1) * before) / j;
                    before = value;
                    value = next;
                }
                slope = points * (x * value - before) / (x * x - 1);
                x -= value / slope;
            }
            node[i] = x;
            weight[i] = 2 / ((1 - x * x) * slope * slope);
        }
    }

    public int points() {
        return node.length;
    }

    /** Node i scaled to the interval. */
    public double at(int i, double from, double to) {
        return 0.5 * (from + to) + 0.5 * (to - from) * node[i];
    }

    /** Weight i scaled to the interval. */
    public double weight(int i, double from, double to) {
        return 0.5 * (to - from) * weight[i];
    }

    public double integrate(DoubleUnaryOperator f, double from, double to) {
        double sum = 0;
        for (int i = 0; i < node.length; i++) {
            sum += weight[i] * f.applyAsDouble(at(i, from, to));
        }
        return 0.5 * (to - from) * sum;
    }
}
