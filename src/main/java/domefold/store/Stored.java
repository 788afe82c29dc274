package domefold.store;

import domefold.record.ConsultRecord;
import java.nio.file.Path;

/**
 * A record and where it lies.
 *
 * @param file its file
 * @param loaded the record as read, with the digest of its bytes
 */
public record Stored(Path file, RecordFile.Loaded loaded) {
    public ConsultRecord record() {
        return loaded.record();
    }

    public int version() {
        return loaded.record().version();
    }

    /** Which state of the draft this is, for {@link RecordStore#saveDraft}; 0 for a frozen version. */
    public int revision() {
        return RecordPlaces.draftOf(file).orElse(0);
    }

    /** The text summary beside it. */
    public Path summary() {
        return file.resolveSibling(RecordPlaces.summary(file.getFileName().toString()));
    }
}
