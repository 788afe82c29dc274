package domefold.followup.shown;

import domefold.outcome.Band;
import domefold.outcome.Numbers;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** A rate in whole people out of 100, said both ways round. */
public final class Framing {
    private Framing() {}

    /** "about 19 of 100 have it, 81 of 100 do not". */
    public static String both(double percent) {
        int have = people(percent);
        if (have == 0 && percent > 0) {
            return "fewer than 1 of 100 have it, more than 99 of 100 do not";
        }
        if (have == 100 && percent < 100) {
            return "more than 99 of 100 have it, fewer than 1 of 100 do not";
        }
        return "about " + have + " of 100 have it, " + (100 - have) + " of 100 do not";
    }

    /** The same for a range over cohorts: "about 5 to 19 of 100 have it, 81 to 95 of 100 do not". */
    public static String both(Band percent) {
        int low = people(percent.low());
        int high = people(percent.high());
        if (low == high) {
            return both(percent.high());
        }
        return "about " + low + " to " + high + " of 100 have it, " + (100 - high) + " to " + (100 - low)
                + " of 100 do not";
    }

    /** The same for very rare harms, in whole people of 100 000: "about 3 to 26 of 100 000 have it, 99 974 to 99 997 do not". */
    public static String rare(Band per100000) {
        long low = Math.round(per100000.low());
        long high = Math.round(per100000.high());
        String of = " of " + Numbers.count(RareHarm.DENOMINATOR);
        String have = low == high ? Numbers.count(low) : Numbers.count(low) + " to " + Numbers.count(high);
        long most = RareHarm.DENOMINATOR - low;
        long fewest = RareHarm.DENOMINATOR - high;
        return "about " + have + of + " have it, " + (most == fewest ? Numbers.count(most)
                : Numbers.count(fewest) + " to " + Numbers.count(most)) + " do not";
    }

    /** Whole people of 100, halves upwards. */
    public static int people(double percent) {
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException("a percentage runs from 0 to 100, got " + percent);
        }
        return BigDecimal.valueOf(percent).setScale(0, RoundingMode.HALF_UP).intValueExact();
    }
}
