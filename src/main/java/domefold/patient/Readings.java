package domefold.patient;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The readings of one patient, chest or side, by measure. A value; absent means "not taken". */
public record Readings(Map<Measure, Reading> byMeasure) {
    public static final Readings NONE = new Readings(Map.of());

    public Readings {
        Map<Measure, Reading> copy = new EnumMap<>(Measure.class);
        copy.putAll(byMeasure);
        byMeasure = Collections.unmodifiableMap(copy);
    }

    public Optional<Reading> get(Measure measure) {
        return Optional.ofNullable(byMeasure.get(measure));
    }

    /** The value in the measure's own unit, empty if it was not taken. */
    public OptionalDouble value(Measure measure) {
        Reading reading = byMeasure.get(measure);
        return reading == null ? OptionalDouble.empty() : OptionalDouble.of(reading.value());
    }

    public boolean has(Measure measure) {
        return byMeasure.containsKey(measure);
    }

    public Readings with(Measure measure, Reading reading) {
        Map<Measure, Reading> copy = new EnumMap<>(Measure.class);
        copy.putAll(byMeasure);
        copy.put(measure, reading);
        return new Readings(copy);
    }

    /** Shorthand for a single reading by hand. */
    public Readings with(Measure measure, double value) {
        return with(measure, Reading.byHand(value));
    }

    public Readings without(Measure measure) {
        Map<Measure, Reading> copy = new EnumMap<>(Measure.class);
        copy.putAll(byMeasure);
        copy.remove(measure);
        return new Readings(copy);
    }
}
