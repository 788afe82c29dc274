package domefold.evidence;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One number the program uses, with who stands behind it.
 *
 * @param id stable name, for example {@code VOL-12} or {@code SD-BASE-WIDTH}
 * @param quantity what it is, in words
 * @param value the value in use, in {@code unit}
 * @param unit {@code cm}, {@code mL}, {@code %}, {@code ratio}, {@code years} …
 * @param source who published it, or "engineering gate, not published", or "common practice, no source"
 * @param status how it came to us; {@link Status#SURGEON} once overridden
 * @param date when the table row was last looked at, ISO date as text
 * @param note what else a reader should know
 * @param original the constant as shipped, present only when the surgeon overrode it
 * @param override date and reason of the override, present together with {@code original}
 */
public record Constant(
        String id,
        String quantity,
        double value,
        String unit,
        String source,
        Status status,
        String date,
        String note,
        Optional<Constant> original,
        Optional<Override> override) {

    /** Who changed a constant, when and why. */
    public record Override(double value, LocalDate date, String reason) {}

    public Constant {
        if (id.isBlank() || quantity.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("constant '" + id + "' needs an id, a quantity and a source");
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("constant " + id + " is not a finite number");
        }
        if (original.isPresent() != override.isPresent()) {
            throw new IllegalArgumentException("constant " + id + ": an override and its original go together");
        }
    }

    /** This constant with the surgeon's value in its place; the shipped one stays inside. */
    public Constant overriddenBy(Override change) {
        Constant shipped = original.orElse(this);
        return new Constant(id, quantity, change.value(), unit, "surgeon's settings, " + change.date() + ": " + change.reason(),
                Status.SURGEON, change.date().toString(), note, Optional.of(shipped), Optional.of(change));
    }
}
