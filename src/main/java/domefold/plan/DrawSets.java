package domefold.plan;

/** The draws of one quantity, asked for sets: 64 draws to a word. */
interface DrawSets {
    /** Devices from which ranking the draws first is cheaper than passing over them for each device. */
    int WORTH_RANKING = 12;

    /** The draws at or below the limit. */
    long[] atMost(double limit);

    /** The draws strictly below the limit: what is left over are those at or above it. */
    default long[] below(double limit) {
        return atMost(Math.nextDown(limit));
    }

    static int words(int draws) {
        return (draws + Long.SIZE - 1) / Long.SIZE;
    }

    /** Sets of those draws for that many devices; which way they are found makes no difference to them. */
    static DrawSets of(double[] values, int devices) {
        return devices < WORTH_RANKING ? limit -> passedOver(values, limit) : RankedDraws.of(values);
    }

    private static long[] passedOver(double[] values, double limit) {
        long[] set = new long[words(values.length)];
        for (int i = 0; i < values.length; i++) {
            if (values[i] <= limit) {
                set[i >>> 6] |= 1L << i;
            }
        }
        return set;
    }
}
