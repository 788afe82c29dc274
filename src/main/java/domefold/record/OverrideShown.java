package domefold.record;

import domefold.evidence.Constant;
import java.time.LocalDate;

/**
 * A constant that the surgeon had changed when the plan was computed; {@code shippedValue} and {@code value} in
 * {@code unit}.
 */
public record OverrideShown(
        String id, String quantity, double shippedValue, double value, String unit, LocalDate date, String reason) {

    /**
     * What an overridden constant leaves in the record.
     *
     * @throws java.util.NoSuchElementException if the constant is as shipped
     */
    public static OverrideShown of(Constant constant) {
        Constant.Override change = constant.override().orElseThrow();
        return new OverrideShown(constant.id(), constant.quantity(), constant.original().orElseThrow().value(),
                change.value(), constant.unit(), change.date(), change.reason());
    }
}
