package domefold.shell;

import domefold.outcome.Refusal;
import java.util.OptionalDouble;

/**
 * The answer of {@code domefold shape}: the shell solver alone, every number as computed. Numbers a shell beyond its
 * capacity does not have are empty.
 */
public record ShapeAnswer(
        String format,
        double fullVolumeMl,
        double capacityMl,
        double fillRatio,
        double volumeMl,
        String state,
        OptionalDouble apexHeadCm,
        OptionalDouble baseHeadCm,
        OptionalDouble widthCm,
        OptionalDouble heightCm,
        OptionalDouble contactWidthCm,
        OptionalDouble slackFraction,
        OptionalDouble bandFraction,
        OptionalDouble crimp) {

    /** Format name of the JSON form. */
    public static final String FORMAT = "domefold-shape/1";

    /** The shell at a fill ratio. */
    public static ShapeAnswer atFill(
            double halfWidthCm, double domeCm, double exponent, double fillRatio, OptionalDouble stiffnessCm2) {
        ShellMetric metric = metric(halfWidthCm, domeCm, exponent);
        return answer(metric, fillRatio * metric.fullVolumeMl(), stiffnessCm2);
    }

    /** The shell at a volume. */
    public static ShapeAnswer atVolume(
            double halfWidthCm, double domeCm, double exponent, double volumeMl, OptionalDouble stiffnessCm2) {
        return answer(metric(halfWidthCm, domeCm, exponent), volumeMl, stiffnessCm2);
    }

    private static ShellMetric metric(double halfWidthCm, double domeCm, double exponent) {
        try {
            return ShellMetric.of(halfWidthCm, domeCm, exponent);
        } catch (IllegalArgumentException outside) {
            throw new Refusal("shape-outside", "shape", outside.getMessage());
        }
    }

    private static ShapeAnswer answer(ShellMetric metric, double volumeMl, OptionalDouble stiffnessCm2) {
        if (stiffnessCm2.isPresent() && !(stiffnessCm2.getAsDouble() > 0)) {
            throw new Refusal("shape-stiffness", "stiffness", "a stiffness is above 0 cm2; leave it out for a shell that"
                    + " does not stretch");
        }
        try {
            return of(ShellSolver.atVolume(metric, volumeMl, stiffnessCm2.orElse(Double.POSITIVE_INFINITY)));
        } catch (IllegalArgumentException outside) {
            throw new Refusal("shape-fill", "fill", outside.getMessage());
        }
    }

    static ShapeAnswer of(ShellState state) {
        return new ShapeAnswer(FORMAT, state.fullVolumeMl(), state.capacityMl(), state.fillRatio(), state.volumeMl(),
                state.kind().key(), number(state.apexHeadCm()), number(state.baseHeadCm()), number(state.widthCm()),
                number(state.heightCm()), number(state.contactWidthCm()), number(state.slackFraction()),
                number(state.bandFraction()), number(state.crimp()));
    }

    private static OptionalDouble number(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
