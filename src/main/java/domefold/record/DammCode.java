package domefold.record;

/**
 * Damm's check digit, 2004: every single wrong digit and every swap of two neighbours is noticed.
 *
 * <p>Quasigroup of order 10, totally anti-symmetric, zeros on the diagonal; the interim digit starts at 0 and becomes
 * {@code table[interim][digit]}; what is left at the end is the check digit, and a number followed by its check digit
 * ends at 0. Source: H. M. Damm, thesis, Marburg 2004; table in common use, status memory-high, checked by its
 * properties in the tests.
 */
public final class DammCode {
    private static final String[] TABLE = {"0317598642", "7092154863", "4206871359", "1750983426", "6123045978",
        "3674209581", "5869720134", "8945362017", "9438617205", "2581436790"};

    private DammCode() {}

    /**
     * The check digit of a number.
     *
     * @param digits decimal digits only
     */
    public static int digit(String digits) {
        int interim = 0;
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                throw new IllegalArgumentException("not a number: " + digits);
            }
            interim = TABLE[interim].charAt(digit) - '0';
        }
        return interim;
    }

    /** Whether a number that ends in its check digit is as it was issued. */
    public static boolean agrees(String digitsWithCheck) {
        return digit(digitsWithCheck) == 0;
    }
}
