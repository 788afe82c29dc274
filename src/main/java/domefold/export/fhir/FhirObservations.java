package domefold.export.fhir;

import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Reading;
import domefold.patient.Side;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Readings as Observations: one per reading, with its side where it has one. */
final class FhirObservations {
    private static final String HEIGHT_LOINC = "8302-2";

    private final FhirEntries entries;
    private final Case inputs;
    private final String status;
    private final String author;

    FhirObservations(FhirEntries entries, Case inputs, String status, String author) {
        this.entries = entries;
        this.inputs = inputs;
        this.status = status;
        this.author = author;
    }

    /** Adds the readings of the whole patient and the chest; their addresses. */
    List<String> addOfPatient() {
        List<String> urls = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.of() != Measure.Of.SIDE) {
                inputs.readings(measure, Side.LEFT).get(measure)
                        .ifPresent(reading -> urls.add(add(measure, reading, Optional.empty())));
            }
        }
        return urls;
    }

    /** Adds the readings of one side; their addresses. */
    List<String> addOfSide(Side side) {
        List<String> urls = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.of() == Measure.Of.SIDE) {
                inputs.side(side).readings().get(measure)
                        .ifPresent(reading -> urls.add(add(measure, reading, Optional.of(side))));
            }
        }
        inputs.side(side).ptosis().ifPresent(grade -> urls.add(ptosis(grade, side)));
        return urls;
    }

    private String add(Measure measure, Reading reading, Optional<Side> side) {
        ObjectNode observation = observation(code(measure));
        observation.set("valueQuantity", FhirJson.quantity(value(reading), Unit.of(measure.unit())));
        side.ifPresent(of -> observation.set("bodySite", FhirJson.bodySite(of)));
        String takes = reading.takes() > 1 ? ", mean of " + reading.takes() : "";
        observation.set("method", FhirJson.words("by " + reading.readBy().key().replace('-', ' ') + takes));
        return entries.add(measure.field() + side.map(of -> " " + of.key()).orElse(""), observation);
    }

    private String ptosis(Ptosis grade, Side side) {
        ObjectNode observation = observation(FhirJson.concept(FhirJson.MEASURE, "ptosis", "ptosis", "ptosis"));
        observation.set("valueCodeableConcept", FhirJson.words(grade.key()));
        observation.set("bodySite", FhirJson.bodySite(side));
        return entries.add("ptosis " + side.key(), observation);
    }

    private ObjectNode observation(ObjectNode code) {
        ObjectNode observation = FhirJson.resource("Observation").put("status", status);
        observation.set("code", code);
        observation.set("subject", FhirJson.reference(entries.url("patient")));
        observation.put("effectiveDateTime", inputs.date().toString());
        observation.set("performer", FhirJson.list(FhirJson.object().put("display", author)));
        return observation;
    }

    /** Body height has a code that was read; for the others none was found, so ours and the words stand. */
    private static ObjectNode code(Measure measure) {
        return measure == Measure.HEIGHT
                ? FhirJson.concept(FhirJson.LOINC, HEIGHT_LOINC, "Body height", measure.words())
                : FhirJson.concept(FhirJson.MEASURE, measure.field(), measure.words(), measure.words());
    }

    /** The number as typed where it equals the value, so that 12.0 stays 12.0; otherwise to the thousandth. */
    static BigDecimal value(Reading reading) {
        String typed = reading.typed().strip().replace(',', '.');
        if (typed.matches("[0-9]{1,6}(\\.[0-9]{1,6})?") && Double.parseDouble(typed) == reading.value()) {
            return new BigDecimal(typed);
        }
        BigDecimal value = BigDecimal.valueOf(reading.value()).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }
}
