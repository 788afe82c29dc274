package domefold.followup.shown;

import domefold.outcome.Band;

/**
 * Interval of a counted proportion after Wilson (J Am Stat Assoc 1927;22:209-212, from memory, fairly sure).
 *
 * <p>With x of n, p = x/n and z = 1.96: (p + z²/2n ± z sqrt(p(1-p)/n + z²/4n²)) / (1 + z²/n).
 */
public final class Wilson {
    private static final double Z = 1.96;

    private Wilson() {}

    /** The 95 % interval as a share of 1. */
    public static Band interval(int events, int of) {
        if (events < 0 || of < 1 || events > of) {
            throw new IllegalArgumentException(events + " of " + of + " is no proportion");
        }
        double p = (double) events / of;
        double z2n = Z * Z / of;
        double half = Z * Math.sqrt(p * (1 - p) / of + z2n / (4.0 * of));
        return new Band((p + z2n / 2 - half) / (1 + z2n), (p + z2n / 2 + half) / (1 + z2n));
    }
}
