package domefold.engine;

import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Reading;

/**
 * Error SD of a reading.
 *
 * <pre>
 *   s = SD / sqrt(takes)      SD     constant SD-..., in the measure's unit
 *                             takes  how often it was read
 * </pre>
 *
 * A measure without a published or proposed SD counts as read without error, which its row in the evidence says.
 */
public final class ReadingError {
    private ReadingError() {}

    /** The id of the constant that holds the SD of one take, for example {@code SD-BASE-WIDTH}. */
    public static String id(Measure measure) {
        return "SD-" + measure.name().replace('_', '-');
    }

    /** True where an error SD is known or proposed. */
    public static boolean known(Measure measure, Constants constants) {
        return constants.has(id(measure));
    }

    /** Error SD of the reading in its own unit; 0 where none is known. */
    public static double sd(Measure measure, Reading reading, Constants constants) {
        return known(measure, constants) ? constants.value(id(measure)) / Math.sqrt(reading.takes()) : 0;
    }
}
