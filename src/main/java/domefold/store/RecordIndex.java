package domefold.store;

import domefold.outcome.Refusal;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The list of a records folder, kept in the cache so that it opens at once. Files are the truth: every opening looks at what
 * the audit logs have gained and at whether folders came or went, and reads those records anew; without an index, or with an
 * odd one, it is made again from the files. A record file changed by hand is not noticed here; verifying notices it.
 */
public final class RecordIndex {
    /** So few changes are read anew each time rather than written down: cheaper than writing a large index. */
    private static final int FEW = 200;

    private static final long UNSETTLED_MS = 100;
    private static final long NOT_KEPT = -1;

    private final Path records;
    private final RecordShelf shelf;
    private final Path file;

    /**
     * @param records the records folder
     * @param cache where the index may lie; a folder of its own per records folder is not needed
     */
    public RecordIndex(Path records, Path cache) {
        this.records = records;
        this.shelf = new RecordShelf(records);
        String which = Digest.sha256(records.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8));
        this.file = cache.resolve("records-" + which.substring(0, 16) + ".jsonl");
    }

    /**
     * A list as opened.
     *
     * @param unreadable cases whose newest file could not be read, with what is wrong, sorted by code
     */
    public record Opened(RecordList list, Map<String, String> unreadable) {}

    /** The list as the folder stands now. */
    public Opened open() throws IOException {
        Optional<IndexFile.Read> before = IndexFile.read(file);
        IndexFile.Made now = state();
        if (before.isEmpty() || shrank(before.get().made().audit(), now.audit())) {
            return rebuild();
        }
        Set<String> changed = new TreeSet<>(before.get().made().unreadable());
        Map<String, Long> read = gained(before.get().made().audit(), now.audit(), changed);
        boolean foldersChanged = before.get().made().folderChanged() != now.folderChanged();
        if (!foldersChanged && changed.isEmpty()) {
            return new Opened(RecordList.of(before.get().headers()), Map.of());
        }
        Map<String, RecordHeader> byId = new LinkedHashMap<>();
        before.get().headers().forEach(header -> byId.put(header.id(), header));
        if (foldersChanged) {
            Set<String> ids = new HashSet<>(names());
            byId.keySet().removeIf(id -> !ids.contains(id));
            ids.removeAll(byId.keySet());
            changed.addAll(ids);
        }
        Skimmed anew = skim(changed);
        changed.forEach(byId::remove);
        byId.putAll(anew.headers());
        Opened opened = new Opened(RecordList.of(List.copyOf(byId.values())), anew.unreadable());
        if (foldersChanged || changed.size() > FEW) {
            keep(opened, new IndexFile.Made(settled(now.folderChanged()), read, List.copyOf(anew.unreadable().keySet())));
        }
        return opened;
    }

    /** The list made from the files alone. */
    public Opened rebuild() throws IOException {
        IndexFile.Made now = state();
        Skimmed all = skim(names());
        Opened opened = new Opened(RecordList.of(List.copyOf(all.headers().values())), all.unreadable());
        keep(opened, new IndexFile.Made(settled(now.folderChanged()), now.audit(), List.copyOf(all.unreadable().keySet())));
        return opened;
    }

    private record Skimmed(Map<String, RecordHeader> headers, Map<String, String> unreadable) {}

    private Skimmed skim(Collection<String> ids) throws IOException {
        Map<String, RecordHeader> headers = Collections.synchronizedMap(new LinkedHashMap<>());
        Map<String, String> unreadable = Collections.synchronizedMap(new TreeMap<>());
        try {
            ids.parallelStream().forEach(id -> {
                try {
                    header(id).ifPresent(header -> headers.put(id, header));
                } catch (Refusal odd) {
                    unreadable.put(id, odd.getMessage());
                } catch (IOException failure) {
                    throw new UncheckedIOException(failure);
                }
            });
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
        return new Skimmed(headers, unreadable);
    }

    /** The newest version with what happened since, else the draft; nothing for a code that was only issued. */
    private Optional<RecordHeader> header(String id) throws IOException {
        Path home = shelf.home(id);
        Path version = null;
        Path draft = null;
        List<RecordHeader.Happening> happened = new ArrayList<>();
        for (String name : RecordShelf.names(home)) {
            Path path = home.resolve(name);
            if (RecordPlaces.versionOf(path).isPresent()) {
                version = higher(version, path, RecordPlaces.versionOf(path).getAsInt(), true);
            } else if (RecordPlaces.draftOf(path).isPresent()) {
                draft = higher(draft, path, RecordPlaces.draftOf(path).getAsInt(), false);
            } else if (RecordPlaces.isEvent(name)) {
                var event = EventFile.read(path);
                happened.add(new RecordHeader.Happening(event.kind(), event.day()));
            }
        }
        Path newest = version != null ? version : draft;
        try {
            return newest == null ? Optional.empty() : Optional.of(checked(RecordSkim.read(newest, happened), id));
        } catch (NoSuchFileException replaced) {
            List<domefold.record.RecordEvent> events = shelf.events(id);
            return shelf.newest(id).map(stored -> RecordHeader.of(stored.record(), events));
        }
    }

    private static RecordHeader checked(RecordHeader header, String id) {
        if (!header.id().equals(id)) {
            throw new Refusal("record-misplaced", id, "holds the record of case " + Shown.plain(header.id()));
        }
        return header;
    }

    private static Path higher(Path so, Path path, int number, boolean version) {
        if (so == null) {
            return path;
        }
        int before = (version ? RecordPlaces.versionOf(so) : RecordPlaces.draftOf(so)).getAsInt();
        return number > before ? path : so;
    }

    private List<String> names() throws IOException {
        return RecordShelf.names(records).stream().filter(name -> !name.startsWith(".")).map(RecordPlaces::id).toList();
    }

    private IndexFile.Made state() throws IOException {
        Map<String, Long> audit = new TreeMap<>();
        Path logs = records.resolve(RecordPlaces.AUDIT);
        for (String name : RecordShelf.names(logs)) {
            if (name.endsWith(AuditLog.ENDING)) {
                audit.put(name, Files.size(logs.resolve(name)));
            }
        }
        try {
            return new IndexFile.Made(Files.getLastModifiedTime(records).toMillis(), audit, List.of());
        } catch (NoSuchFileException none) {
            return new IndexFile.Made(0, audit, List.of());
        }
    }

    /**
     * A folder's time moves in steps of some milliseconds, so that a second change in the same step leaves it as it was. A
     * time as young as that is not kept; the names are then listed once more at the next opening.
     */
    private static long settled(long folderChanged) {
        return System.currentTimeMillis() - folderChanged < UNSETTLED_MS ? NOT_KEPT : folderChanged;
    }

    private static boolean shrank(Map<String, Long> before, Map<String, Long> now) {
        return before.entrySet().stream().anyMatch(log -> now.getOrDefault(log.getKey(), -1L) < log.getValue());
    }

    /** The ids that the logs have gained since; gives back how far each log was read, in whole lines. */
    private Map<String, Long> gained(Map<String, Long> before, Map<String, Long> now, Set<String> ids) throws IOException {
        Map<String, Long> read = new TreeMap<>();
        for (Map.Entry<String, Long> log : now.entrySet()) {
            long from = before.getOrDefault(log.getKey(), 0L);
            read.put(log.getKey(), from);
            if (log.getValue() > from) {
                read.put(log.getKey(), from + gained(records.resolve(RecordPlaces.AUDIT).resolve(log.getKey()), from, ids));
            }
        }
        return read;
    }

    private static long gained(Path log, long from, Set<String> ids) throws IOException {
        byte[] tail;
        try (var channel = Files.newByteChannel(log)) {
            channel.position(from);
            tail = java.nio.channels.Channels.newInputStream(channel).readAllBytes();
        }
        String text = new String(tail, StandardCharsets.UTF_8);
        int end = text.lastIndexOf('\n') + 1;
        for (String line : text.substring(0, end).split("\n")) {
            AuditLine.read(line).ifPresent(entry -> ids.add(entry.id()));
        }
        return text.substring(0, end).getBytes(StandardCharsets.UTF_8).length;
    }

    /** The index is a convenience: where it cannot be written, the list is still right. */
    private void keep(Opened opened, IndexFile.Made made) {
        try {
            IndexFile.write(file, made, opened.list().all());
        } catch (IOException unwritable) {
            return;
        }
    }
}
