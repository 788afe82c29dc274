package domefold.export.fhir;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.patient.Side;
import java.math.BigDecimal;
import java.util.List;

/** The small shapes that resources are made of. */
final class FhirJson {
    /** Root of our own systems; the name says that it leads nowhere. */
    static final String LOCAL = "https://domefold.invalid/fhir/";
    static final String CASE = LOCAL + "case";
    static final String MEASURE = LOCAL + "CodeSystem/measure";
    static final String PARAMETER = LOCAL + "CodeSystem/device-parameter";
    static final String ORDER_CODE = LOCAL + "order-code";
    static final String ORDER = LOCAL + "order";
    static final String DIGEST = LOCAL + "record-sha256";
    static final String LOINC = "http://loinc.org";

    private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

    private FhirJson() {}

    static ObjectNode object() {
        return NODES.objectNode();
    }

    static ObjectNode resource(String type) {
        return object().put("resourceType", type);
    }

    static ObjectNode reference(String fullUrl) {
        return object().put("reference", fullUrl);
    }

    static ObjectNode identifier(String system, String value) {
        return object().put("system", system).put("value", value);
    }

    static ArrayNode list(ObjectNode... items) {
        ArrayNode list = NODES.arrayNode();
        for (ObjectNode item : items) {
            list.add(item);
        }
        return list;
    }

    /** A concept in words alone. */
    static ObjectNode words(String text) {
        return object().put("text", text);
    }

    static ObjectNode concept(String system, String code, String display, String text) {
        ObjectNode coding = object().put("system", system).put("code", code).put("display", display);
        ObjectNode concept = object();
        concept.set("coding", list(coding));
        return concept.put("text", text);
    }

    static ObjectNode bodySite(Side side) {
        BodySite site = BodySite.of(side);
        return concept(BodySite.SYSTEM, site.code(), site.display(), site.words());
    }

    static ObjectNode quantity(BigDecimal value, Unit unit) {
        return object().put("value", value).put("unit", unit.words()).put("system", Unit.SYSTEM).put("code", unit.code());
    }

    /** A narrative of paragraphs. */
    static ObjectNode narrative(List<String> paragraphs) {
        StringBuilder div = new StringBuilder("<div xmlns=\"http://www.w3.org/1999/xhtml\">");
        for (String paragraph : paragraphs) {
            div.append("<p>").append(escaped(paragraph)).append("</p>");
        }
        return object().put("status", "generated").put("div", div.append("</div>").toString());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replaceAll("[\\p{Cntrl}]", " ");
    }
}
