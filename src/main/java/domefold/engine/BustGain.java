package domefold.engine;

import domefold.evidence.Constants;
import java.util.OptionalDouble;

/**
 * Gain in bust circumference, same volume on both sides.
 *
 * <pre>
 *   G = a V + b       G  gain, cm     V  volume of each device, mL     a  BUS-01-SLOPE     b  BUS-01-OFFSET
 *   V = c G + d       the published inverse                            c  BUS-02-SLOPE     d  BUS-02-OFFSET
 * </pre>
 *
 * Holds from BUS-03-LOW to BUS-03-HIGH, ends included; nothing outside. Source: Karabulut and others, median regression,
 * fit quality unknown.
 */
public final class BustGain {
    private BustGain() {}

    public static boolean inData(double volumeMl, Constants constants) {
        return !Exact.below(volumeMl, constants.value("BUS-03-LOW"))
                && !Exact.above(volumeMl, constants.value("BUS-03-HIGH"));
    }

    /** Gain in cm, empty outside the data. */
    public static OptionalDouble cm(double volumeMl, Constants constants) {
        return inData(volumeMl, constants)
                ? OptionalDouble.of(constants.value("BUS-01-SLOPE") * volumeMl + constants.value("BUS-01-OFFSET"))
                : OptionalDouble.empty();
    }

    /** Volume of each device for a wished gain, mL, empty where it would leave the data. */
    public static OptionalDouble volumeMl(double gainCm, Constants constants) {
        double volume = constants.value("BUS-02-SLOPE") * gainCm + constants.value("BUS-02-OFFSET");
        return inData(volume, constants) ? OptionalDouble.of(volume) : OptionalDouble.empty();
    }
}
