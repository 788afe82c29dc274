package domefold.practice;

import java.util.List;
import java.util.SplittableRandom;

/** Chance with a memory of its seed only: the same seed throws the same numbers on every machine. */
final class Dice {
    private static final double UNIT = 0x1p-53;
    private final SplittableRandom random;

    Dice(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A number from 0 (included) to 1 (not included). */
    double uniform() {
        return (random.nextLong() >>> 11) * UNIT;
    }

    /** A standard normal number: sqrt(-2 ln u) cos(2 pi v), with u in (0, 1]. */
    double normal() {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
        return radius * StrictMath.cos(2 * StrictMath.PI * uniform());
    }

    /** An exponential number with that mean. */
    double exponential(double mean) {
        return -mean * StrictMath.log(1 - uniform());
    }

    boolean chance(double share) {
        return uniform() < share;
    }

    /** A whole number from 0 to {@code bound - 1}. */
    int below(int bound) {
        return (int) (uniform() * bound);
    }

    <T> T pick(List<T> from) {
        return from.get(below(from.size()));
    }

    /** +1 or -1, evenly. */
    int sign() {
        return chance(0.5) ? 1 : -1;
    }
}
