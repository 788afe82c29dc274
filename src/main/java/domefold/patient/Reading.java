package domefold.patient;

/**
 * One reading.
 *
 * @param value in the unit of its {@link Measure}; the mean where it was taken more than once
 * @param typed the text as typed or as it stood in the file, kept for the record
 * @param readBy by hand or from a surface scan
 * @param takes how many times it was taken, at least 1; the error SD falls with the square root
 */
public record Reading(double value, String typed, ReadBy readBy, int takes) {
    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading is a finite number");
        }
        if (takes < 1) {
            throw new IllegalArgumentException("a reading was taken at least once");
        }
    }

    /** A single reading by hand. */
    public static Reading byHand(double value) {
        return new Reading(value, Double.toString(value), ReadBy.HAND, 1);
    }
}
