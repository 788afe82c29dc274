package domefold.practice;

import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.Optional;

/**
 * A slip at its place: planted, found by the check, or named by the fellow.
 *
 * @param slip what happened
 * @param side on which side, empty where it is about the whole patient
 * @param measure in which reading, empty where it is about more than one
 */
public record Slipped(ReadingSlip slip, Optional<Side> side, Optional<Measure> measure) {
    public static Slipped whole(ReadingSlip slip) {
        return new Slipped(slip, Optional.empty(), Optional.empty());
    }

    public static Slipped on(Side side, ReadingSlip slip) {
        return new Slipped(slip, Optional.of(side), Optional.empty());
    }

    public static Slipped in(Side side, Measure measure, ReadingSlip slip) {
        return new Slipped(slip, Optional.of(side), Optional.of(measure));
    }

    /** The slip and its place in words. */
    public String text() {
        return slip.words() + side.map(one -> ", " + one.name()).orElse("")
                + measure.map(one -> ", " + one.words()).orElse("");
    }
}
