package domefold.shell;

import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;

/**
 * A volume in cup steps, as a range only: what is published per step runs from 100 to 200 mL.
 *
 * @param steps fewest (CUP-04-HIGH a step) to most (CUP-04-LOW a step)
 * @param measured by the two measured series (CUP-02, CUP-01)
 * @param text the range with the words that no cup is promised
 */
public record CupSteps(Band steps, Band measured, String text) {
    public static CupSteps of(double volumeMl, Constants constants) {
        Band steps = new Band(volumeMl / constants.value("CUP-04-HIGH"), volumeMl / constants.value("CUP-04-LOW"));
        Band measured = new Band(volumeMl / constants.value("CUP-02"), volumeMl / constants.value("CUP-01"));
        return new CupSteps(steps, measured, "between " + Figures.of(steps.low(), 1, 1) + " and "
                + Figures.of(steps.high(), 1, 1) + " cup steps by what is published per step; bras differ, so no cup can be"
                + " promised");
    }
}
