package domefold.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The unfinished consults that a folder holds. Looking changes nothing. */
public final class Journals {
    /** A consult has some 45 answers of under 200 bytes; engineering gate, not published. */
    private static final int LARGEST_BYTES = 16 << 20;

    private Journals() {}

    /** All of them, the latest first. A journal whose first line is unreadable is left out and stays where it is. */
    public static List<Journal.Unfinished> unfinished(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Journal.Unfinished> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(Journal.ENDING)).toList()) {
                read(file).ifPresent(found::add);
            }
        } catch (IOException failure) {
            throw StoreFailure.of("cannot look for unfinished consults in", folder, failure);
        }
        found.sort(Comparator.comparing(Journal.Unfinished::lastAt).reversed());
        return found;
    }

    /** The one with that id. */
    public static Optional<Journal.Unfinished> find(Path folder, String id) throws IOException {
        return unfinished(folder).stream().filter(left -> left.id().equals(id)).findFirst();
    }

    private static Optional<Journal.Unfinished> read(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            Optional<FileLock> lock = Journal.lock(channel);
            byte[] bytes = InputFile.bytes(file, "a journal", LARGEST_BYTES);
            return replay(file, bytes, lock.isEmpty());
        } catch (NoSuchFileException justFinished) {
            return Optional.empty();
        }
    }

    /** Where the readable part of it ends now. */
    static long wholeBytes(Path file) throws IOException {
        return replay(file, InputFile.bytes(file, "a journal", LARGEST_BYTES), false).map(Journal.Unfinished::wholeBytes).orElse(0L);
    }

    /** Every line up to the first that is not whole. */
    private static Optional<Journal.Unfinished> replay(Path file, byte[] bytes, boolean inUse) {
        List<Journal.Entry> entries = new ArrayList<>();
        Optional<Journal.Start> start = Optional.empty();
        int from = 0;
        for (int at = 0; at < bytes.length; at++) {
            if (bytes[at] != '\n') {
                continue;
            }
            String line = new String(bytes, from, at - from, StandardCharsets.UTF_8);
            if (start.isEmpty()) {
                start = JournalText.start(line);
                if (start.isEmpty()) {
                    return Optional.empty();
                }
            } else {
                Optional<Journal.Entry> entry = JournalText.entry(line);
                if (entry.isEmpty()) {
                    break;
                }
                entries.add(entry.get());
            }
            from = at + 1;
        }
        int whole = from;
        return start.map(first -> new Journal.Unfinished(file, first, entries, whole < bytes.length, whole, inUse));
    }

    /** Throws it away. */
    public static void discard(Journal.Unfinished left) throws IOException {
        try {
            Files.deleteIfExists(left.file());
            AtomicFile.forceFolder(left.file().getParent());
        } catch (IOException failure) {
            throw StoreFailure.of("cannot remove", left.file(), failure);
        }
    }

    /** Keeps it under another name, so that it is not offered again; gives the new name. */
    public static Path keepAside(Journal.Unfinished left) throws IOException {
        Path kept = left.file().resolveSibling(left.file().getFileName() + Journal.KEPT);
        try {
            Files.move(left.file(), kept, StandardCopyOption.ATOMIC_MOVE);
            AtomicFile.forceFolder(kept.getParent());
            return kept;
        } catch (IOException failure) {
            throw StoreFailure.of("cannot set aside", left.file(), failure);
        }
    }
}
