package domefold.store;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** JSON being written, indented, with numbers in full double precision. An absent value is written as nothing. */
final class JsonOut {
    private static final JsonFactory FACTORY = JsonFactory.builder().enable(JsonWriteFeature.COMBINE_UNICODE_SURROGATES_IN_UTF8)
            .build();
    private static final int FIRST_BYTES = 1 << 12;
    private static final double LARGEST_EXACT_WHOLE = 1e15;

    private final Buffer buffer;
    private final JsonGenerator out;
    private final Map<Object, SerializableString> written = new IdentityHashMap<>();

    /** Indented, for files and answers that people open too. */
    JsonOut() {
        this(true, FIRST_BYTES);
    }

    /** @param indented false for one line */
    JsonOut(boolean indented) {
        this(indented, FIRST_BYTES);
    }

    /** @param expectedBytes about how long it will be, so that it need not be moved while it grows */
    JsonOut(boolean indented, int expectedBytes) {
        buffer = new Buffer(expectedBytes);
        try {
            out = FACTORY.createGenerator(buffer, JsonEncoding.UTF8);
        } catch (IOException failure) {
            throw impossible(failure);
        }
        if (indented) {
            Separators narrow = Separators.createDefaultInstance().withRootSeparator("")
                    .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("").withArrayEmptySeparator("");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter(narrow);
            printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
            out.setPrettyPrinter(printer);
        }
    }

    /** What was written, ending in a line break, in UTF-8. */
    byte[] bytes() {
        close();
        return buffer.toByteArray();
    }

    /** What was written, ending in a line break. */
    String text() {
        close();
        return buffer.toString(StandardCharsets.UTF_8);
    }

    private void close() {
        try {
            out.writeRaw('\n');
            out.close();
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    JsonOut object(Runnable fields) {
        try {
            out.writeStartObject();
            fields.run();
            out.writeEndObject();
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    JsonOut object(String name, Runnable fields) {
        return name(name).object(fields);
    }

    /**
     * The object of a value that stands in many places, each time the same: what was written the first time is written again.
     *
     * @param value always written by the same fields, at the same depth; told from others by which one it is, not by what is in it
     */
    JsonOut again(String name, Object value, Runnable fields) {
        try {
            name(name);
            SerializableString earlier = written.get(value);
            if (earlier != null) {
                out.writeRawValue(earlier);
                return this;
            }
            out.flush();
            int from = buffer.size();
            object(fields);
            out.flush();
            String now = buffer.textFrom(from);
            written.put(value, new SerializedString(now.substring(now.indexOf('{'))));
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    <T> JsonOut list(String name, Collection<T> items, Consumer<T> writer) {
        return name(name).list(items, writer);
    }

    <T> JsonOut list(Collection<T> items, Consumer<T> writer) {
        try {
            out.writeStartArray();
            items.forEach(writer);
            out.writeEndArray();
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    <T> JsonOut objects(String name, Collection<T> items, Consumer<T> writer) {
        return list(name, items, item -> object(() -> writer.accept(item)));
    }

    JsonOut texts(String name, Collection<String> items) {
        return list(name, items, this::text);
    }

    private void text(String value) {
        try {
            // What UTF-8 has no bytes for, half a character, is a question mark from here on.
            byte[] utf8 = value.getBytes(StandardCharsets.UTF_8);
            out.writeUTF8String(utf8, 0, utf8.length);
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    JsonOut text(String name, String value) {
        name(name).text(value);
        return this;
    }

    JsonOut text(String name, Optional<String> value) {
        value.ifPresent(text -> text(name, text));
        return this;
    }

    JsonOut bool(String name, boolean value) {
        try {
            out.writeBooleanField(name, value);
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    JsonOut number(String name, double value) {
        return name(name).number(value);
    }

    JsonOut number(double value) {
        try {
            out.writeNumber(digits(value));
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    JsonOut number(String name, OptionalDouble value) {
        value.ifPresent(number -> number(name, number));
        return this;
    }

    /** The number, or null where there is none: for fields whose absence says something. */
    JsonOut numberOrNull(String name, OptionalDouble value) {
        return value.isPresent() ? number(name, value.getAsDouble()) : nothing(name);
    }

    JsonOut textOrNull(String name, Optional<String> value) {
        return value.isPresent() ? text(name, value.get()) : nothing(name);
    }

    JsonOut nothing(String name) {
        try {
            out.writeNullField(name);
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    /** JSON that is text already: a number as typed, or a whole object. */
    JsonOut raw(String name, String json) {
        try {
            name(name).out.writeRawValue(json);
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    private JsonOut name(String name) {
        try {
            out.writeFieldName(name);
            return this;
        } catch (IOException failure) {
            throw impossible(failure);
        }
    }

    /** The shortest decimal that reads back as the same double; whole numbers without a point. */
    static String digits(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON has no number for " + value);
        }
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_EXACT_WHOLE) {
            return Long.toString((long) value);
        }
        String shortest = Double.toString(value);
        return shortest.indexOf('E') < 0 ? shortest : new BigDecimal(shortest).toString();
    }

    /** Bytes that can be looked at while more are written. */
    private static final class Buffer extends ByteArrayOutputStream {
        Buffer(int size) {
            super(size);
        }

        String textFrom(int from) {
            return new String(buf, from, count - from, StandardCharsets.UTF_8);
        }
    }

    /** It is written to memory. */
    private static UncheckedIOException impossible(IOException failure) {
        return new UncheckedIOException(failure);
    }
}
