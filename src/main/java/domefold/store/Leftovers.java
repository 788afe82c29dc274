package domefold.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Files that a crash left half-written. They were never published; they are moved, not thrown away. */
final class Leftovers {
    /** No save takes this long; engineering gate, not published. */
    private static final Duration STALE = Duration.ofMinutes(15);

    private Leftovers() {}

    static List<String> setAside(Path folder, Instant now) throws IOException {
        List<String> moved = new ArrayList<>();
        for (String home : RecordShelf.names(folder)) {
            if (!Files.isDirectory(folder.resolve(home)) || home.equals(RecordPlaces.ASIDE)) {
                continue;
            }
            for (String name : RecordShelf.names(folder.resolve(home))) {
                if (name.endsWith(AtomicFile.UNFINISHED) && move(folder, home, name, now)) {
                    moved.add(home + "/" + name);
                }
            }
        }
        return moved;
    }

    private static boolean move(Path folder, String home, String name, Instant now) throws IOException {
        Path from = folder.resolve(home).resolve(name);
        try {
            if (Files.getLastModifiedTime(from).toInstant().isAfter(now.minus(STALE))) {
                return false;
            }
            AtomicFile.folder(folder.resolve(RecordPlaces.ASIDE));
            Files.move(from, folder.resolve(RecordPlaces.ASIDE).resolve(home + name), StandardCopyOption.REPLACE_EXISTING);
            return true;
        } catch (NoSuchFileException finishedMeanwhile) {
            return false;
        } catch (IOException failure) {
            throw StoreFailure.of("cannot set aside", from, failure);
        }
    }
}
