package domefold.hazards;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON with left and right exchanged, in keys and in words, and the gap that is left less right turned round; arrays in an
 * order that does not depend on the side.
 */
final class Mirrored {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, String> OTHER = Map.of("left", "right", "right", "left", "LEFT", "RIGHT", "RIGHT", "LEFT");

    private Mirrored() {}

    static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (com.fasterxml.jackson.core.JsonProcessingException broken) {
            throw new AssertionError(broken);
        }
    }

    /** The same content, comparable. */
    static JsonNode plain(JsonNode node) {
        return walked(node, false);
    }

    static JsonNode of(JsonNode node) {
        return walked(node, true);
    }

    /** The lines in which two texts differ, with the line before each; empty where they agree. */
    static String difference(JsonNode one, JsonNode other) {
        List<String> left = one.toPrettyString().lines().toList();
        List<String> right = other.toPrettyString().lines().toList();
        StringBuilder found = new StringBuilder();
        for (int i = 0; i < Math.max(left.size(), right.size()) && found.length() < 2000; i++) {
            String a = i < left.size() ? left.get(i) : "";
            String b = i < right.size() ? right.get(i) : "";
            if (!a.equals(b)) {
                found.append(a).append("\n").append(b).append("\n");
            }
        }
        return found.toString();
    }

    private static JsonNode walked(JsonNode node, boolean exchange) {
        if (node.isObject()) {
            Map<String, JsonNode> fields = new TreeMap<>();
            node.fields().forEachRemaining(field -> {
                String name = exchange ? OTHER.getOrDefault(field.getKey(), field.getKey()) : field.getKey();
                boolean signed = exchange && name.equals("volumeGapMl") && field.getValue().isNumber();
                fields.put(name, signed ? JsonNodeFactory.instance.numberNode(field.getValue().decimalValue().negate())
                        : walked(field.getValue(), exchange));
            });
            ObjectNode object = JsonNodeFactory.instance.objectNode();
            fields.forEach(object::set);
            return object;
        }
        if (node.isArray()) {
            List<JsonNode> parts = new ArrayList<>();
            node.forEach(part -> parts.add(walked(part, exchange)));
            parts.sort(Comparator.comparing(JsonNode::toString));
            ArrayNode array = JsonNodeFactory.instance.arrayNode();
            parts.forEach(array::add);
            return array;
        }
        return node.isTextual() ? JsonNodeFactory.instance.textNode(words(node.asText(), exchange)) : node;
    }

    /** A sentence that names both sides may name them in either order, so its words are sorted. */
    private static String words(String text, boolean exchange) {
        String[] words = text.split("(?<=\\W)|(?=\\W)");
        for (int i = 0; i < words.length && exchange; i++) {
            words[i] = OTHER.getOrDefault(words[i], words[i]);
        }
        if (text.matches("(?is).*\\bleft\\b.*") && text.matches("(?is).*\\bright\\b.*")) {
            Arrays.sort(words);
        }
        return String.join("", words);
    }
}
