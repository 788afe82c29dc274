package domefold.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import domefold.device.Fill;
import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.records.RecordHeader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The header of a record file, read from its beginning: the plan, by far its largest part, stands last and is not read. What
 * is skipped is checked when the record is opened or verified.
 */
final class RecordSkim {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final String MAJOR = ConsultRecord.FORMAT;

    private final JsonParser parser;
    private String format = "";
    private String id;
    private int version;
    private RecordStatus status;
    private boolean practice;
    private String author = "";
    private Instant savedAt;
    private LocalDate day;
    private Optional<RecordHeader.SideLine> left = Optional.empty();
    private Optional<RecordHeader.SideLine> right = Optional.empty();
    private Optional<RecordHeader.ExamDates> exams = Optional.empty();

    private RecordSkim(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * The header in that file.
     *
     * @throws Refusal if it is no record of this format
     */
    static RecordHeader read(Path file, List<RecordHeader.Happening> happened) throws IOException {
        try (InputStream in = Files.newInputStream(file); JsonParser parser = FACTORY.createParser(in)) {
            RecordSkim skim = new RecordSkim(parser);
            skim.object();
            return skim.header(happened);
        } catch (JsonProcessingException | DateTimeException | IllegalArgumentException broken) {
            throw unreadable("is damaged");
        }
    }

    private static Refusal unreadable(String what) {
        return new Refusal("record-unreadable", "record", what);
    }

    private RecordHeader header(List<RecordHeader.Happening> happened) {
        if (!format.equals(MAJOR)) {
            throw unreadable(format.startsWith("domefold-record/") ? "was written by another version of the program, as " + format
                    : "is no record");
        }
        if (id == null || status == null || savedAt == null || day == null || version < 1) {
            throw unreadable("is damaged");
        }
        return RecordHeader.of(id, version, status, practice, day, savedAt, author, version - 1, left, right, exams, happened);
    }

    private void object() throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw unreadable("is damaged");
        }
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String field = parser.currentName();
            if (field.equals("plan")) {
                return;
            }
            parser.nextToken();
            switch (field) {
                case "format" -> format = parser.getText();
                case "id" -> id = parser.getText();
                case "version" -> version = parser.getIntValue();
                case "status" -> status = status(parser.getText());
                case "practice" -> practice = parser.getBooleanValue();
                case "authorship" -> authorship();
                case "case" -> inputs();
                case "settled" -> settled();
                case "followUp" -> exams = Optional.of(followUp());
                default -> parser.skipChildren();
            }
        }
    }

    private void authorship() throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String field = parser.currentName();
            parser.nextToken();
            if (field.equals("author")) {
                author = parser.getText();
            } else if (field.equals("savedAt")) {
                savedAt = Instant.parse(parser.getText());
            } else {
                parser.skipChildren();
            }
        }
    }

    private void inputs() throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String field = parser.currentName();
            parser.nextToken();
            if (field.equals("date")) {
                day = LocalDate.parse(parser.getText());
            } else {
                parser.skipChildren();
            }
        }
    }

    private void settled() throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String side = parser.currentName();
            parser.nextToken();
            if (side.equals("left")) {
                left = Optional.of(side());
            } else if (side.equals("right")) {
                right = Optional.of(side());
            } else {
                parser.skipChildren();
            }
        }
    }

    private RecordHeader.SideLine side() throws IOException {
        String device = "";
        String line = "";
        Fill fill = Fill.GEL;
        double nominalMl = 0;
        double fillMl = 0;
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String field = parser.currentName();
            parser.nextToken();
            if (field.equals("fillMl")) {
                fillMl = parser.getDoubleValue();
            } else if (!field.equals("device")) {
                parser.skipChildren();
            } else {
                while (parser.nextToken() == JsonToken.FIELD_NAME) {
                    String inside = parser.currentName();
                    parser.nextToken();
                    switch (inside) {
                        case "id" -> device = parser.getText();
                        case "line" -> line = parser.getText();
                        case "fill" -> fill = parser.getText().equals(Fill.SALINE.key()) ? Fill.SALINE : Fill.GEL;
                        case "volumeMl" -> nominalMl = parser.getDoubleValue();
                        default -> parser.skipChildren();
                    }
                }
            }
        }
        return new RecordHeader.SideLine(device, line, fill, nominalMl, fillMl);
    }

    private RecordHeader.ExamDates followUp() throws IOException {
        String schedule = "";
        String issuer = "";
        List<LocalDate> earliest = List.of();
        List<LocalDate> latest = List.of();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String field = parser.currentName();
            parser.nextToken();
            switch (field) {
                case "schedule" -> schedule = parser.getText();
                case "issuer" -> issuer = parser.getText();
                case "densest" -> earliest = dates();
                case "sparsest" -> latest = dates();
                default -> parser.skipChildren();
            }
        }
        return new RecordHeader.ExamDates(schedule, issuer, earliest, latest);
    }

    private List<LocalDate> dates() throws IOException {
        List<LocalDate> dates = new ArrayList<>();
        while (parser.nextToken() == JsonToken.START_OBJECT) {
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String field = parser.currentName();
                parser.nextToken();
                if (field.equals("date")) {
                    dates.add(LocalDate.parse(parser.getText()));
                }
            }
        }
        return dates;
    }

    static RecordStatus status(String key) {
        for (RecordStatus status : RecordStatus.values()) {
            if (status.key().equals(key)) {
                return status;
            }
        }
        throw unreadable("has the status '" + key + "', which this version does not know");
    }
}
