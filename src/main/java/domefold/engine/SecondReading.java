package domefold.engine;

import domefold.basics.Lists;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Measure;
import domefold.patient.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When to read again: the chance that the true value lies across a threshold that changes the plan.
 *
 * <pre>
 *   chance = P(true &lt; a) + P(true &gt; b)      a, b   the thresholds next below and next above the reading
 *                                             true   normal around the reading with its error SD
 * </pre>
 *
 * Above REREAD-CHANCE a second reading is asked for. Source: our own proposal; POC-04's fixed distance would ask after
 * almost every skin stretch.
 */
public final class SecondReading {
    private static final Map<Measure, List<String>> THRESHOLDS = Map.of(
            Measure.SKIN_STRETCH, List.of("ADJ-01-LIMIT", "ADJ-03-LIMIT", "ADJ-04-LIMIT"),
            Measure.NIPPLE_TO_FOLD_STRETCHED, List.of("CON-02", "ADJ-05-LIMIT"),
            Measure.PARENCHYMAL_FILL, List.of("ADJ-06-LIMIT", "ADJ-07-LIMIT"),
            Measure.UPPER_PINCH, List.of("POC-01"),
            Measure.FOLD_PINCH, List.of("POC-03"),
            Measure.BASE_WIDTH, List.of("CON-01"));

    private SecondReading() {}

    /** Chance, 0 to 1, that the true value lies across a threshold. */
    public static double chanceAcross(Measure measure, Reading reading, Constants constants) {
        double sd = ReadingError.sd(measure, reading, constants);
        if (sd == 0) {
            return 0;
        }
        double below = Double.NEGATIVE_INFINITY;
        double above = Double.POSITIVE_INFINITY;
        for (String id : THRESHOLDS.getOrDefault(measure, List.of())) {
            double threshold = constants.value(id);
            if (threshold <= reading.value()) {
                below = Math.max(below, threshold);
            } else {
                above = Math.min(above, threshold);
            }
        }
        return Normal.below((below - reading.value()) / sd) + Normal.below((reading.value() - above) / sd);
    }

    /** The request, with code {@code second-reading}, where the chance is high enough. */
    public static Optional<Note> advise(Measure measure, Reading reading, Constants constants) {
        double chance = chanceAcross(measure, reading, constants);
        if (!Exact.above(100 * chance, constants.value("REREAD-CHANCE"))) {
            return Optional.empty();
        }
        String thresholds = Lists.joined(THRESHOLDS.get(measure), ", ", id -> Gate.figure(constants.value(id)));
        return Optional.of(new Note("second-reading", "please read the " + measure.words() + " a second time: read as "
                + Gate.figure(reading.value()) + " " + measure.unit() + ", it lies across a threshold (" + thresholds + " "
                + measure.unit() + ") with a chance of " + Figures.of(100 * chance, 0, 0) + " in 100"));
    }
}
