package domefold.basics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What streams do, as plain loops. The first stream of a process costs it some milliseconds, its first search or sum some more,
 * which is much of a plan's whole time; elsewhere streams are as good. No list that is given is changed, none that is returned can be.
 */
public final class Lists {
    private Lists() {}

    /** What each becomes, in order. */
    public static <T, R> List<R> map(Collection<T> items, Function<? super T, ? extends R> becomes) {
        List<R> out = new ArrayList<>(items.size());
        for (T item : items) {
            out.add(becomes.apply(item));
        }
        return Collections.unmodifiableList(out);
    }

    /** Those that hold, in order. */
    public static <T> List<T> where(Collection<T> items, Predicate<? super T> holds) {
        List<T> out = new ArrayList<>();
        for (T item : items) {
            if (holds.test(item)) {
                out.add(item);
            }
        }
        return Collections.unmodifiableList(out);
    }

    /** The first that holds. */
    public static <T> Optional<T> first(Collection<T> items, Predicate<? super T> holds) {
        for (T item : items) {
            if (holds.test(item)) {
                return Optional.of(item);
            }
        }
        return Optional.empty();
    }

    /** True where one of them holds; false where there is none. */
    public static <T> boolean any(Collection<T> items, Predicate<? super T> holds) {
        for (T item : items) {
            if (holds.test(item)) {
                return true;
            }
        }
        return false;
    }

    /** True where each of them holds; true where there is none. */
    public static <T> boolean all(Collection<T> items, Predicate<? super T> holds) {
        for (T item : items) {
            if (!holds.test(item)) {
                return false;
            }
        }
        return true;
    }

    /** The words of each with the same text between two. */
    public static <T> String joined(Collection<T> items, String between, Function<? super T, String> words) {
        return String.join(between, map(items, words));
    }

    /** The number of each, in order. */
    public static <T> double[] doubles(Collection<T> items, ToDoubleFunction<? super T> number) {
        double[] out = new double[items.size()];
        int i = 0;
        for (T item : items) {
            out[i++] = number.applyAsDouble(item);
        }
        return out;
    }

    /**
     * The sum of the numbers, with what rounding lost on the way added at the end (Kahan), as the JDK's streams have it. Nothing can
     * be said of what an infinite sum lost; it stays infinite.
     */
    public static <T> double sum(Collection<T> items, ToDoubleFunction<? super T> number) {
        double sum = 0;
        double lost = 0;
        double plain = 0;
        for (T item : items) {
            double value = number.applyAsDouble(item);
            plain += value;
            double wanted = value - lost;
            double next = sum + wanted;
            lost = next - sum - wanted;
            sum = next;
        }
        return Double.isInfinite(plain) && Double.isNaN(sum - lost) ? plain : sum - lost;
    }

    /** The smallest number of any; infinity where there is none. */
    public static <T> double least(Collection<T> items, ToDoubleFunction<? super T> number) {
        double least = Double.POSITIVE_INFINITY;
        for (T item : items) {
            least = Math.min(least, number.applyAsDouble(item));
        }
        return least;
    }

    /** The largest number of any; minus infinity where there is none. */
    public static <T> double most(Collection<T> items, ToDoubleFunction<? super T> number) {
        return -least(items, item -> -number.applyAsDouble(item));
    }
}
