package domefold.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import domefold.outcome.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Strict JSON (RFC 8259, one value, no field twice) to {@link Json}, refusing with line and column. */
final class JsonText {
    /** No format of ours nests deeper than a dozen levels. */
    private static final int DEEPEST = 40;
    private static final JsonFactory FACTORY = new JsonFactory();

    private final String name;
    private final String text;
    private final JsonParser parser;

    private JsonText(String name, String text, JsonParser parser) {
        this.name = name;
        this.text = text;
        this.parser = parser;
    }

    /**
     * The one object that the text holds.
     *
     * @param name the file, for the sentence
     */
    static Json.Obj object(String text, String name) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            JsonText reader = new JsonText(name, text, parser);
            try {
                return reader.whole();
            } catch (JsonProcessingException broken) {
                throw reader.broken(broken.getLocation());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private Json.Obj whole() throws IOException {
        if (parser.nextToken() == null) {
            throw new Refusal("json-empty", "line 1", name + " is empty; it should hold one JSON object in braces");
        }
        Json value = value(0);
        if (parser.nextToken() != null) {
            throw broken(parser.currentTokenLocation());
        }
        if (value instanceof Json.Obj object) {
            return object;
        }
        throw new Refusal("json-not-object", "line " + value.line(),
                name + " holds " + value.kind() + "; it should hold one JSON object in braces");
    }

    private Json value(int depth) throws IOException {
        JsonLocation start = parser.currentTokenLocation();
        int line = start.getLineNr();
        if (depth > DEEPEST) {
            throw new Refusal("json-too-deep", "line " + line,
                    name + " nests deeper than " + DEEPEST + " levels on line " + line + "; no format of this program does");
        }
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> {
                Map<String, Json> fields = fields(depth);
                String source = text.substring((int) start.getCharOffset(), (int) parser.currentLocation().getCharOffset());
                yield new Json.Obj(fields, source, line);
            }
            case START_ARRAY -> {
                List<Json> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(depth + 1));
                }
                yield new Json.Arr(Collections.unmodifiableList(items), line);
            }
            case VALUE_STRING -> new Json.Text(parser.getText(), line);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(parser.getText(), line);
            case VALUE_TRUE, VALUE_FALSE -> new Json.Bool(token == JsonToken.VALUE_TRUE, line);
            case VALUE_NULL -> new Json.Null(line);
            default -> throw broken(start);
        };
    }

    private Map<String, Json> fields(int depth) throws IOException {
        Map<String, Json> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String field = parser.currentName();
            int line = parser.currentTokenLocation().getLineNr();
            parser.nextToken();
            Json earlier = fields.put(field, value(depth + 1));
            if (earlier != null) {
                throw new Refusal("field-twice", field, name + " has the field " + Shown.quoted(field)
                        + " twice, on lines " + earlier.line() + " and " + line + "; it should stand once");
            }
        }
        return Collections.unmodifiableMap(fields);
    }

    private Refusal broken(JsonLocation at) {
        String where = "line " + at.getLineNr() + ", column " + at.getColumnNr();
        int offset = (int) Math.max(0, Math.min(at.getCharOffset(), text.length()));
        boolean ended = text.substring(offset).isBlank();
        String near = ended ? "the text ends there although a brace, bracket or quote is still open"
                : "near " + Shown.quoted(excerpt(offset))
                        + " a comma, colon, quote or brace is missing or too many, or the value is not one JSON knows";
        return new Refusal("json-broken", where, name + " is not valid JSON at " + where + ": " + near);
    }

    private String excerpt(int offset) {
        int from = Math.max(text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1, offset - 12);
        int to = text.indexOf('\n', offset);
        return text.substring(from, Math.min(to < 0 ? text.length() : to, offset + 12)).strip();
    }
}
