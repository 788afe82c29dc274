package domefold.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** JSON being written, indented, with numbers in full double precision. An absent value is written as nothing. */
final class JsonOut {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final double LARGEST_EXACT_WHOLE = 1e15;

    private final StringWriter buffer = new StringWriter();
    private final JsonGenerator out;

    /** Indented, for files and answers that people open too. */
    JsonOut() {
        this(true);
    }

    /** @param indented false for one line */
    JsonOut(boolean indented) {
        try {
            out = FACTORY.createGenerator(buffer);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
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

    /** What was written, ending in a line break. */
    String text() {
        run(out::close);
        return buffer + "\n";
    }

    JsonOut object(Runnable fields) {
        run(out::writeStartObject);
        fields.run();
        run(out::writeEndObject);
        return this;
    }

    JsonOut object(String name, Runnable fields) {
        run(() -> out.writeFieldName(name));
        return object(fields);
    }

    <T> JsonOut list(String name, Collection<T> items, Consumer<T> writer) {
        run(() -> out.writeFieldName(name));
        return list(items, writer);
    }

    <T> JsonOut list(Collection<T> items, Consumer<T> writer) {
        run(out::writeStartArray);
        items.forEach(writer);
        run(out::writeEndArray);
        return this;
    }

    <T> JsonOut objects(String name, Collection<T> items, Consumer<T> writer) {
        return list(name, items, item -> object(() -> writer.accept(item)));
    }

    JsonOut texts(String name, Collection<String> items) {
        return list(name, items, item -> run(() -> out.writeString(item)));
    }

    JsonOut text(String name, String value) {
        run(() -> out.writeStringField(name, value));
        return this;
    }

    JsonOut text(String name, Optional<String> value) {
        value.ifPresent(text -> text(name, text));
        return this;
    }

    JsonOut bool(String name, boolean value) {
        run(() -> out.writeBooleanField(name, value));
        return this;
    }

    JsonOut number(String name, double value) {
        run(() -> out.writeFieldName(name));
        return number(value);
    }

    JsonOut number(double value) {
        run(() -> out.writeNumber(digits(value)));
        return this;
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
        run(() -> out.writeNullField(name));
        return this;
    }

    /** JSON that is text already: a number as typed, or a whole object. */
    JsonOut raw(String name, String json) {
        run(() -> out.writeFieldName(name));
        run(() -> out.writeRawValue(json));
        return this;
    }

    /** The shortest decimal that reads back as the same double; whole numbers without a point. */
    static String digits(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("JSON has no number for " + value);
        }
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_EXACT_WHOLE) {
            return Long.toString((long) value);
        }
        return new BigDecimal(Double.toString(value)).toString();
    }

    private static void run(Step step) {
        try {
            step.take();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private interface Step {
        void take() throws IOException;
    }
}
