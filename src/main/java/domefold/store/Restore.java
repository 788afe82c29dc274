package domefold.store;

import domefold.outcome.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Puts a backup back into an empty records folder: first beside it, every file held against the manifest, then in one rename.
 * A backup that is not whole leaves nothing behind.
 */
public final class Restore {
    private static final int LARGEST_FILE_BYTES = 1 << 30;

    private final Path backup;
    private final String name;

    private Restore(Path backup) {
        this.backup = backup;
        this.name = Shown.path(backup);
    }

    /**
     * What was put back.
     *
     * @param files how many files
     * @param check the restored folder against its own audit logs
     */
    public record Restored(int files, Verification check) {}

    /**
     * Restores.
     *
     * @throws Refusal if the folder is not empty, or the file is no backup of ours or not whole
     */
    public static Restored of(Path backup, Path records) throws IOException {
        if (!RecordShelf.names(records).isEmpty()) {
            throw new Refusal("folder-not-empty", Shown.path(records), Shown.path(records)
                    + " holds records; a backup is restored into an empty folder only, give another one with --home");
        }
        return new Restore(backup).into(records.toAbsolutePath().normalize());
    }

    private Restored into(Path records) throws IOException {
        AtomicFile.folder(records.getParent());
        Path beside = Files.createTempDirectory(records.getParent(), ".restoring-",
                AtomicFile.ownerOnly(records.getParent(), "rwx------"));
        try (ZipFile zip = new ZipFile(backup.toFile(), StandardCharsets.UTF_8)) {
            List<Backup.Item> items = manifest(zip);
            same(zip, items);
            for (Backup.Item item : items) {
                extract(zip, item, beside);
            }
            Verification check = Verification.of(beside);
            Files.deleteIfExists(records);
            Files.move(beside, records, StandardCopyOption.ATOMIC_MOVE);
            AtomicFile.forceFolder(records.getParent());
            return new Restored(items.size(), check);
        } catch (ZipException noZip) {
            throw damaged("it is no whole zip file");
        } catch (NoSuchFileException none) {
            throw new Refusal("no-such-file", name, "there is no file " + name);
        } catch (IOException failure) {
            throw StoreFailure.of("cannot restore from", backup, failure);
        } finally {
            remove(beside);
        }
    }

    private List<Backup.Item> manifest(ZipFile zip) throws IOException {
        ZipEntry entry = zip.getEntry(Backup.MANIFEST);
        if (entry == null) {
            throw new Refusal("no-backup", name, name + " is no backup of this program: it holds no " + Backup.MANIFEST);
        }
        byte[] bytes = bytes(zip, entry, LARGEST_FILE_BYTES);
        Fields fields = new Fields(JsonText.object(InputFile.utf8(bytes, Backup.MANIFEST), Backup.MANIFEST), Backup.MANIFEST,
                later -> {});
        FormatLine.require(fields, Backup.FORMAT, "a backup");
        return fields.objects("files", item -> new Backup.Item(item.needText("path"),
                item.needInteger("sizeBytes", 0, LARGEST_FILE_BYTES), item.needText("sha256")));
    }

    /** The zip holds what the manifest names, no more and no less. */
    private void same(ZipFile zip, List<Backup.Item> items) {
        Set<String> held = new TreeSet<>();
        zip.stream().map(ZipEntry::getName).filter(path -> !path.equals(Backup.MANIFEST)).forEach(held::add);
        for (Backup.Item item : items) {
            if (!held.remove(item.path())) {
                throw damaged(Shown.plain(item.path()) + " is missing");
            }
        }
        if (!held.isEmpty()) {
            throw damaged(Shown.plain(held.iterator().next()) + " is not in its manifest");
        }
    }

    private void extract(ZipFile zip, Backup.Item item, Path root) throws IOException {
        Path target = root.resolve(item.path()).normalize();
        if (item.path().contains("\\") || !target.startsWith(root) || target.equals(root)) {
            throw damaged(Shown.plain(item.path()) + " would lie outside the records folder");
        }
        byte[] bytes = bytes(zip, zip.getEntry(item.path()), item.sizeBytes());
        if (bytes.length != item.sizeBytes() || !Digest.sha256(bytes).equals(item.sha256())) {
            throw damaged(Shown.plain(item.path()) + " is not as it was backed up");
        }
        AtomicFile.folder(target.getParent());
        AtomicFile.replaceUnforced(target, bytes);
        AtomicFile.forceFolder(target.getParent());
    }

    private byte[] bytes(ZipFile zip, ZipEntry entry, long mostBytes) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return in.readNBytes((int) Math.min(LARGEST_FILE_BYTES, mostBytes + 1));
        } catch (ZipException broken) {
            throw damaged(Shown.plain(entry.getName()) + " cannot be unpacked");
        }
    }

    private Refusal damaged(String why) {
        return new Refusal("backup-damaged", name, name + " is not whole: " + why + "; nothing was restored");
    }

    private static void remove(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
