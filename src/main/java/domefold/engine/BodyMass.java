package domefold.engine;

import domefold.evidence.Evidence;
import domefold.evidence.Table;
import domefold.outcome.Band;

/**
 * Body mass index and its gate.
 *
 * <pre>
 *   I = W / H^2      W  weight, kg     H  height, m
 * </pre>
 *
 * @param usual outside this: query
 * @param possible outside this: refuse
 */
public record BodyMass(Band usual, Band possible) {
    private static final double CM_PER_M = 100;

    public static double index(double heightCm, double weightKg) {
        double heightM = heightCm / CM_PER_M;
        return weightKg / (heightM * heightM);
    }

    /** The gate from the measurements table. */
    public static BodyMass of(Evidence evidence) {
        for (Table.Row row : evidence.table("measurements").rows()) {
            if (row.text("id").equals("bmi")) {
                return new BodyMass(
                        new Band(row.number("query_low").orElseThrow(), row.number("query_high").orElseThrow()),
                        new Band(row.number("refuse_low").orElseThrow(), row.number("refuse_high").orElseThrow()));
            }
        }
        throw new IllegalArgumentException("the measurements table has no row bmi");
    }
}
