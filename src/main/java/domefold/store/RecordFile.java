package domefold.store;

import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Record files, {@code domefold-record/1}; the schema is {@code shared/schema/record-1.json}. Reading never rewrites.
 * A file of this format with fields that this version does not know opens read-only; a later format is refused by name.
 */
public final class RecordFile {
    /** A record with a plan of every shipped device is under 2 MB. */
    static final int LARGEST_BYTES = 32 << 20;

    private RecordFile() {}

    /**
     * A record as read.
     *
     * @param record the record
     * @param sha256 digest of the exact bytes
     * @param unknownFields fields this version does not know; while there is one, the record must not be written again
     */
    public record Loaded(ConsultRecord record, String sha256, List<String> unknownFields) {
        public Loaded {
            unknownFields = List.copyOf(unknownFields);
        }

        public boolean readOnly() {
            return !unknownFields.isEmpty();
        }

        /**
         * The record, for a change.
         *
         * @throws Refusal if a newer version of the program wrote it
         */
        public ConsultRecord forChange() {
            if (readOnly()) {
                throw new Refusal("written-by-newer", unknownFields.get(0), "record " + Shown.plain(record.id()) + " version "
                        + record.version() + " was written by a newer version of this program, with fields that this one does"
                        + " not know (" + Shown.plain(String.join(", ", unknownFields)) + "); it can be read, not changed");
            }
            return record;
        }
    }

    public static Loaded read(Path file) throws IOException {
        return read(InputFile.bytes(file, "a record", LARGEST_BYTES), Shown.path(file));
    }

    /**
     * The record in those bytes.
     *
     * @param name what to call them in a refusal
     */
    public static Loaded read(byte[] bytes, String name) {
        List<String> unknown = new ArrayList<>();
        Json.Obj object = JsonText.object(InputFile.utf8(bytes, name), name);
        ConsultRecord record = RecordReader.read(new Fields(object, name, unknown::add));
        return new Loaded(record, Digest.sha256(bytes), unknown);
    }

    /** The record as the bytes that are saved; reading them gives the same record. */
    public static byte[] bytes(ConsultRecord record) {
        JsonOut out = new JsonOut();
        RecordWriter.write(out, record);
        return out.bytes();
    }
}
