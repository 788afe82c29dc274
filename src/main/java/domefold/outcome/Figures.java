package domefold.outcome;

/** Numbers as a person reads them, the same on every machine: a full stop, no grouping, no trailing zeros beyond the first decimal. */
public final class Figures {
    private static final int DECIMALS_AT_MOST = 6;

    private Figures() {}

    /** A length or pinch in cm: one to two decimals, for example {@code 12.5} or {@code 12.25}. */
    public static String cm(double valueCm) {
        return of(valueCm, 1, 2);
    }

    /** A volume in mL: no decimals unless there are any, for example {@code 300} or {@code 312.5}. */
    public static String ml(double valueMl) {
        return of(valueMl, 0, 1);
    }

    /** A bare figure with at least and at most that many decimals, halves rounded away from zero. */
    public static String of(double value, int least, int most) {
        if (!Double.isFinite(value) || Math.abs(value) >= 1e12) {
            return Double.toString(value);
        }
        int decimals = Math.min(most, DECIMALS_AT_MOST);
        long scale = 1;
        for (int i = 0; i < decimals; i++) {
            scale *= 10;
        }
        long scaled = Math.round(Math.abs(value) * scale);
        StringBuilder text = new StringBuilder(16);
        if (value < 0 && scaled != 0) {
            text.append('-');
        }
        text.append(scaled / scale);
        StringBuilder fraction = new StringBuilder(Long.toString(scale + scaled % scale).substring(1));
        while (fraction.length() > least && fraction.charAt(fraction.length() - 1) == '0') {
            fraction.setLength(fraction.length() - 1);
        }
        return fraction.length() == 0 ? text.toString() : text.append('.').append(fraction).toString();
    }
}
