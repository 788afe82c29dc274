package domefold.plan;

import java.util.Arrays;

/**
 * Draws of one quantity in rank order, with the sets of draws up to some ranks. "Which draws are at least x" is then a
 * look-up and "how many pass every test" a few words of bits, instead of a pass over all draws for every device.
 */
final class RankedDraws implements DrawSets {
    /** Ranks from one kept set to the next: keeping every one takes longer than making a few where they are asked for. */
    private static final int STRIDE = 16;

    private final double[] sorted;
    private final int[] order;
    /** One after the other, 64 draws to a word: the sets of the 0, STRIDE, 2 STRIDE ... smallest draws. */
    private final long[] kept;
    private final int words;

    private RankedDraws(double[] sorted, int[] order, long[] kept, int words) {
        this.sorted = sorted;
        this.order = order;
        this.kept = kept;
        this.words = words;
    }

    static RankedDraws of(double[] values) {
        int[] order = order(values);
        double[] sorted = new double[values.length];
        int words = DrawSets.words(values.length);
        long[] kept = new long[(values.length / STRIDE + 1) * words];
        long[] set = new long[words];
        for (int r = 0; r < values.length; r++) {
            int index = order[r];
            sorted[r] = values[index];
            set[index >>> 6] |= 1L << index;
            if ((r + 1) % STRIDE == 0) {
                System.arraycopy(set, 0, kept, (r + 1) / STRIDE * words, words);
            }
        }
        return new RankedDraws(sorted, order, kept, words);
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
        return smallest(low);
    }

    /** The set of that many smallest draws. */
    private long[] smallest(int count) {
        int from = count / STRIDE;
        long[] set = Arrays.copyOfRange(kept, from * words, (from + 1) * words);
        for (int r = from * STRIDE; r < count; r++) {
            set[order[r] >>> 6] |= 1L << order[r];
        }
        return set;
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
