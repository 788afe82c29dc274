package domefold.store;

import domefold.outcome.Refusal;
import domefold.patient.Case;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * The journal of one unfinished consult: one line per accepted answer, on disk before the next is asked. A line is
 * {@code CRC32C json}. While it is open no other process is offered it.
 *
 * <p>{@link Journals} lists what earlier runs left behind.
 */
public final class Journal implements Closeable {
    static final String FORMAT = "domefold-journal/1";
    static final String ENDING = ".journal";
    static final String TORN = ".torn";
    static final String KEPT = ".kept";

    private final Path file;
    private final FileChannel channel;

    private Journal(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * One accepted answer, or that one was taken back.
     *
     * @param at when
     * @param what {@code answer}, or another word of the interview's own
     * @param question the question's id, empty where there is none
     * @param text exactly what was typed
     */
    public record Entry(Instant at, String what, String question, String text) {}

    /**
     * How the consult began.
     *
     * @param startedAt when
     * @param practice whether the patient is invented
     * @param start the case it began from, empty for a fresh one
     * @param about words for the list of unfinished consults, possibly empty
     */
    public record Start(Instant startedAt, boolean practice, Optional<Case> start, String about) {}

    /** A new journal in that folder, which is made if need be. */
    public static Journal begin(Path folder, Start start) throws IOException {
        AtomicFile.folder(folder);
        Path file = folder.resolve(UUID.randomUUID() + ENDING);
        try {
            Files.createFile(file, AtomicFile.ownerOnly(folder, "rw-------"));
            Journal journal = open(file);
            journal.append(JournalText.line(start));
            AtomicFile.forceFolder(folder);
            return journal;
        } catch (IOException failure) {
            throw StoreFailure.of("cannot write the journal in", folder, failure);
        }
    }

    /**
     * Goes on with what an earlier run left. A torn end is put aside, not thrown away.
     *
     * @throws Refusal if another process has it open, or has gone on with it since it was listed
     */
    public static Journal resume(Unfinished left) throws IOException {
        Path file = left.file();
        try {
            Journal journal = open(file);
            long whole = left.wholeBytes();
            if (Journals.wholeBytes(file) != whole) {
                journal.close();
                throw new Refusal("journal-moved-on", left.id(), "this consult went on in another window since it was listed; open"
                        + " it again to see the later answers");
            }
            if (journal.channel.size() > whole) {
                Files.copy(file, file.resolveSibling(file.getFileName() + TORN), StandardCopyOption.REPLACE_EXISTING,
                        StandardCopyOption.COPY_ATTRIBUTES);
                journal.channel.truncate(whole);
                journal.channel.force(true);
            }
            journal.channel.position(whole);
            return journal;
        } catch (IOException failure) {
            throw StoreFailure.of("cannot go on with", file, failure);
        }
    }

    private static Journal open(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE));
        if (lock(channel).isEmpty()) {
            channel.close();
            throw new Refusal("journal-in-use", Shown.path(file), "this consult is open in another window; go on there, or close"
                    + " it first");
        }
        return new Journal(file, channel);
    }

    /** The lock on it, empty while somebody else has it open. */
    static Optional<FileLock> lock(FileChannel channel) throws IOException {
        try {
            return Optional.ofNullable(channel.tryLock());
        } catch (OverlappingFileLockException oursElsewhere) {
            return Optional.empty();
        }
    }

    /** Names this journal among the others. */
    public String id() {
        return idOf(file);
    }

    static String idOf(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.length() - ENDING.length());
    }

    /** Returns once the entry is on disk. */
    public void append(Entry entry) throws IOException {
        try {
            append(JournalText.line(entry));
        } catch (IOException failure) {
            throw StoreFailure.of("cannot write the journal", file, failure);
        }
    }

    private void append(String line) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(line.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(false);
    }

    /** The consult is saved: the journal has done its work. Called last, after the record is on disk. */
    public void finish() throws IOException {
        close();
        Files.deleteIfExists(file);
        AtomicFile.forceFolder(file.getParent());
    }

    /** Leaves it where it is, for the next start. */
    @Override
    public void close() throws IOException {
        channel.close();
    }

    /**
     * A consult that was not finished.
     *
     * @param file its journal
     * @param start how it began
     * @param entries the answers up to the first bad line
     * @param torn whether something unreadable follows them
     * @param wholeBytes where the readable part ends
     * @param inUse whether a process has it open now
     */
    public record Unfinished(
            Path file, Start start, java.util.List<Entry> entries, boolean torn, long wholeBytes, boolean inUse) {
        public Unfinished {
            entries = java.util.List.copyOf(entries);
        }

        public String id() {
            return idOf(file);
        }

        /** When something was last answered. */
        public Instant lastAt() {
            return entries.isEmpty() ? start.startedAt() : entries.get(entries.size() - 1).at();
        }
    }
}
