package domefold.export.fhir;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** The entries of one bundle, each under an address made from the record's digest and its own role. */
final class FhirEntries {
    private final String seed;
    private final ArrayNode entries = FhirJson.list();

    FhirEntries(String seed) {
        this.seed = seed;
    }

    /** The address of the resource with that role. */
    String url(String role) {
        return "urn:uuid:" + UUID.nameUUIDFromBytes((seed + " " + role).getBytes(StandardCharsets.UTF_8));
    }

    /** Adds a resource; gives back its address. */
    String add(String role, ObjectNode resource) {
        String url = url(role);
        ObjectNode entry = FhirJson.object().put("fullUrl", url);
        entry.set("resource", resource);
        entries.add(entry);
        return url;
    }

    ArrayNode asList() {
        return entries;
    }
}
