package domefold.followup.survival;

import domefold.outcome.Band;
import java.util.Locale;
import java.util.Optional;

/**
 * A curve read at one time.
 *
 * @param cumulative share failed by then, 0 to 1
 * @param interval 95 % interval of the curve, empty where the data give none
 * @param beyondData true past the last time of the data: drawn hatched, and in words only as "no data after"
 * @param lastTime the last time the data reach
 */
public record CurveValue(double time, double cumulative, Optional<Band> interval, boolean beyondData, double lastTime) {

    /** The value as a sentence part; past the data there is no number in it. */
    public String words() {
        if (beyondData) {
            return "no data after year " + plain(lastTime);
        }
        return plain(Math.rint(cumulative * 1000) / 10) + " % by year " + plain(time);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : String.format(Locale.ROOT, "%.1f", value);
    }
}
