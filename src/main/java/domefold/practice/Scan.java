package domefold.practice;

import domefold.evidence.Constants;
import domefold.patient.Breast;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import java.util.EnumMap;
import java.util.Map;

/** A side as a surface scan would give it: its tape readings moved by the published mean offsets (Steen 2018). */
final class Scan {
    private static final String OFFSET = "SCAN-OFFSET-";
    private final Map<Measure, Double> offsetCm = new EnumMap<>(Measure.class);

    Scan(Constants constants) {
        for (Measure measure : Measure.values()) {
            String id = OFFSET + measure.name().replace('_', '-');
            if (constants.has(id)) {
                offsetCm.put(measure, constants.value(id));
            }
        }
    }

    Breast of(Breast byHand) {
        Map<Measure, Reading> taken = new EnumMap<>(byHand.readings().byMeasure());
        offsetCm.forEach((measure, offset) -> taken.computeIfPresent(measure, (same, reading) -> {
            double value = Ticks.tenths(reading.value() + offset).value();
            return new Reading(value, Ticks.typed(value), ReadBy.SURFACE_SCAN, reading.takes());
        }));
        return new Breast(new Readings(taken), byHand.ptosis());
    }
}
