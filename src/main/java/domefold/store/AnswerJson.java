package domefold.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The smaller answers of the command line as JSON: maps, lists, texts, numbers and truth values. Numbers keep every digit
 * that tells them apart; what is no finite number becomes null.
 */
public final class AnswerJson {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final double WHOLE_BELOW = 1e15;

    private AnswerJson() {}

    /** The object, its fields in the map's order, ending in a line feed. */
    public static String text(Map<String, ?> object) {
        StringWriter out = new StringWriter();
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        try (JsonGenerator json = FACTORY.createGenerator(out)) {
            json.setPrettyPrinter(printer);
            write(json, object);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.append('\n').toString();
    }

    /** The object in one line, without a line feed. */
    public static String line(Map<String, ?> object) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(out)) {
            write(json, object);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toString();
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> field : map.entrySet()) {
                json.writeFieldName(field.getKey().toString());
                write(json, field.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                write(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Optional<?> optional) {
            write(json, optional.orElse(null));
        } else if (value instanceof OptionalDouble optional) {
            write(json, optional.isPresent() ? optional.getAsDouble() : null);
        } else if (value instanceof Double number) {
            number(json, number);
        } else if (value instanceof Integer || value instanceof Long) {
            json.writeNumber(((Number) value).longValue());
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else {
            json.writeString(value.toString());
        }
    }

    private static void number(JsonGenerator json, double value) throws IOException {
        if (!Double.isFinite(value)) {
            json.writeNull();
        } else if (value == Math.rint(value) && Math.abs(value) < WHOLE_BELOW) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(value);
        }
    }
}
