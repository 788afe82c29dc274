package domefold.engine;

import domefold.basics.Lists;
import domefold.basics.Order;
import domefold.evidence.Constant;
import domefold.evidence.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * A published table of one number against another, held as constants whose ids end in the argument, for example
 * {@code VOL-12.5}. Between rows the straight line between the neighbours; nothing outside.
 */
public final class Rows {
    private final double[] arguments;
    private final double[] values;
    private final List<Constant> rules;

    private Rows(double[] arguments, double[] values, List<Constant> rules) {
        this.arguments = arguments;
        this.values = values;
        this.rules = rules;
    }

    /** The rows whose id is the stem, a hyphen and a number. */
    public static Rows of(String stem, Constants constants) {
        String before = stem + "-";
        record Pair(double argument, Constant rule) {}
        List<Pair> pairs = new ArrayList<>();
        for (Constant constant : constants.all()) {
            if (constant.id().startsWith(before) && isNumber(constant.id(), before.length()) && Constants.usable(constant)) {
                pairs.add(new Pair(Double.parseDouble(constant.id().substring(before.length())), constant));
            }
        }
        if (pairs.size() < 2) {
            throw new IllegalArgumentException("fewer than two rows " + stem);
        }
        pairs.sort(Order.byNumber(Pair::argument));
        return new Rows(Lists.doubles(pairs, Pair::argument),
                Lists.doubles(pairs, pair -> pair.rule().value()),
                Lists.map(pairs, Pair::rule));
    }

    /** Digits, and perhaps a point and more digits, from there to the end. */
    private static boolean isNumber(String id, int from) {
        int digits = 0;
        boolean point = false;
        for (int i = from; i < id.length(); i++) {
            char c = id.charAt(i);
            if (c >= '0' && c <= '9') {
                digits++;
            } else if (c == '.' && !point && digits > 0) {
                point = true;
                digits = 0;
            } else {
                return false;
            }
        }
        return digits > 0;
    }

    public double lowest() {
        return arguments[0];
    }

    public double highest() {
        return arguments[arguments.length - 1];
    }

    /** True from the first row to the last, both included. */
    public boolean includes(double argument) {
        return !Exact.below(argument, lowest()) && !Exact.above(argument, highest());
    }

    /** Index of the last row at or below the argument, at most the last but one. */
    public int rowBelow(double argument) {
        int i = 0;
        while (i < arguments.length - 2 && !Exact.below(argument, arguments[i + 1])) {
            i++;
        }
        return i;
    }

    /** True if the argument is a row of the table. */
    public boolean isRow(double argument) {
        return nearest(argument) >= 0;
    }

    /** Index of the row with exactly that argument, -1 if there is none. */
    private int nearest(double argument) {
        for (int i = 0; i < arguments.length; i++) {
            if (!Exact.below(argument, arguments[i]) && !Exact.above(argument, arguments[i])) {
                return i;
            }
        }
        return -1;
    }

    /** Table value, on the line between rows; the end value outside. */
    public double at(double argument) {
        if (argument <= lowest()) {
            return values[0];
        }
        if (argument >= highest()) {
            return values[values.length - 1];
        }
        int i = 0;
        while (argument > arguments[i + 1]) {
            i++;
        }
        double share = (argument - arguments[i]) / (arguments[i + 1] - arguments[i]);
        return values[i] + share * (values[i + 1] - values[i]);
    }

    public int size() {
        return arguments.length;
    }

    public double argument(int row) {
        return arguments[row];
    }

    public double value(int row) {
        return values[row];
    }

    public Constant rule(int row) {
        return rules.get(row);
    }

    /** The constant that stands behind the value there; between rows the less certain of the two neighbours. */
    public Constant rule(double argument) {
        int exact = nearest(argument);
        if (exact >= 0) {
            return rules.get(exact);
        }
        if (!includes(argument)) {
            return rules.get(argument < lowest() ? 0 : rules.size() - 1);
        }
        int i = rowBelow(argument);
        return rules.get(i).status().ordinal() >= rules.get(i + 1).status().ordinal() ? rules.get(i) : rules.get(i + 1);
    }

    /** The sum that gives the value, for example {@code 300 + (12.7 - 12.5) / (13 - 12.5) x (325 - 300)}. */
    public String expression(double argument) {
        int exact = nearest(argument);
        if (exact >= 0) {
            return "row " + Gate.figure(arguments[exact]) + ": " + Gate.figure(values[exact]);
        }
        int i = rowBelow(argument);
        return "line between rows: " + Gate.figure(values[i]) + " + (" + Gate.figure(argument) + " - "
                + Gate.figure(arguments[i]) + ") / (" + Gate.figure(arguments[i + 1]) + " - "
                + Gate.figure(arguments[i]) + ") x (" + Gate.figure(values[i + 1]) + " - " + Gate.figure(values[i]) + ")";
    }
}
