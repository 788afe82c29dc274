package domefold.practice;

/**
 * A mean and an SD, in one unit.
 *
 * <p>With z standard normal: normal, {@code mean + sd z}; log-normal with the same mean and SD,
 * {@code mean exp(s z - s^2 / 2)}, {@code s^2 = ln(1 + (sd / mean)^2)}, for quantities that cannot fall below zero.
 */
record Spread(double mean, double sd) {
    double normal(double z) {
        return mean + sd * z;
    }

    double logNormal(double z) {
        double ratio = sd / mean;
        double variance = StrictMath.log(1 + ratio * ratio);
        return mean * StrictMath.exp(StrictMath.sqrt(variance) * z - variance / 2);
    }
}
