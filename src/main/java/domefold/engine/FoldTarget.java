package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Working;

/**
 * Nipple to new fold on maximal stretch, from the volume.
 *
 * <pre>
 *   T(V) = table row; on the line between rows      T  target, cm      V  volume, mL
 * </pre>
 *
 * Holds from the first row to the last. Outside, the end row is a bound and no target (FLD-OUT). Source: rows FLD-200 to
 * FLD-400.
 */
public final class FoldTarget {
    private final Rows rows;

    private FoldTarget(Rows rows) {
        this.rows = rows;
    }

    public static FoldTarget of(Constants constants) {
        return new FoldTarget(Rows.of("FLD", constants));
    }

    public Rows rows() {
        return rows;
    }

    public boolean inRows(double volumeMl) {
        return rows.includes(volumeMl);
    }

    /** The target inside the rows; outside, the end row, which is only a bound. cm. */
    public double cm(double volumeMl) {
        return rows.at(volumeMl);
    }

    public Working working(double volumeMl) {
        return Working.by(rows.rule(volumeMl), "fold target by volume rows", inRows(volumeMl)
                ? rows.expression(volumeMl)
                : "outside the rows; the end row is only a bound", cm(volumeMl), "cm");
    }
}
