package domefold.store;

import domefold.record.RecordEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/** What a records folder holds, read anew at every question: another workstation may have written since. */
public final class RecordShelf {
    private static final int TRIES = 5;

    private final Path folder;

    public RecordShelf(Path folder) {
        this.folder = folder;
    }

    /** Every id, those included whose code was issued and not used yet; sorted. */
    public List<String> ids() throws IOException {
        return names(folder).stream().filter(name -> !name.startsWith(".")).filter(name -> Files.isDirectory(folder.resolve(name)))
                .map(RecordPlaces::id).sorted().toList();
    }

    /** The newest version, or the draft where nothing is signed; empty where there is neither. */
    public Optional<Stored> newest(String id) throws IOException {
        Optional<Stored> version = highest(id, RecordPlaces::versionOf);
        return version.isPresent() ? version : draft(id);
    }

    /** The latest state of the draft. */
    public Optional<Stored> draft(String id) throws IOException {
        return highest(id, RecordPlaces::draftOf);
    }

    /** The frozen versions, the oldest first. */
    public List<Stored> versions(String id) throws IOException {
        List<Stored> out = new ArrayList<>();
        for (Path file : numbered(id, RecordPlaces::versionOf)) {
            out.add(new Stored(file, RecordFile.read(file)));
        }
        return out;
    }

    /** What happened after signing, the oldest first. */
    public List<RecordEvent> events(String id) throws IOException {
        List<RecordEvent> out = new ArrayList<>();
        Path home = home(id);
        for (String name : names(home)) {
            if (RecordPlaces.isEvent(name)) {
                out.add(EventFile.read(home.resolve(name)));
            }
        }
        out.sort(Comparator.comparing(RecordEvent::at));
        return out;
    }

    /** Versions that lost a clash and wait for somebody to look at both. */
    public List<Stored> conflicts(String id) throws IOException {
        List<Stored> out = new ArrayList<>();
        Path home = home(id);
        for (String name : names(home)) {
            if (RecordPlaces.isConflict(name)) {
                out.add(new Stored(home.resolve(name), RecordFile.read(home.resolve(name))));
            }
        }
        return out;
    }

    Path home(String id) {
        return folder.resolve(RecordPlaces.folderName(id));
    }

    /** A draft may be replaced by a later state between looking and reading; then one looks again. */
    private Optional<Stored> highest(String id, Function<Path, OptionalInt> number) throws IOException {
        for (int tries = 1; ; tries++) {
            List<Path> files = numbered(id, number);
            if (files.isEmpty()) {
                return Optional.empty();
            }
            Path file = files.get(files.size() - 1);
            if (Files.exists(file) || tries == TRIES) {
                try {
                    return Optional.of(new Stored(file, RecordFile.read(file)));
                } catch (domefold.outcome.Refusal gone) {
                    if (tries == TRIES || !gone.code().equals("no-such-file")) {
                        throw gone;
                    }
                }
            }
        }
    }

    private List<Path> numbered(String id, Function<Path, OptionalInt> number) throws IOException {
        Path home = home(id);
        return names(home).stream().map(home::resolve).filter(file -> number.apply(file).isPresent())
                .sorted(Comparator.comparingInt(file -> number.apply(file).getAsInt())).toList();
    }

    /**
     * Whether a folder of records can be looked into, without reading what is in it; one that is not there yet can.
     *
     * @throws StoreFailure if it cannot
     */
    public static void check(Path folder) throws IOException {
        try {
            Files.newDirectoryStream(folder).close();
        } catch (NoSuchFileException none) {
            // It is made when the first record is saved.
        } catch (IOException failure) {
            throw StoreFailure.of("cannot look into", folder, failure);
        }
    }

    /** Names in a folder, sorted; none where it is not there. */
    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (NoSuchFileException none) {
            return List.of();
        } catch (IOException failure) {
            throw StoreFailure.of("cannot look into", folder, failure);
        }
    }
}
