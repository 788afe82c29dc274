package domefold.followup.survival;

/**
 * When one device failed, as far as it is known: between the last look that found it intact and the first that did not.
 *
 * @param lower last time known intact; 0 where it was never seen intact
 * @param upper first time known failed; infinite where it was still intact at the last look; equal to lower when the time is
 *     known exactly
 */
public record Lifetime(double lower, double upper) {
    public Lifetime {
        if (!(lower >= 0 && upper >= lower && upper > 0 && Double.isFinite(lower))) {
            throw new IllegalArgumentException("a lifetime lies between 0 <= lower <= upper, got " + lower + ", " + upper);
        }
        if (lower == 0 && Double.isInfinite(upper)) {
            throw new IllegalArgumentException("never looked at: that says nothing");
        }
    }

    public static Lifetime exact(double time) {
        return new Lifetime(time, time);
    }

    /** Still intact at that time. */
    public static Lifetime intactAt(double time) {
        return new Lifetime(time, Double.POSITIVE_INFINITY);
    }

    public boolean isExact() {
        return lower == upper;
    }

    public boolean isRightCensored() {
        return Double.isInfinite(upper);
    }

    /** The last finite time in it. */
    double last() {
        return isRightCensored() ? lower : upper;
    }
}
