package domefold.bench;

import java.util.List;
import java.util.Locale;

/**
 * What was measured several times.
 *
 * @param min least
 * @param median middle, the upper of two
 * @param max most
 * @param runs how many
 */
record Spread(double min, double median, double max, int runs) {
    static Spread of(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return new Spread(sorted.get(0), sorted.get(sorted.size() / 2), sorted.get(sorted.size() - 1), sorted.size());
    }

    String cells(String unit) {
        return figure(min) + " | " + figure(median) + " | " + figure(max) + " | " + unit + " | " + runs;
    }

    /** Three figures that count. */
    static String figure(double value) {
        if (value == 0) {
            return "0";
        }
        int decimals = Math.max(0, Math.min(6, 2 - (int) Math.floor(Math.log10(Math.abs(value)))));
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
