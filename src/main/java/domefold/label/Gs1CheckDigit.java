package domefold.label;

/**
 * The GS1 check digit.
 * <pre>
 *   c = (10 - (3·d₁ + 1·d₂ + 3·d₃ + …) mod 10) mod 10     d₁ the last digit before the check digit, counting leftwards
 * </pre>
 * Source: GS1 syntax dictionary, checksum linter (read). It finds every single wrong digit and misses swapped neighbours
 * that differ by 5, so an identifier is held against the device list as well.
 */
public final class Gs1CheckDigit {
    private static final int ODD_WEIGHT = 3;

    private Gs1CheckDigit() {}

    /** The check digit that belongs behind those digits. */
    public static int of(String digitsWithout) {
        int sum = 0;
        for (int i = 0; i < digitsWithout.length(); i++) {
            int digit = digitsWithout.charAt(digitsWithout.length() - 1 - i) - '0';
            if (digit < 0 || digit > 9) {
                throw new IllegalArgumentException("digits only, got '" + digitsWithout + "'");
            }
            sum += i % 2 == 0 ? ODD_WEIGHT * digit : digit;
        }
        return (10 - sum % 10) % 10;
    }

    /** Whether the last digit is the check digit of those before it. */
    public static boolean holds(String digits) {
        int last = digits.length() - 1;
        return last > 0 && of(digits.substring(0, last)) == digits.charAt(last) - '0';
    }
}
