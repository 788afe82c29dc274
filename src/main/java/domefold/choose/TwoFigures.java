package domefold.choose;

import domefold.outcome.Band;
import domefold.outcome.Numbers;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.IntFunction;

/** Two figures side by side, printed with as many decimals as it takes to see that they differ, and at most two more. */
record TwoFigures(String before, String after, boolean changed) {
    private static final int MORE_DECIMALS = 2;
    /** The dust that {@link domefold.engine.Exact} allows. */
    private static final double DUST = 1e-9;

    static TwoFigures of(OptionalDouble before, OptionalDouble after, int decimals, String unit) {
        return of(before, after, decimals, places -> value -> unit(Numbers.plain(value, places), unit));
    }

    static TwoFigures signed(OptionalDouble before, OptionalDouble after, int decimals, String unit) {
        return of(before, after, decimals, places -> value -> unit(Numbers.signed(value, places), unit));
    }

    static TwoFigures of(Optional<Band> before, Optional<Band> after, int decimals, String unit) {
        boolean same = before.isPresent() == after.isPresent() && (before.isEmpty()
                || near(before.get().low(), after.get().low()) && near(before.get().high(), after.get().high()));
        IntFunction<Function<Optional<Band>, String>> words = places ->
                band -> band.map(b -> unit(Numbers.range(b, places), unit)).orElse(Numbers.NONE);
        return pair(decimals, same, places -> words.apply(places).apply(before), places -> words.apply(places).apply(after));
    }

    private static TwoFigures of(OptionalDouble before, OptionalDouble after, int decimals,
            IntFunction<DoubleFunction<String>> words) {
        boolean same = before.isPresent() == after.isPresent()
                && (before.isEmpty() || near(before.getAsDouble(), after.getAsDouble()));
        return pair(decimals, same,
                places -> before.isEmpty() ? Numbers.NONE : words.apply(places).apply(before.getAsDouble()),
                places -> after.isEmpty() ? Numbers.NONE : words.apply(places).apply(after.getAsDouble()));
    }

    private static TwoFigures pair(int decimals, boolean same, IntFunction<String> before, IntFunction<String> after) {
        int places = decimals;
        while (!same && places < decimals + MORE_DECIMALS && before.apply(places).equals(after.apply(places))) {
            places++;
        }
        return new TwoFigures(before.apply(places), after.apply(places), !same);
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= DUST;
    }

    private static String unit(String number, String unit) {
        return unit.isEmpty() || number.equals(Numbers.NONE) ? number : number + " " + unit;
    }

    Difference.Row row(String group, String label) {
        return new Difference.Row(group, label, before, after, changed);
    }
}
