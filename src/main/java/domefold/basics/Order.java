package domefold.basics;

import java.util.Comparator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/** Orders by a number or a word of each; {@link Lists} says why not the JDK's. */
public final class Order {
    private Order() {}

    /** Rising by a number; {@code NaN} last, as {@link Double#compare} has it. */
    public static <T> Comparator<T> byNumber(ToDoubleFunction<? super T> number) {
        return (a, b) -> Double.compare(number.applyAsDouble(a), number.applyAsDouble(b));
    }

    /** Rising by a whole number. */
    public static <T> Comparator<T> byRank(ToIntFunction<? super T> rank) {
        return (a, b) -> Integer.compare(rank.applyAsInt(a), rank.applyAsInt(b));
    }

    /** Rising by something that has an order of its own. */
    public static <T, U extends Comparable<? super U>> Comparator<T> by(Function<? super T, ? extends U> key) {
        return (a, b) -> key.apply(a).compareTo(key.apply(b));
    }

    /** By the first order, and what is equal in it by the second. */
    public static <T> Comparator<T> then(Comparator<T> first, Comparator<? super T> second) {
        return (a, b) -> {
            int order = first.compare(a, b);
            return order != 0 ? order : second.compare(a, b);
        };
    }
}
