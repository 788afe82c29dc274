package domefold.outcome;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers as people read them: with a unit, in one locale, never a negative zero. Decisions are taken on the unrounded
 * values before they come here.
 *
 * <p>Ranges take an en dash, margins a true minus; where a terminal cannot show those, the canvas spells them in ASCII.
 */
public final class Numbers {
    /** What stands where there is no number. */
    public static final String NONE = "–";

    private static final String MINUS = "−";
    private static final int FEWEST_FOR_GROUPS = 10_000;

    private Numbers() {}

    /** A length to the millimetre, for example {@code 12.4 cm}. */
    public static String cm(double lengthCm) {
        return withUnit(plain(lengthCm, 1), "cm");
    }

    /** A volume to the millilitre, for example {@code 300 mL}. */
    public static String ml(double volumeMl) {
        return withUnit(plain(volumeMl, 0), "mL");
    }

    /** A range of lengths, for example {@code 9.5–11.0 cm}; one length where both print alike. */
    public static String cm(Band bandCm) {
        return withUnit(range(bandCm, 1), "cm");
    }

    /** A range of volumes, for example {@code 265–330 mL}; one volume where both print alike. */
    public static String ml(Band bandMl) {
        return withUnit(range(bandMl, 0), "mL");
    }

    /** A signed length, for example {@code +0.2 cm} or {@code −0.3 cm}; {@code 0.0 cm} has no sign. */
    public static String marginCm(double lengthCm) {
        return withUnit(signed(lengthCm, 1), "cm");
    }

    /** A signed volume, for example {@code +25 mL}. */
    public static String marginMl(double volumeMl) {
        return withUnit(signed(volumeMl, 0), "mL");
    }

    /** A length with its band, for example {@code 11.0 ± 0.6 cm}. */
    public static String cmWithin(double lengthCm, double bandCm) {
        return withUnit(plain(lengthCm, 1) + " ± " + plain(Math.abs(bandCm), 1), "cm");
    }

    /** A share of one as a percentage, for example {@code 46 %}. */
    public static String percent(double share) {
        return withUnit(plain(100 * share, 0), "%");
    }

    /** A number of people in a hundred, with a decimal below one, for example {@code 9} or {@code 0.4}. */
    public static String per100(double per100) {
        return plain(per100, Math.abs(per100) < 1 && per100 != 0 ? 1 : 0);
    }

    /** A range in the given decimals without a unit, for example {@code 265–330}. */
    public static String range(Band band, int decimals) {
        String low = plain(band.low(), decimals);
        String high = plain(band.high(), decimals);
        if (low.equals(high)) {
            return low;
        }
        return low + (low.startsWith(MINUS) || high.startsWith(MINUS) ? " to " : "–") + high;
    }

    /** A number with that many decimals and a sign unless it prints as zero. */
    public static String signed(double value, int decimals) {
        String plain = plain(value, decimals);
        boolean positive = value > 0 && !isZero(plain) && !plain.equals(NONE);
        return positive ? "+" + plain : plain;
    }

    /**
     * A number with that many decimals, halves away from zero, a true minus, no negative zero; {@link #NONE} for what is no
     * number. The same digits as {@code %.nf}, without taking a format apart for each.
     */
    public static String plain(double value, int decimals) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return NONE;
        }
        String digits = new BigDecimal(Double.toString(Math.abs(value))).setScale(Math.max(0, decimals), RoundingMode.HALF_UP)
                .toPlainString();
        return (value < 0 && !isZero(digits) ? MINUS : "") + digits;
    }

    /** A count with groups of three from ten thousand on, for example {@code 1024} or {@code 12 000}. */
    public static String count(long count) {
        return Math.abs(count) < FEWEST_FOR_GROUPS ? Long.toString(count)
                : String.format(Locale.ROOT, "%,d", count).replace(',', ' ');
    }

    /** A count with its word, for example {@code 1 device} or {@code 14 devices}. */
    public static String count(long count, String one, String many) {
        return count(count) + " " + (count == 1 ? one : many);
    }

    private static String withUnit(String number, String unit) {
        return number.equals(NONE) ? NONE : number + " " + unit;
    }

    private static boolean isZero(String digits) {
        for (int i = 0; i < digits.length(); i++) {
            if (digits.charAt(i) >= '1' && digits.charAt(i) <= '9') {
                return false;
            }
        }
        return true;
    }
}
