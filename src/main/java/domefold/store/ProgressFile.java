package domefold.store;

import domefold.patient.Side;
import domefold.practice.Decision;
import domefold.practice.Progress;
import domefold.practice.Standing;
import domefold.practice.exercise.Logbook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * What a fellow has practised, {@code domefold-progress/1}: one JSON object a line, the first naming the format, then one
 * for each marked case or drill. It lies in the practice folder, apart from every record.
 */
public final class ProgressFile {
    public static final String FORMAT = "domefold-progress/1";
    private static final String NAME = "progress.jsonl";
    private static final int LARGEST_BYTES = 64 << 20;
    private static final int MOST = 1_000_000_000;

    private final Path file;

    /** @param folder the practice folder */
    public ProgressFile(Path folder) {
        this.file = folder.resolve(NAME);
    }

    /**
     * Everything so far; an empty logbook where there is no file yet.
     *
     * @throws domefold.outcome.Refusal if a line can't be read; nothing is lost by leaving the file as it is
     */
    public Logbook read() throws IOException {
        return Files.exists(file) ? parse(text()) : Logbook.EMPTY;
    }

    /** Adds a marked case at the end, to what the file holds now. */
    public void add(Progress.Entry entry) throws IOException {
        append(out -> out.text("kind", "case").text("date", entry.date().toString()).number("number", entry.number())
                .number("level", entry.level()).objects("marks", entry.lines(), line -> out.text("decision", key(line.decision()))
                        .text("side", line.side().map(Side::key)).text("warning", line.code())
                        .text("standing", key(line.standing())).number("weight", line.weight()).number("credit", line.credit())));
    }

    /** Adds a drill at the end. */
    public void add(Logbook.Drilled drill) throws IOException {
        append(out -> out.text("kind", "drill").text("date", drill.date().toString()).number("number", drill.number())
                .number("found", drill.found()).number("missed", drill.missed()).number("unfounded", drill.unfounded()));
    }

    private void append(Consumer<JsonOut> fields) throws IOException {
        String before = line(out -> out.text("format", FORMAT));
        if (Files.exists(file)) {
            before = text();
            parse(before);
        } else {
            AtomicFile.folder(file.getParent());
        }
        AtomicFile.replace(file, before + line(fields));
    }

    private static String line(Consumer<JsonOut> fields) {
        JsonOut out = new JsonOut(false);
        out.object(() -> fields.accept(out));
        return out.text();
    }

    private String text() throws IOException {
        return new String(InputFile.bytes(file, "the practice progress", LARGEST_BYTES), StandardCharsets.UTF_8);
    }

    private Logbook parse(String text) {
        Logbook log = Logbook.EMPTY;
        String[] lines = text.split("\n");
        for (int i = 0; i < lines.length; i++) {
            String where = NAME + ", line " + (i + 1);
            Fields fields = new Fields(JsonText.object(lines[i], where), where, any -> {});
            if (i == 0) {
                FormatLine.require(fields, FORMAT, "practice progress");
            } else if (fields.needText("kind").equals("drill")) {
                log = log.with(new Logbook.Drilled(fields.needDate("date"), fields.needInteger("number", 1, MOST),
                        fields.needInteger("found", 0, MOST), fields.needInteger("missed", 0, MOST),
                        fields.needInteger("unfounded", 0, MOST)));
            } else {
                log = log.with(new Progress.Entry(fields.needDate("date"), fields.needInteger("number", 1, MOST),
                        fields.needInteger("level", 1, 3), fields.objects("marks", ProgressFile::mark)));
            }
        }
        return log;
    }

    private static Progress.Line mark(Fields fields) {
        return new Progress.Line(fields.needWord("decision", Decision.values(), ProgressFile::key),
                fields.word("side", Side.values(), Side::key), fields.text("warning"),
                fields.needWord("standing", Standing.values(), ProgressFile::key), fields.needNumber("weight"),
                fields.needNumber("credit"));
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
