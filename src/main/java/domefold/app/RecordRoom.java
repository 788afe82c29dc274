package domefold.app;

import domefold.outcome.Refusal;
import domefold.record.RecordEvent;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.store.Homes;
import domefold.store.RecordShelf;
import domefold.store.Stored;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a coordinator finds: every record by its header, and one record by its id. */
final class RecordRoom {
    private final RecordShelf shelf;

    RecordRoom(Homes homes) {
        this.shelf = new RecordShelf(homes.records());
    }

    /** Every record's newest version. */
    RecordList list() throws IOException {
        List<RecordHeader> headers = new ArrayList<>();
        for (String id : shelf.ids()) {
            Optional<Stored> newest = shelf.newest(id);
            if (newest.isPresent()) {
                List<RecordEvent> events = shelf.events(id);
                headers.add(RecordHeader.of(newest.get().record(), events));
            }
        }
        return RecordList.of(headers);
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
        List<String> near = list().nearest(id);
        throw new Refusal("no-such-record", id, "there is no record '" + id + "'"
                + (near.isEmpty() ? "; 'domefold records find' lists them" : "; did you mean " + String.join(" or ", near) + "?"));
    }
}
