package domefold.label;

/**
 * The HIBC check character.
 * <pre>
 *   c = A[(v₁ + v₂ + … + vₙ) mod 43]      A  the alphabet, v  the place of each character in it, the leading + included
 * </pre>
 * Source: vectors of public implementations, see the reference test (read).
 */
public final class Hibc43 {
    static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-. $/+%";

    private Hibc43() {}

    /** The check character of a string that starts with {@code +} and does not yet hold it. */
    public static char of(String withoutCheck) {
        int sum = 0;
        for (int i = 0; i < withoutCheck.length(); i++) {
            int place = ALPHABET.indexOf(withoutCheck.charAt(i));
            if (place < 0) {
                throw new IllegalArgumentException("'" + withoutCheck.charAt(i) + "' does not occur in HIBC");
            }
            sum += place;
        }
        return ALPHABET.charAt(sum % ALPHABET.length());
    }
}
