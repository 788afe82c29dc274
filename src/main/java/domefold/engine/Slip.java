package domefold.engine;

import domefold.outcome.Figures;
import domefold.patient.Measure;
import java.util.Optional;

/**
 * The slip of hand that an impossible or unusual reading looks like. It is named and never applied: the surgeon types
 * the reading again.
 */
final class Slip {
    /** Centimetres in an inch, exact by definition. */
    private static final double CM_PER_INCH = 2.54;
    /** Kilograms in a pound, exact by definition. */
    private static final double KG_PER_POUND = 0.45359237;
    private static final double TEN = 10;
    private static final double HUNDRED = 100;

    private Slip() {}

    /** A question naming the likely slip, if one of the usual slips would make the reading a usual one. */
    static Optional<String> likely(Gate gate, double value) {
        Optional<String> slip = ofUnit(gate, value);
        boolean low = gate.measure() == Measure.HEIGHT && Exact.below(value, gate.usual().low())
                && meant(gate, value * HUNDRED, "").isEmpty();
        boolean high = gate.measure() == Measure.WEIGHT && Exact.above(value, gate.usual().high());
        if (!low && !high) {
            return slip;
        }
        return Optional.of(slip.map(question -> question + " Or were").orElse("were") + " height and weight exchanged?");
    }

    private static Optional<String> ofUnit(Gate gate, double value) {
        String unit = gate.measure().unit();
        if (unit.equals("cm")) {
            return first(gate,
                    meant(gate, value / TEN, ""),
                    meant(gate, value * CM_PER_INCH, " (the value reads like inches)"),
                    meant(gate, value * HUNDRED, " (the value reads like metres)"),
                    meant(gate, value * TEN, ""));
        }
        if (unit.equals("kg")) {
            return first(gate, meant(gate, value * KG_PER_POUND, " (the value reads like pounds)"),
                    meant(gate, value / TEN, ""));
        }
        if (unit.equals("%")) {
            return value > 0 && value <= 1 ? meant(gate, value * HUNDRED, " (the value reads like a share of 1)")
                    : Optional.empty();
        }
        return meant(gate, value / TEN, "");
    }

    private static Optional<String> meant(Gate gate, double value, String why) {
        boolean usual = !Exact.below(value, gate.usual().low()) && !Exact.above(value, gate.usual().high());
        return usual ? Optional.of("did you mean " + Figures.of(value, 0, 1) + why + "?") : Optional.empty();
    }

    @SafeVarargs
    private static Optional<String> first(Gate gate, Optional<String>... slips) {
        for (Optional<String> slip : slips) {
            if (slip.isPresent()) {
                return slip;
            }
        }
        return Optional.empty();
    }
}
