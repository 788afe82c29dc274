package domefold.plan;

import java.util.Arrays;

/**
 * Draws of one quantity in rank order, with the set of draws up to each rank. "Which draws are at least x" is then a
 * look-up and "how many pass every test" a few words of bits, instead of a pass over all draws for every device.
 */
final class RankedDraws implements DrawSets {
    private final double[] sorted;
    /** Row r is the set of the r smallest draws, 64 draws to a word. */
    private final long[][] upTo;

    private RankedDraws(double[] sorted, long[][] upTo) {
        this.sorted = sorted;
        this.upTo = upTo;
    }

    static RankedDraws of(double[] values) {
        int[] order = order(values);
        double[] sorted = new double[values.length];
        long[][] upTo = new long[values.length + 1][];
        upTo[0] = new long[DrawSets.words(values.length)];
        for (int r = 0; r < values.length; r++) {
            sorted[r] = values[order[r]];
            upTo[r + 1] = upTo[r].clone();
            upTo[r + 1][order[r] >>> 6] |= 1L << order[r];
        }
        return new RankedDraws(sorted, upTo);
    }

    @Override
    public long[] atMost(double limit) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return upTo[low];
    }

    /**
     * Indices in rising order of their values. Sorted as whole numbers whose lowest bits carry the index, which is fast
     * and right but for neighbours closer than those bits; one insertion pass puts them right.
     */
    private static int[] order(double[] values) {
        int indexBits = Math.max(1, Integer.SIZE - Integer.numberOfLeadingZeros(values.length - 1));
        long mask = (1L << indexBits) - 1;
        long[] keys = new long[values.length];
        for (int i = 0; i < keys.length; i++) {
            long bits = Double.doubleToLongBits(values[i]);
            long rising = bits ^ ((bits >> 63) & Long.MAX_VALUE);
            keys[i] = (rising & ~mask) | i;
        }
        Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int r = 0; r < order.length; r++) {
            int index = (int) (keys[r] & mask);
            int at = r;
            while (at > 0 && values[order[at - 1]] > values[index]) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = index;
        }
        return order;
    }
}
