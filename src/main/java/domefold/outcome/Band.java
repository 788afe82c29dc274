package domefold.outcome;

/** A range from low to high, ends included, in whatever unit the field that holds it names. */
public record Band(double low, double high) {
    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a band runs from low to high, got " + low + " to " + high);
        }
    }

    public boolean includes(double value) {
        return low <= value && value <= high;
    }
}
