package domefold.outcome;

import domefold.evidence.Constant;
import domefold.evidence.Status;

/**
 * One line of the working behind a result.
 *
 * @param quantity what was computed, for example "width ceiling"
 * @param expression the sum with its numbers, for example "12.5 - (1.0 + 2.0) / 2"
 * @param value the result, unrounded; NaN where the result is a word (it then stands in the expression)
 * @param unit unit of the value
 * @param source who stands behind the rule
 * @param status how the rule came to us
 */
public record Working(String quantity, String expression, double value, String unit, String source, Status status) {

    /** A line whose rule is a constant's. */
    public static Working by(Constant rule, String quantity, String expression, double value, String unit) {
        return new Working(quantity, expression, value, unit, rule.id() + ": " + rule.source(), rule.status());
    }
}
