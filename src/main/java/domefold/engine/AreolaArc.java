package domefold.engine;

/**
 * The incision an areola edge can hold: at most half its circumference.
 *
 * <pre>
 *   longest incision = pi d / 2      d  areola diameter, cm
 *   areola needed    = 2 i / pi      i  incision, cm
 * </pre>
 *
 * The half circle is common practice, no source; the arithmetic is exact.
 */
public final class AreolaArc {
    private AreolaArc() {}

    public static double longestIncisionCm(double areolaCm) {
        return Math.PI * areolaCm / 2;
    }

    public static double areolaNeededCm(double incisionCm) {
        return 2 * incisionCm / Math.PI;
    }

    public static boolean holds(double areolaCm, double incisionCm) {
        return !Exact.above(incisionCm, longestIncisionCm(areolaCm));
    }
}
