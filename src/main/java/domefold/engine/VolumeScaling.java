package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Two yardsticks beside the volume table, shown and never used.
 *
 * <pre>
 *   straight line   V = V1 + (B - B1) / (B2 - B1) (V2 - V1)     1, 2  first and last row of the table
 *   cube            V = V1 (B / B1)^p                           p     VOL-OUT
 * </pre>
 *
 * A critic calls the table a straight line, and points out that same proportions grow with the cube (LIM-18).
 */
public final class VolumeScaling {
    private VolumeScaling() {}

    /** The straight line between the end rows, mL. */
    public static double straightLineMl(double baseCm, Constants constants) {
        Rows rows = Rows.of("VOL", constants);
        int last = rows.size() - 1;
        return rows.value(0) + (baseCm - rows.argument(0)) / (rows.argument(last) - rows.argument(0))
                * (rows.value(last) - rows.value(0));
    }

    /** Same proportions as the first row, mL. */
    public static double cubeMl(double baseCm, Constants constants) {
        Rows rows = Rows.of("VOL", constants);
        return rows.value(0) * Math.pow(baseCm / rows.argument(0), constants.value("VOL-OUT"));
    }

    public static Working cubeWorking(double baseCm, Constants constants) {
        Rows rows = Rows.of("VOL", constants);
        return Working.by(constants.get("VOL-OUT"), "same proportions as the first row, for comparison",
                Figures.ml(rows.value(0)) + " x (" + Figures.cm(baseCm) + " / " + Figures.cm(rows.argument(0)) + ")^"
                        + Gate.figure(constants.value("VOL-OUT")), cubeMl(baseCm, constants), "mL");
    }
}
