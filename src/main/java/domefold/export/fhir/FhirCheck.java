package domefold.export.fhir;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a FHIR validator lets through and a patient would pay for: a side's code, its words and its section disagree; a unit's
 * words and its code disagree; a reference leads nowhere; two subjects; two entries under one address.
 */
public final class FhirCheck {
    private final JsonNode bundle;
    private final Map<String, JsonNode> byUrl = new HashMap<>();
    private final List<String> problems = new ArrayList<>();

    private FhirCheck(JsonNode bundle) {
        this.bundle = bundle;
    }

    /** What is wrong with a bundle, in words; empty for a sound one. */
    public static List<String> problems(JsonNode bundle) {
        FhirCheck check = new FhirCheck(bundle);
        check.document();
        check.addresses();
        check.walk(bundle, "Bundle");
        check.subjects();
        check.sections();
        check.orders();
        return List.copyOf(check.problems);
    }

    private void document() {
        require(bundle.path("type").asText().equals("document"), "the bundle is no document");
        require(bundle.path("identifier").hasNonNull("system") && bundle.path("identifier").hasNonNull("value"),
                "the bundle has no identifier");
        require(bundle.hasNonNull("timestamp"), "the bundle has no timestamp");
        require(type(bundle.path("entry").path(0).path("resource")).equals("Composition"),
                "the first entry is no Composition");
    }

    private void addresses() {
        for (JsonNode entry : bundle.path("entry")) {
            String url = entry.path("fullUrl").asText();
            require(byUrl.put(url, entry.path("resource")) == null, "two entries are called " + url);
        }
    }

    private void walk(JsonNode node, String path) {
        if (node.isObject()) {
            if (node.has("reference") && node.get("reference").isTextual()) {
                require(byUrl.containsKey(node.get("reference").asText()),
                        path + " points at " + node.get("reference").asText() + ", which is not in the bundle");
            }
            if (node.path("system").asText().equals(Unit.SYSTEM)) {
                unit(node, path);
            }
            if (node.has("coding")) {
                site(node, path);
            }
            node.fields().forEachRemaining(field -> walk(field.getValue(), path + "." + field.getKey()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                walk(node.get(i), path + "[" + i + "]");
            }
        }
    }

    private void unit(JsonNode quantity, String path) {
        for (Unit unit : Unit.values()) {
            if (unit.code().equals(quantity.path("code").asText())) {
                require(unit.words().equals(quantity.path("unit").asText()), path + " reads '"
                        + quantity.path("unit").asText() + "' under the code for " + unit.words());
                return;
            }
        }
        problems.add(path + " has the unit code '" + quantity.path("code").asText() + "', which does not leave this house");
    }

    private void site(JsonNode concept, String path) {
        for (JsonNode coding : concept.path("coding")) {
            if (!coding.path("system").asText().equals(BodySite.SYSTEM)) {
                continue;
            }
            BodySite found = null;
            for (BodySite site : BodySite.values()) {
                found = site.code().equals(coding.path("code").asText()) ? site : found;
            }
            if (found == null) {
                problems.add(path + " has the body site " + coding.path("code").asText() + ", which is neither side");
                continue;
            }
            require(found.display().equals(coding.path("display").asText()),
                    path + " displays '" + coding.path("display").asText() + "' under the code for " + found.words());
            require(found.words().equals(concept.path("text").asText()),
                    path + " reads '" + concept.path("text").asText() + "' under the code for " + found.words());
        }
    }

    private void subjects() {
        Set<String> subjects = new HashSet<>();
        int patients = 0;
        for (JsonNode resource : byUrl.values()) {
            patients += type(resource).equals("Patient") ? 1 : 0;
            if (resource.has("subject")) {
                subjects.add(resource.path("subject").path("reference").asText());
            } else {
                require(Set.of("Patient", "Provenance").contains(type(resource)), "a " + type(resource) + " has no subject");
            }
        }
        require(patients == 1 && subjects.size() == 1 && type(byUrl.get(subjects.iterator().next())).equals("Patient"),
                "the bundle speaks of " + patients + " patients and " + subjects.size() + " subjects");
    }

    /** What stands under a side's heading is of that side and of no other. */
    private void sections() {
        for (JsonNode section : bundle.path("entry").path(0).path("resource").path("section")) {
            for (BodySite site : BodySite.values()) {
                boolean titled = site.words().equals(section.path("title").asText());
                for (JsonNode entry : section.path("entry")) {
                    JsonNode resource = byUrl.get(entry.path("reference").asText());
                    boolean one = resource != null && !type(resource).equals("ServiceRequest");
                    boolean of = one && resource.toString().contains("\"" + site.code() + "\"");
                    require(!one || titled == of, "under '" + section.path("title").asText() + "' stands a " + type(resource)
                            + (of ? " of the " : " without the ") + site.words().toLowerCase(java.util.Locale.ROOT));
                }
            }
        }
    }

    private void orders() {
        Set<String> groups = new HashSet<>();
        Set<String> own = new HashSet<>();
        int orders = 0;
        for (JsonNode resource : byUrl.values()) {
            if (type(resource).equals("DeviceRequest")) {
                orders++;
                groups.add(resource.path("groupIdentifier").path("value").asText());
                own.add(resource.path("identifier").path(0).path("value").asText());
            }
        }
        require(orders == 0 || groups.size() == 1 && own.size() == orders, "the device requests are not one group of " + orders);
    }

    private static String type(JsonNode resource) {
        return resource == null ? "nothing" : resource.path("resourceType").asText();
    }

    private void require(boolean holds, String otherwise) {
        if (!holds) {
            problems.add(otherwise);
        }
    }
}
