package domefold.store;

import domefold.basics.Digits;
import domefold.basics.Lists;
import domefold.outcome.Refusal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;

/** One JSON object being read: every field by name, every refusal with its path and line. Null counts as absent. */
final class Fields {
    private final Json.Obj object;
    private final String path;
    private final String file;
    private final Consumer<String> unknown;

    /**
     * @param file the file, for sentences
     * @param unknown told of every field the format does not know; null where such a field is refused
     */
    Fields(Json.Obj object, String file, Consumer<String> unknown) {
        this(object, "", file, unknown);
    }

    private Fields(Json.Obj object, String path, String file, Consumer<String> unknown) {
        this.object = object;
        this.path = path;
        this.file = file;
        this.unknown = unknown;
    }

    /** Refuses, or notes, each field that is not among these. Called first, so that a slip is named as what it is. */
    void only(Collection<String> known) {
        for (var field : object.fields().entrySet()) {
            if (known.contains(field.getKey())) {
                continue;
            }
            if (unknown != null) {
                unknown.accept(path + field.getKey());
                continue;
            }
            String hint = NearestName.of(field.getKey(), known).map(near -> "; the nearest one it has is \"" + near + "\"")
                    .orElse("; it has " + String.join(", ", known));
            throw new Refusal("unknown-field", Shown.plain(path + field.getKey()), file + ", line "
                    + field.getValue().line() + ": " + (path.isEmpty() ? "the format" : path.substring(0, path.length() - 1))
                    + " has no field " + Shown.quoted(field.getKey()) + hint);
        }
    }

    void only(String... known) {
        only(List.of(known));
    }

    Collection<String> names() {
        return object.fields().keySet();
    }

    String source() {
        return object.source();
    }

    /** The line of the field at that path, or of the last part of the path that is there. */
    int lineOf(String dotted) {
        Json at = object;
        for (String name : dotted.split("\\.")) {
            Json inside = at instanceof Json.Obj here ? here.fields().get(name) : null;
            if (inside == null) {
                break;
            }
            at = inside;
        }
        return at.line();
    }

    private Optional<Json> value(String field) {
        return Optional.ofNullable(object.fields().get(field)).filter(json -> !(json instanceof Json.Null));
    }

    boolean has(String field) {
        return value(field).isPresent();
    }

    /** A refusal of what stands in that field, or of its absence. */
    Refusal refusal(String code, String field, String sentence) {
        Json found = object.fields().get(field);
        return new Refusal(code, path + field, file + ", line " + (found == null ? object : found).line() + ": "
                + path + field + " " + sentence);
    }

    private Refusal wrong(String field, Json found, String right) {
        return refusal("wrong-type", field, "is " + found.kind() + "; it should be " + right);
    }

    private Refusal missing(String field, String right) {
        return refusal("missing-field", field, "is missing; it should be " + right);
    }

    Optional<String> text(String field) {
        return value(field).map(json -> {
            if (json instanceof Json.Text text) {
                return text.text();
            }
            throw wrong(field, json, "text in quotes");
        });
    }

    String needText(String field) {
        return text(field).orElseThrow(() -> missing(field, "text in quotes"));
    }

    Optional<Json.Num> number(String field, String right) {
        return value(field).map(json -> {
            if (json instanceof Json.Num number) {
                if (!Double.isFinite(number.value())) {
                    throw refusal("out-of-range", field, "is " + number.kind() + ", too large for any reading; it should be "
                            + right);
                }
                return number;
            }
            if (json instanceof Json.Text text && text.text().strip().matches("[-+]?[0-9]+([.,][0-9]+)?.*")) {
                throw wrong(field, json, right + ", without quotes and without a unit, for example "
                        + text.text().strip().replace(',', '.').replaceFirst("^\\+?([-0-9.]+).*", "$1"));
            }
            throw wrong(field, json, right);
        });
    }

    OptionalDouble number(String field) {
        return number(field, "a number").map(number -> OptionalDouble.of(number.value())).orElse(OptionalDouble.empty());
    }

    double needNumber(String field) {
        return number(field).orElseThrow(() -> missing(field, "a number"));
    }

    OptionalInt integer(String field, int low, int high) {
        String right = "a whole number from " + low + " to " + high;
        return number(field, right).map(number -> {
            double value = number.value();
            if (value != Math.rint(value) || value < low || value > high) {
                throw refusal("out-of-range", field, "is " + number.kind() + "; it should be " + right);
            }
            return OptionalInt.of((int) value);
        }).orElse(OptionalInt.empty());
    }

