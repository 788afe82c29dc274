package domefold.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import domefold.device.Fill;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import domefold.records.RecordHeader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Headers as lines of the index: JSON arrays, days as days since 1970, moments as milliseconds, and what many records share
 * (an author, a device, a plan of exams) as a number into a list of texts. Short on purpose; the index is a cache and its
 * form may change with any version.
 */
final class IndexLine {
    private static final JsonFactory FACTORY = new JsonFactory();
    /** Stands in no text of ours: the parts of a side or a plan are one value, so that equal ones are read once. */
    private static final String BETWEEN = "\u001f";

    private final List<String> texts;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<Long, LocalDate> days = new HashMap<>();
    private final Map<List<Integer>, String> words = new HashMap<>();
    private final Map<Integer, Optional<RecordHeader.SideLine>> sides = new HashMap<>();
    private final Map<Integer, Optional<RecordHeader.ExamDates>> plans = new HashMap<>();

    /** For writing: the texts gather as lines are written. */
    IndexLine() {
        this.texts = new ArrayList<>();
    }

    /** For reading lines that refer to those texts. */
    IndexLine(List<String> texts) {
        this.texts = texts;
    }

    /** What the lines written so far refer to. */
    List<String> texts() {
        return texts;
    }

    private int number(String text) {
        return numbers.computeIfAbsent(text, added -> {
            texts.add(added);
            return texts.size() - 1;
        });
    }

    byte[] bytes(RecordHeader header) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(128);
        try (JsonGenerator out = FACTORY.createGenerator(bytes)) {
            out.writeStartArray();
            out.writeString(header.id());
            out.writeNumber(header.version());
            out.writeString(header.status().key());
            out.writeBoolean(header.practice());
            out.writeNumber(header.day().toEpochDay());
            out.writeNumber(header.savedAt().toEpochMilli());
            out.writeNumber(number(header.author()));
            out.writeNumber(number(header.left().map(IndexLine::text).orElse("")));
            out.writeNumber(number(header.right().map(IndexLine::text).orElse("")));
            out.writeNumber(number(header.exams().map(IndexLine::text).orElse("")));
            out.writeStartArray();
            for (RecordHeader.Happening one : header.happened()) {
                out.writeNumber(one.kind().ordinal());
                out.writeNumber(one.day().toEpochDay());
            }
            out.writeEndArray();
            out.writeEndArray();
        }
        bytes.write('\n');
        return bytes.toByteArray();
    }

    private static String text(RecordHeader.SideLine side) {
        return String.join(BETWEEN, side.deviceId(), side.line(), Integer.toString(side.fill().ordinal()),
                Double.toString(side.nominalMl()), Double.toString(side.fillMl()));
    }

    private static String text(RecordHeader.ExamDates exams) {
        return String.join(BETWEEN, exams.scheduleId(), exams.issuer(), text(exams.earliest()), text(exams.latest()));
    }

    private static String text(List<LocalDate> dates) {
        return String.join(" ", dates.stream().map(date -> Long.toString(date.toEpochDay())).toList());
    }

    /**
     * The headers in a stretch of whole lines.
     *
     * @throws IOException if a line is not as it was written
     */
    List<RecordHeader> read(byte[] bytes, int from, int to) throws IOException {
        List<RecordHeader> headers = new ArrayList<>();
        try (JsonParser in = FACTORY.createParser(bytes, from, to - from)) {
            while (in.nextToken() == JsonToken.START_ARRAY) {
                headers.add(header(in));
            }
        } catch (RuntimeException altered) {
            throw new IOException("the index is damaged", altered);
        }
        return headers;
    }

    private RecordHeader header(JsonParser in) throws IOException {
        String id = in.nextTextValue();
        int version = in.nextIntValue(0);
        RecordStatus status = RecordSkim.status(in.nextTextValue());
        boolean practice = in.nextBooleanValue();
        LocalDate day = day(in.nextLongValue(0));
        Instant savedAt = Instant.ofEpochMilli(in.nextLongValue(0));
        int by = in.nextIntValue(-1);
        int leftOf = in.nextIntValue(-1);
        int rightOf = in.nextIntValue(-1);
        int plan = in.nextIntValue(-1);
        String author = texts.get(by);
        Optional<RecordHeader.SideLine> left = sides.computeIfAbsent(leftOf, number -> side(texts.get(number)));
        Optional<RecordHeader.SideLine> right = sides.computeIfAbsent(rightOf, number -> side(texts.get(number)));
        Optional<RecordHeader.ExamDates> exams = plans.computeIfAbsent(plan, number -> exams(texts.get(number)));
        String shared = words.computeIfAbsent(List.of(status.ordinal(), by, leftOf, rightOf, plan),
                numbers -> RecordHeader.sharedWords(status, author, left, right, exams));
        List<RecordHeader.Happening> happened = new ArrayList<>();
        in.nextToken();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            happened.add(new RecordHeader.Happening(RecordEvent.Kind.values()[in.getIntValue()], day(in.nextLongValue(0))));
        }
        in.nextToken();
        return RecordHeader.of(id, version, status, practice, day, savedAt, author, version - 1, left, right, exams, happened,
                shared);
    }

    private static Optional<RecordHeader.SideLine> side(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] parts = text.split(BETWEEN, -1);
        return Optional.of(new RecordHeader.SideLine(parts[0], parts[1], Fill.values()[Integer.parseInt(parts[2])],
                Double.parseDouble(parts[3]), Double.parseDouble(parts[4])));
    }

    private static Optional<RecordHeader.ExamDates> exams(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] parts = text.split(BETWEEN, -1);
        return Optional.of(new RecordHeader.ExamDates(parts[0], parts[1], dates(parts[2]), dates(parts[3])));
    }

    private static List<LocalDate> dates(String text) {
        List<LocalDate> dates = new ArrayList<>();
        for (String day : text.isEmpty() ? new String[0] : text.split(" ")) {
            dates.add(LocalDate.ofEpochDay(Long.parseLong(day)));
        }
        return dates;
    }

    private LocalDate day(long sinceEpoch) {
        return days.computeIfAbsent(sinceEpoch, LocalDate::ofEpochDay);
    }
}
