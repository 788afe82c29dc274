package domefold.store;

import domefold.outcome.Refusal;
import domefold.record.Amendment;
import domefold.record.CaseCode;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Records on disk, one folder each. A frozen version is created once and never touched again; every state of a draft is a
 * new file too, so that of two writers one always learns of the other. Files are the truth; {@link RecordShelf} reads
 * them, {@link Verification} checks them.
 */
public final class RecordStore {
    private static final int HIGHEST_NUMBER = 999_999;

    private final Path folder;
    private final boolean practice;
    private final Workstation workstation;

    /**
     * @param folder where the records live; made at the first save
     * @param practice whether it is the folder of invented patients, who live apart
     */
    public RecordStore(Path folder, boolean practice, Workstation workstation) {
        this.folder = folder;
        this.practice = practice;
        this.workstation = workstation;
    }

    public RecordShelf shelf() {
        return new RecordShelf(folder);
    }

    /** Writes the text that goes beside a record, from the record as it will be read. */
    public interface Summary extends Function<RecordFile.Loaded, String> {}

    /** Claims the next free case code of that year, so that no other workstation issues it too. */
    public String issueCode(int year) throws IOException {
        AtomicFile.folder(folder);
        for (int number = CaseCode.nextNumber(year, shelf().ids()); number <= HIGHEST_NUMBER; number++) {
            Path claimed = folder.resolve(RecordPlaces.folderName(CaseCode.issue(year, number)));
            try {
                Files.createDirectory(claimed, AtomicFile.ownerOnly(folder, "rwx------"));
                AtomicFile.forceFolder(folder);
                return CaseCode.issue(year, number);
            } catch (FileAlreadyExistsException taken) {
                continue;
            } catch (IOException failure) {
                throw StoreFailure.of("cannot make the folder", claimed, failure);
            }
        }
        throw new Refusal("codes-used-up", "case", "no case code of " + year + " is free");
    }

    /**
     * Saves a draft.
     *
     * @param revision the state it was read from, 0 for a draft that is new
     * @throws Refusal if the case code is taken, or somebody saved a later state meanwhile; the draft is then kept beside
     *     it as a conflict
     */
    public Stored saveDraft(ConsultRecord draft, int revision, Summary summary) throws IOException {
        ownKind(draft);
        if (draft.status() != RecordStatus.DRAFT) {
            throw new IllegalArgumentException("a signed record is no draft");
        }
        List<Stored> versions = shelf().versions(draft.id());
        if (!versions.isEmpty()) {
            throw new Refusal("already-signed", draft.id(), "case " + Shown.plain(draft.id()) + " is signed as version "
                    + versions.get(versions.size() - 1).version() + "; amend that, or use another case code");
        }
        Optional<Stored> there = shelf().draft(draft.id());
        if (revision == 0 && there.isPresent()) {
            throw new Refusal("case-code-taken", draft.id(), "there is a draft of case " + Shown.plain(draft.id())
                    + " already; open that one, or use another case code");
        }
        if (there.map(Stored::revision).orElse(0) != revision) {
            throw keepBoth(draft, RecordPlaces.draft(revision + 1), summary);
        }
        Stored saved = create(draft, RecordPlaces.draft(revision + 1), "draft", summary);
        if (shelf().draft(draft.id()).map(Stored::revision).orElse(0) > saved.revision()) {
            remove(saved);
            throw keepBoth(draft, RecordPlaces.draft(revision + 1), summary);
        }
        there.ifPresent(this::remove);
        return saved;
    }

    /**
     * Signs: the record becomes version 1 and its draft goes.
     *
     * @param revision the state of the draft it was made from, 0 if it was never saved
     * @throws Refusal if a version 1 or a later state of the draft is there already; this one is then kept beside it as a
     *     conflict
     */
    public Stored sign(ConsultRecord draft, int revision, String author, Instant at, Summary summary) throws IOException {
        ownKind(draft);
        if (draft.status() != RecordStatus.DRAFT || draft.version() != 1) {
            throw new IllegalArgumentException("only a first draft is signed");
        }
        Optional<Stored> former = shelf().draft(draft.id());
        if (former.isPresent() && former.get().revision() != revision) {
            throw keepBoth(draft, RecordPlaces.draft(revision + 1), summary);
        }
        Stored saved = create(draft.signed(author, at), RecordPlaces.version(1), "signed", summary);
        former.ifPresent(this::remove);
        return saved;
    }

    /**
     * Saves a changed record as the version after the one it was made from. That one stays as it is.
     *
     * @param as {@link RecordStatus#AMENDED} or {@link RecordStatus#ENTERED_IN_ERROR}
     * @throws Refusal if there is no reason, nothing changed, a newer program wrote the version, or somebody else's next
     *     version is there already
     */
    public Stored amend(Stored from, ConsultRecord changed, RecordStatus as, String reason, String author, Instant at,
            Summary summary) throws IOException {
        ownKind(changed);
        ConsultRecord before = from.loaded().forChange();
        if (!before.status().isFrozen()) {
            throw new Refusal("not-signed", before.id(), "case " + Shown.plain(before.id())
                    + " is a draft; a draft is changed and saved, not amended");
        }
        if (reason.isBlank() || author.isBlank()) {
            throw new Refusal("no-reason", before.id(), "an amendment says why and by whom");
        }
        List<Amendment.FieldChange> changes = RecordDiff.between(before, changed);
        if (changes.isEmpty() && as == RecordStatus.AMENDED) {
            throw new Refusal("nothing-changed", before.id(), "nothing was changed; there is nothing to amend");
        }
        Amendment amendment =
                new Amendment(before.version(), from.loaded().sha256(), reason.strip(), author, at, changes);
        ConsultRecord next = changed.following(as, amendment);
        return create(next, RecordPlaces.version(next.version()), as.key(), summary);
    }

