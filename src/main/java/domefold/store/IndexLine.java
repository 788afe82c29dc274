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
 * One header as a line of the index: a JSON array, days as days since 1970, moments as milliseconds. Short on purpose; the
 * index is a cache and its form may change with any version.
 */
final class IndexLine {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final Map<Long, LocalDate> days = new HashMap<>();
    private final Map<String, String> texts = new HashMap<>();

    static byte[] bytes(RecordHeader header) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
        try (JsonGenerator out = FACTORY.createGenerator(bytes)) {
            out.writeStartArray();
            out.writeString(header.id());
            out.writeNumber(header.version());
            out.writeString(header.status().key());
            out.writeBoolean(header.practice());
            out.writeNumber(header.day().toEpochDay());
            out.writeNumber(header.savedAt().toEpochMilli());
            out.writeString(header.author());
            side(out, header.left());
            side(out, header.right());
            exams(out, header.exams());
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

    private static void side(JsonGenerator out, Optional<RecordHeader.SideLine> side) throws IOException {
        if (side.isEmpty()) {
            out.writeNull();
            return;
        }
        out.writeStartArray();
        out.writeString(side.get().deviceId());
        out.writeString(side.get().line());
        out.writeNumber(side.get().fill().ordinal());
        out.writeNumber(side.get().nominalMl());
        out.writeNumber(side.get().fillMl());
        out.writeEndArray();
    }

    private static void exams(JsonGenerator out, Optional<RecordHeader.ExamDates> exams) throws IOException {
        if (exams.isEmpty()) {
            out.writeNull();
            return;
        }
        out.writeStartArray();
        out.writeString(exams.get().scheduleId());
        out.writeString(exams.get().issuer());
        for (List<LocalDate> dates : List.of(exams.get().earliest(), exams.get().latest())) {
            out.writeStartArray();
            for (LocalDate date : dates) {
                out.writeNumber(date.toEpochDay());
            }
            out.writeEndArray();
        }
        out.writeEndArray();
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
        String author = text(in.nextTextValue());
        Optional<RecordHeader.SideLine> left = side(in);
        Optional<RecordHeader.SideLine> right = side(in);
        Optional<RecordHeader.ExamDates> exams = exams(in);
        List<RecordHeader.Happening> happened = new ArrayList<>();
        in.nextToken();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            happened.add(new RecordHeader.Happening(RecordEvent.Kind.values()[in.getIntValue()], day(in.nextLongValue(0))));
        }
        in.nextToken();
        return RecordHeader.of(id, version, status, practice, day, savedAt, author, version - 1, left, right, exams, happened);
    }

    private Optional<RecordHeader.SideLine> side(JsonParser in) throws IOException {
        if (in.nextToken() == JsonToken.VALUE_NULL) {
            return Optional.empty();
        }
        String device = text(in.nextTextValue());
        String line = text(in.nextTextValue());
        Fill fill = Fill.values()[in.nextIntValue(0)];
        in.nextToken();
        double nominalMl = in.getDoubleValue();
        in.nextToken();
        double fillMl = in.getDoubleValue();
        in.nextToken();
        return Optional.of(new RecordHeader.SideLine(device, line, fill, nominalMl, fillMl));
    }

    private Optional<RecordHeader.ExamDates> exams(JsonParser in) throws IOException {
        if (in.nextToken() == JsonToken.VALUE_NULL) {
            return Optional.empty();
        }
        String schedule = text(in.nextTextValue());
        String issuer = text(in.nextTextValue());
        List<LocalDate> earliest = dates(in);
        List<LocalDate> latest = dates(in);
        in.nextToken();
        return Optional.of(new RecordHeader.ExamDates(schedule, issuer, earliest, latest));
    }

    private List<LocalDate> dates(JsonParser in) throws IOException {
        List<LocalDate> dates = new ArrayList<>();
        in.nextToken();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            dates.add(day(in.getLongValue()));
        }
        return dates;
    }

    private LocalDate day(long sinceEpoch) {
        return days.computeIfAbsent(sinceEpoch, LocalDate::ofEpochDay);
    }

    private String text(String read) {
        String before = texts.putIfAbsent(read, read);
        return before == null ? read : before;
    }
}
