package domefold.engine;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Starting volume from the base width.
 *
 * <pre>
 *   V(B) = table row at the half-centimetre; on the line between rows     B  base width, cm
 *   V(B) = V_end (B / B_end)^p   outside the table, an estimate           V  volume, mL
 *                                                                         p  VOL-OUT
 * </pre>
 *
 * The table holds from its first row to its last; the published method defines nothing between rows, so the line is said
 * so (VOL-GAP), and nothing outside, so the estimate is flagged. Source: rows VOL-10.5 to VOL-15.
 */
public final class StartingVolume {
    private final Rows rows;
    private final double power;
    private final Constants constants;

    private StartingVolume(Rows rows, double power, Constants constants) {
        this.rows = rows;
        this.power = power;
        this.constants = constants;
    }

    public static StartingVolume of(Constants constants) {
        return new StartingVolume(Rows.of("VOL", constants), constants.value("VOL-OUT"), constants);
    }

    public Rows rows() {
        return rows;
    }

    /** True where the table has a value, ends included. */
    public boolean inTable(double baseCm) {
        return rows.includes(baseCm);
    }

    /** Table value inside, cube-law estimate outside; continuous at the ends. mL. */
    public double ml(double baseCm) {
        if (baseCm < rows.lowest()) {
            return rows.value(0) * Math.pow(baseCm / rows.lowest(), power);
        }
        if (baseCm > rows.highest()) {
            return rows.value(rows.size() - 1) * Math.pow(baseCm / rows.highest(), power);
        }
        return rows.at(baseCm);
    }

    /** Smallest change of the base width, cm, that brings the volume to at least (or at most) that; NaN if none in reach. */
    public double changeToReachCm(double baseCm, double wantedMl) {
        double now = ml(baseCm);
        if (wantedMl == now) {
            return 0;
        }
        boolean up = wantedMl > now;
        double near = baseCm;
        double far = up ? 4 * rows.highest() : rows.lowest() / 4;
        if (up == ml(far) < wantedMl) {
            return Double.NaN;
        }
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (near + far);
            boolean reached = up ? ml(middle) >= wantedMl : ml(middle) <= wantedMl;
            if (reached) {
                far = middle;
            } else {
                near = middle;
            }
        }
        return far - baseCm;
    }

    /** Lowest and highest volume over a base width read too narrow or too wide by VOL-BAND. */
    public Band overWidthErrorMl(double baseCm) {
        double error = constants.value("VOL-BAND");
        return new Band(ml(baseCm - error), ml(baseCm + error));
    }

    /** The line of working. */
    public Working working(double baseCm) {
        if (inTable(baseCm)) {
            return Working.by(rows.rule(baseCm), "volume for the base width", rows.expression(baseCm), ml(baseCm), "mL");
        }
        int end = baseCm < rows.lowest() ? 0 : rows.size() - 1;
        Constant rule = constants.get("VOL-OUT");
        return Working.by(rule, "volume outside the table, estimate", Figures.ml(rows.value(end)) + " x ("
                + Figures.cm(baseCm) + " / " + Figures.cm(rows.argument(end)) + ")^" + Gate.figure(power),
                ml(baseCm), "mL");
    }
}
