package domefold.app;

import domefold.outcome.Refusal;
import domefold.store.Homes;
import domefold.store.RecordIndex;
import domefold.store.RecordShelf;
import domefold.store.Stored;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What a coordinator finds: every record by its header, and one record by its id. */
final class RecordRoom {
    private final RecordShelf shelf;
    private final RecordIndex index;

    RecordRoom(Homes homes) {
        this.shelf = new RecordShelf(homes.records());
        this.index = new RecordIndex(homes.records(), homes.cache());
    }

    /** Every record's newest version, and the cases that could not be read. */
    RecordIndex.Opened open() throws IOException {
        return index.open();
    }

    /**
     * The newest version of one record.
     *
     * @throws Refusal if there is none, with the ids that look like it
     */
    Stored newest(String id) throws IOException {
        Optional<Stored> found = shelf.newest(id);
        if (found.isPresent()) {
            return found.get();
        }
        List<String> near = open().list().nearest(id);
        throw new Refusal("no-such-record", id, "there is no record '" + id + "'"
                + (near.isEmpty() ? "; 'domefold records find' lists them" : "; did you mean " + String.join(" or ", near) + "?"));
    }
}
