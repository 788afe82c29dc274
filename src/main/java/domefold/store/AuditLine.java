package domefold.store;

import domefold.outcome.Refusal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;

/**
 * One line of the audit log.
 *
 * @param seq 1 for the first line of a log
 * @param at when
 * @param who the author as typed
 * @param event what happened, for example {@code signed}
 * @param id which record
 * @param file which file of it
 * @param sha256 digest of that file
 * @param summarySha256 digest of the text beside it, empty where there is none
 * @param previous the hash of the line before; zeros before the first
 */
record AuditLine(
        int seq, Instant at, String who, String event, String id, String file, String sha256, String summarySha256,
        String previous) {
    static final String BEFORE_FIRST = "0".repeat(64);
    private static final int MOST_LINES = 1_000_000_000;
    private static final String HASH = ",\"hash\":\"";

    /** The hash that stands at the end of the line, over everything before it. */
    String hash() {
        return Digest.sha256(content().getBytes(StandardCharsets.UTF_8));
    }

    /** The line with its hash, ending in a line feed. */
    String text() {
        return content() + HASH + hash() + "\"}\n";
    }

    private String content() {
        JsonOut out = new JsonOut(false);
        out.object(() -> out.number("seq", seq).text("at", at.toString()).text("who", who).text("event", event)
                .text("record", id).text("file", file).text("sha256", sha256).text("summarySha256", summarySha256)
                .text("previous", previous));
        String json = out.text().strip();
        return json.substring(0, json.length() - 1);
    }

    /** The line as read; empty where anything in it is not as it was written. */
    static Optional<AuditLine> read(String text) {
        try {
            Fields fields = new Fields(JsonText.object(text, "audit log"), "audit log", null);
            fields.only("seq", "at", "who", "event", "record", "file", "sha256", "summarySha256", "previous", "hash");
            AuditLine line = new AuditLine(fields.needInteger("seq", 1, MOST_LINES), fields.needInstant("at"),
                    fields.needText("who"), fields.needText("event"), fields.needText("record"), fields.needText("file"),
                    fields.needText("sha256"), fields.needText("summarySha256"), fields.needText("previous"));
            return line.text().equals(text + "\n") ? Optional.of(line) : Optional.empty();
        } catch (Refusal altered) {
            return Optional.empty();
        }
    }
}
