package domefold.store;

import domefold.record.RecordEvent;
import java.io.IOException;
import java.nio.file.Path;

/** Event files, {@code domefold-event/1}: one event, one file, never changed. */
public final class EventFile {
    public static final String FORMAT = "domefold-event/1";
    private static final int LARGEST_BYTES = 1 << 20;
    private static final int MOST_VERSIONS = 1_000_000;

    private EventFile() {}

    public static RecordEvent read(Path file) throws IOException {
        String name = Shown.path(file);
        byte[] bytes = InputFile.bytes(file, "an event", LARGEST_BYTES);
        Fields fields = new Fields(JsonText.object(InputFile.utf8(bytes, name), name), name, later -> {});
        FormatLine.require(fields, FORMAT, "an event");
        return new RecordEvent(fields.needText("id"), fields.needInteger("version", 1, MOST_VERSIONS),
                fields.needWord("kind", RecordEvent.Kind.values(), RecordEvent.Kind::key), fields.needDate("day"),
                fields.needText("note"), fields.needText("by"), fields.needInstant("at"), fields.needObject("detail").source());
    }

    static byte[] bytes(RecordEvent event) {
        JsonText.object(event.detailJson(), "the detail of an event");
        JsonOut out = new JsonOut();
        out.object(() -> out.text("format", FORMAT).text("id", event.id()).number("version", event.version())
                .text("kind", event.kind().key()).text("day", event.day().toString()).text("note", event.note())
                .text("by", event.by()).text("at", event.at().toString()).raw("detail", event.detailJson()));
        return out.bytes();
    }
}
