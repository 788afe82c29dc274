package domefold.app;

import domefold.outcome.Refusal;
import domefold.record.RecordEvent;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.store.Homes;
import domefold.store.RecordIndex;
import domefold.store.RecordShelf;
import domefold.store.RecordStore;
import domefold.store.Stored;
import domefold.store.Workstation;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a coordinator finds: every record by its header, and one record by its id. */
final class RecordRoom {
    private final Homes homes;
    private final RecordShelf shelf;
    private final RecordIndex index;

    RecordRoom(Homes homes) {
        this.homes = homes;
        this.shelf = new RecordShelf(homes.records());
        this.index = new RecordIndex(homes.records(), homes.cache());
    }

    RecordShelf shelf() {
        return shelf;
    }

    /** Where events and amendments are written. */
    RecordStore store(Map<String, String> environment) {
        return new RecordStore(homes.records(), false, Workstation.here(environment));
    }

    /** Every record's newest version, and what could not be read. */
    RecordIndex.Opened opened() throws IOException {
        return index.open();
    }

    /** Every record's newest version; what could not be read is said once. */
    RecordList list(Console console) throws IOException {
        RecordIndex.Opened opened = opened();
        opened.unreadable().forEach((id, why) -> console.say("case " + id + " is not listed: its record " + why));
        return opened.list();
    }

    /**
     * The newest version of one record; a practice case is looked for too, so that a refusal can say what it is.
     *
     * @throws Refusal if there is none, with the ids that look like it
     */
    Stored newest(String id) throws IOException {
        Optional<Stored> found = shelf.newest(id);
        if (found.isPresent()) {
            return found.get();
        }
        Optional<Stored> practice = new RecordShelf(homes.practice()).newest(id);
        if (practice.isPresent()) {
            return practice.get();
        }
        RecordList list = opened().list();
        Optional<RecordHeader> otherCase = list.byCode(id);
        if (otherCase.isPresent()) {
            return shelf.newest(otherCase.get().id()).orElseThrow();
        }
        List<String> near = list.nearest(id);
        throw new Refusal("no-such-record", id, "there is no record '" + id + "'"
                + (near.isEmpty() ? "; 'domefold records find' lists them" : "; did you mean " + String.join(" or ", near) + "?"));
    }

    /**
     * One version of a record; 0 for the newest.
     *
     * @throws Refusal if there is no such version
     */
    Stored version(String id, int number) throws IOException {
        Stored newest = newest(id);
        if (number == 0 || newest.version() == number) {
            return newest;
        }
        return shelf.versions(newest.record().id()).stream().filter(stored -> stored.version() == number).findFirst()
                .orElseThrow(() -> new Refusal("no-such-version", id, "case " + newest.record().id() + " has no version " + number
                        + "; the newest is " + newest.version()));
    }

    /** The header of a record as read, with what happened since. */
    RecordHeader header(Stored stored) throws IOException {
        List<RecordEvent> events = shelf.events(stored.record().id());
        return RecordHeader.of(stored.record(), events);
    }
}
