package domefold.followup.survival;

/** Shares from rates, and from one implant to two. */
public final class Rates {
    private Rates() {}

    /** Share failed after some years at a constant rate per year: 1 - exp(-rate years). */
    public static double shareAtConstantRate(double ratePerYear, double years) {
        return -Math.expm1(-ratePerYear * years);
    }

    /**
     * Share of women with at least one of {@code implants} failed, if implants failed independently: 1 - (1-p)^n. They do
     * not quite (the published share of women is lower), so this is shown as a bound and never replaces a published figure.
     */
    public static double anyOfIndependent(double sharePerImplant, int implants) {
        return 1 - Math.pow(1 - sharePerImplant, implants);
    }
}
