package domefold.shell;

/** The opening along the areola's edge: at most half its circumference, pi d / 2 (common practice, no source). */
public final class Areola {
    private Areola() {}

    /** Longest opening along half the edge. */
    public static double longestCm(double areolaCm) {
        return Math.PI * areolaCm / 2;
    }

    /** Areola that an opening of that length needs. */
    public static double neededCm(double openingCm) {
        return 2 * openingCm / Math.PI;
    }
}