    int needInteger(String field, int low, int high) {
        return integer(field, low, high).orElseThrow(() -> missing(field, "a whole number from " + low + " to " + high));
    }

    Optional<Boolean> bool(String field) {
        return value(field).map(json -> {
            if (json instanceof Json.Bool bool) {
                return bool.value();
            }
            throw wrong(field, json, "true or false, without quotes");
        });
    }

    boolean needBool(String field) {
        return bool(field).orElseThrow(() -> missing(field, "true or false"));
    }

    /** One of a closed set of words. */
    <T> Optional<T> word(String field, T[] values, Function<T, String> key) {
        return text(field).map(text -> oneOf(field, text, values, key));
    }

    <T> T needWord(String field, T[] values, Function<T, String> key) {
        return word(field, values, key).orElseThrow(() -> missing(field, "one of " + words(values, key)));
    }

    private <T> T oneOf(String field, String text, T[] values, Function<T, String> key) {
        for (T value : values) {
            if (key.apply(value).equals(text)) {
                return value;
            }
        }
        throw refusal("unknown-word", field, "is " + Shown.quoted(text) + "; it should be one of " + words(values, key));
    }

    private static <T> String words(T[] values, Function<T, String> key) {
        return Lists.joined(List.of(values), ", ", value -> "\"" + key.apply(value) + "\"");
    }

    LocalDate needDate(String field) {
        String right = "a day written as year-month-day, for example \"2026-03-04\"";
        String text = text(field).orElseThrow(() -> missing(field, right));
        try {
            if (!Digits.isDay(text)) {
                throw refusal("bad-date", field, "is " + Shown.quoted(text) + "; it should be " + right);
            }
            return LocalDate.of(Integer.parseInt(text, 0, 4, 10), Integer.parseInt(text, 5, 7, 10), Integer.parseInt(text, 8, 10, 10));
        } catch (DateTimeException noSuchDay) {
            throw refusal("bad-date", field, "is " + Shown.quoted(text) + ", a day that no calendar has; it should be " + right);
        }
    }

    Optional<Instant> instant(String field) {
        return text(field).map(text -> {
            try {
                return Instant.parse(text);
            } catch (DateTimeParseException notATime) {
                throw refusal("bad-time", field, "is " + Shown.quoted(text)
                        + "; it should be a time in UTC, for example \"2026-03-04T10:15:00Z\"");
            }
        });
    }

    Instant needInstant(String field) {
        return instant(field).orElseThrow(() -> missing(field, "a time in UTC"));
    }

    Optional<Fields> object(String field) {
        return value(field).map(json -> inner(json, field));
    }

    Fields needObject(String field) {
        return object(field).orElseThrow(() -> missing(field, "an object in braces"));
    }

    private Fields inner(Json json, String field) {
        if (json instanceof Json.Obj inside) {
            return new Fields(inside, path + field + ".", file, unknown);
        }
        throw wrong(field, json, "an object in braces");
    }

    private List<Json> items(String field) {
        return value(field).map(json -> {
            if (json instanceof Json.Arr list) {
                return list.items();
            }
            throw wrong(field, json, "a list in brackets");
        }).orElse(List.of());
    }

    /** The objects of a list; absent is the empty list. */
    <T> List<T> objects(String field, Function<Fields, T> reader) {
        List<T> out = new ArrayList<>();
        for (Json item : items(field)) {
            out.add(reader.apply(inner(item, field + "[" + out.size() + "]")));
        }
        return List.copyOf(out);
    }

    /** The texts of a list; absent is the empty list. */
    List<String> texts(String field) {
        return Lists.map(items(field), item -> {
            if (item instanceof Json.Text text) {
                return text.text();
            }
            throw refusal("wrong-type", field, "holds " + item.kind() + "; it should hold texts in quotes");
        });
    }

    /** A list of words of a closed set, each at most once. */
    <T> List<T> words(String field, T[] values, Function<T, String> key) {
        List<T> out = Lists.map(texts(field), text -> oneOf(field, text, values, key));
        if (new HashSet<>(out).size() != out.size()) {
            throw refusal("word-twice", field, "names the same word twice; each should stand once");
        }
        return out;
    }
}