    /** Writes down what happened to a signed record. */
    public Path addEvent(RecordEvent event) throws IOException {
        if (practice) {
            throw new Refusal("practice-record", event.id(), "this is a practice case; nothing is ordered or booked for it");
        }
        if (shelf().versions(event.id()).isEmpty()) {
            throw new Refusal("not-signed", event.id(), "case " + Shown.plain(event.id())
                    + " is not signed; sign it before it is ordered or booked");
        }
        byte[] bytes = EventFile.bytes(event);
        Path home = home(event.id());
        for (int number = 1; ; number++) {
            Path file = home.resolve(RecordPlaces.event(workstation, event.at(), number));
            try {
                AtomicFile.create(file, bytes);
                log(event.at(), event.by(), event.kind().key(), event.id(), file, bytes, "");
                return file;
            } catch (FileAlreadyExistsException sameMoment) {
                continue;
            }
        }
    }

    /** Throws a draft away; nothing signed can be. */
    public void discardDraft(Stored draft, String who, Instant at) throws IOException {
        if (draft.loaded().record().status().isFrozen()) {
            throw new IllegalArgumentException("a signed version is never removed");
        }
        remove(draft);
        new AuditLog(folder.resolve(RecordPlaces.AUDIT), workstation).append(new AuditLog.Happened(at, who, "draft-discarded",
                draft.loaded().record().id(), draft.file().getFileName().toString(), draft.loaded().sha256(), ""));
    }

    /**
     * Sets half-written files of crashed runs aside; gives their names.
     *
     * @param now files younger than a quarter of an hour may still be being written
     */
    public List<String> setLeftoversAside(Instant now) throws IOException {
        return Leftovers.setAside(folder, now);
    }

    private Stored create(ConsultRecord record, String name, String event, Summary summary) throws IOException {
        byte[] bytes = RecordFile.bytes(record);
        RecordFile.Loaded loaded = RecordFile.read(bytes, name);
        String text = summary.apply(loaded);
        Path file = home(record.id()).resolve(name);
        try {
            AtomicFile.createUnforced(file, bytes);
        } catch (FileAlreadyExistsException taken) {
            throw clash(record, file, bytes, text);
        }
        settle(record, file, bytes, event, text);
        return new Stored(file, loaded);
    }

    /** The JSON is in place and is the truth; the text beside it, the folder and the log line follow. */
    private void settle(ConsultRecord record, Path file, byte[] bytes, String event, String text) throws IOException {
        AtomicFile.replaceUnforced(file.resolveSibling(RecordPlaces.summary(file.getFileName().toString())),
                text.getBytes(StandardCharsets.UTF_8));
        AtomicFile.forceFolder(file.getParent());
        log(record.authorship().savedAt(), record.authorship().author(), event, record.id(), file, bytes,
                Digest.sha256(text.getBytes(StandardCharsets.UTF_8)));
    }

    private void log(Instant at, String who, String event, String id, Path file, byte[] bytes, String summarySha256)
            throws IOException {
        new AuditLog(folder.resolve(RecordPlaces.AUDIT), workstation).append(new AuditLog.Happened(at, who, event, id,
                file.getFileName().toString(), Digest.sha256(bytes), summarySha256));
    }

    private Refusal keepBoth(ConsultRecord record, String name, Summary summary) throws IOException {
        byte[] bytes = RecordFile.bytes(record);
        return clash(record, home(record.id()).resolve(name), bytes, summary.apply(RecordFile.read(bytes, name)));
    }

    /** Neither writer loses anything: what was to be saved is kept beside what is there. */
    private Refusal clash(ConsultRecord record, Path file, byte[] bytes, String text) throws IOException {
        for (int number = 1; ; number++) {
            Path kept = file.resolveSibling(RecordPlaces.conflict(file.getFileName().toString(), workstation,
                    record.authorship().savedAt(), number));
            try {
                AtomicFile.createUnforced(kept, bytes);
                settle(record, kept, bytes, "conflict", text);
                return new Refusal("version-clash", Shown.path(file), "case " + Shown.plain(record.id()) + " was saved from elsewhere"
                        + " meanwhile; what is there stays, and yours is kept beside it as " + kept.getFileName() + "; look at both");
            } catch (FileAlreadyExistsException sameMoment) {
                continue;
            }
        }
    }

    private Path home(String id) throws IOException {
        Path home = folder.resolve(RecordPlaces.folderName(id));
        AtomicFile.folder(home);
        return home;
    }

    private void remove(Stored draft) {
        try {
            Files.deleteIfExists(draft.file());
            Files.deleteIfExists(draft.file().resolveSibling(RecordPlaces.summary(draft.file().getFileName().toString())));
        } catch (IOException stays) {
            // An older state of a draft that stays behind is passed over by the shelf: the later state wins.
            return;
        }
    }

    private void ownKind(ConsultRecord record) {
        if (record.practice() != practice) {
            throw new IllegalArgumentException("practice cases and patients' records live apart");
        }
    }
}
