package domefold.shell;

import domefold.evidence.Constants;
import java.util.OptionalDouble;

/** Bust circumference gained by the same volume on both sides: BUS-01-SLOPE V + BUS-01-OFFSET, nothing outside its data. */
public final class BustGain {
    private BustGain() {}

    /** Gain in cm; empty outside BUS-03-LOW to BUS-03-HIGH, ends included. */
    public static OptionalDouble gainCm(double volumeMl, Constants constants) {
        return volumeMl < constants.value("BUS-03-LOW") || volumeMl > constants.value("BUS-03-HIGH")
                ? OptionalDouble.empty()
                : OptionalDouble.of(constants.value("BUS-01-SLOPE") * volumeMl + constants.value("BUS-01-OFFSET"));
    }
}
