package domefold.export.fhir;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.device.Device;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.record.Settlement;
import domefold.sheet.DeviceWords;
import java.math.BigDecimal;

/**
 * What was settled, as one DeviceRequest per side, the pair tied by a group identifier. Shape: HL7's own pair of left and
 * right lens requests. The intent is "plan": ordering is a person's act and an event of its own.
 */
final class FhirOrders {
    private final FhirEntries entries;
    private final ConsultRecord record;

    FhirOrders(FhirEntries entries, ConsultRecord record) {
        this.entries = entries;
        this.record = record;
    }

    String add(Settlement settled) {
        String side = settled.side().name();
        String group = record.id() + "/v" + record.version();
        ObjectNode request = FhirJson.resource("DeviceRequest");
        request.set("identifier", FhirJson.list(FhirJson.identifier(FhirJson.ORDER, group + "/" + settled.side().key())));
        request.set("groupIdentifier", FhirJson.identifier(FhirJson.ORDER, group));
        request.put("status", status()).put("intent", "plan");
        Device device = settled.device();
        request.set("codeCodeableConcept", FhirJson.concept(FhirJson.ORDER_CODE, device.id(), DeviceWords.kind(device),
                device.id() + ", " + DeviceWords.kind(device)));
        ArrayNode parameters = FhirJson.list();
        ObjectNode site = FhirJson.object();
        site.set("code", FhirJson.words("body site"));
        site.set("valueCodeableConcept", FhirJson.bodySite(settled.side()));
        parameters.add(site);
        parameter(parameters, "listedVolumeMl", "listed volume", device.nominalMl(), Unit.ML);
        parameter(parameters, "fillMl", "fill", settled.fillMl(), Unit.ML);
        parameter(parameters, "widthCm", "width", device.widthCm(), Unit.CM);
        parameter(parameters, "heightCm", "height", device.heightCm(), Unit.CM);
        parameter(parameters, "projectionCm", "projection", device.projectionCm(), Unit.CM);
        request.set("parameter", parameters);
        request.set("subject", FhirJson.reference(entries.url("patient")));
        request.put("authoredOn", record.authorship().savedAt().toString());
        request.set("note", FhirJson.list(FhirJson.object().put("text", side + ": " + neighbours(settled))));
        return entries.add("device " + settled.side().key(), request);
    }

    private String status() {
        return record.status() == RecordStatus.DRAFT ? "draft"
                : record.status() == RecordStatus.ENTERED_IN_ERROR ? "entered-in-error" : "active";
    }

    private static void parameter(ArrayNode parameters, String code, String words, double value, Unit unit) {
        ObjectNode parameter = FhirJson.object();
        parameter.set("code", FhirJson.concept(FhirJson.PARAMETER, code, words, words));
        BigDecimal exact = BigDecimal.valueOf(value);
        parameter.set("valueQuantity", FhirJson.quantity(unit == Unit.ML && exact.stripTrailingZeros().scale() <= 0
                ? exact.setScale(0) : exact, unit));
        parameters.add(parameter);
    }

    private static String neighbours(Settlement settled) {
        return settled.neighbours().isEmpty() ? "no other size to have in the room"
                : "sizes to have in the room beside it: " + String.join("; ", settled.neighbours().stream()
                        .map(near -> near.id() + ", " + DeviceWords.exactMl(near.nominalMl())).toList());
    }
}
