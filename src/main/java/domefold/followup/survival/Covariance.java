package domefold.followup.survival;

/** Symmetric 2 by 2 covariance of the two parameters of a fit, which the fit names. */
record Covariance(double var1, double cov, double var2) {

    /** Variance of g1 * parameter1 + g2 * parameter2. */
    double of(double g1, double g2) {
        return Math.max(0, g1 * g1 * var1 + 2 * g1 * g2 * cov + g2 * g2 * var2);
    }

    /** The inverse of an information matrix. */
    static Covariance inverse(double i11, double i12, double i22) {
        double det = i11 * i22 - i12 * i12;
        return new Covariance(i22 / det, -i12 / det, i11 / det);
    }
}
