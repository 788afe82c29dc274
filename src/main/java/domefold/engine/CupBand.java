package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;

/**
 * Cup steps for a volume, as a band and never as a letter.
 *
 * <pre>
 *   steps = V / c      V  volume, mL     c  volume of one step, CUP-04-LOW to CUP-04-HIGH; CUP-01 and CUP-02 measured
 * </pre>
 *
 * @param steps over the published spread of one step
 * @param measuredSteps over the two measured means of one step
 */
public record CupBand(Band steps, Band measuredSteps) {
    public static CupBand of(double volumeMl, Constants constants) {
        return new CupBand(
                new Band(volumeMl / constants.value("CUP-04-HIGH"), volumeMl / constants.value("CUP-04-LOW")),
                new Band(volumeMl / constants.value("CUP-02"), volumeMl / constants.value("CUP-01")));
    }

    /** The sentence, which promises no cup. */
    public String words() {
        return Figures.of(steps.low(), 1, 1) + " to " + Figures.of(steps.high(), 1, 1)
                + " cup steps; published steps differ twofold, so no cup can be promised";
    }
}
