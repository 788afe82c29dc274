package domefold.store;

import domefold.outcome.Refusal;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A records folder in one file: a zip of every file as it lies there, and at its end a manifest ({@code domefold-backup/1})
 * with each one's size and digest. Half-written files and claims stay behind; the index is made again from the files.
 */
public final class Backup {
    static final String FORMAT = "domefold-backup/1";
    static final String MANIFEST = "manifest.json";
    private static final int TRIES = 3;

    private Backup() {}

    /**
     * What was written.
     *
     * @param files how many files it holds
     * @param sha256 digest of the backup file itself
     */
    public record Made(int files, String sha256) {}

    /** One file of a backup: its path below the records folder, with {@code /} between. */
    record Item(String path, long sizeBytes, String sha256) {}

    /**
     * Writes the backup; whole or not at all.
     *
     * @throws Refusal if there is nothing to keep, a file of that name is there, it would lie among the records, or records
     *     were being saved all the while
     */
    public static Made write(Path records, Path target, Instant at) throws IOException {
        Path absolute = target.toAbsolutePath().normalize();
        if (Files.exists(absolute)) {
            throw new Refusal("backup-exists", Shown.path(target), Shown.path(target)
                    + " is there already; a backup is never written over, choose another name");
        }
        if (absolute.startsWith(records.toAbsolutePath().normalize())) {
            throw new Refusal("backup-inside", Shown.path(target), "a backup does not lie among the records; choose another folder");
        }
        if (RecordShelf.names(records).isEmpty()) {
            throw new Refusal("no-records", Shown.path(records), "there are no records to keep");
        }
        Path temp = temporary(absolute);
        try {
            Made made = writeSettled(records, temp, at);
            publish(temp, absolute);
            return made;
        } catch (IOException failure) {
            throw StoreFailure.of("cannot write", absolute, failure);
        } finally {
            Files.deleteIfExists(temp);
        }
    }

    private static Path temporary(Path target) throws IOException {
        try {
            return Files.createTempFile(target.getParent(), "." + target.getFileName() + ".", AtomicFile.UNFINISHED,
                    AtomicFile.ownerOnly(target.getParent(), "rw-------"));
        } catch (IOException failure) {
            throw StoreFailure.of("cannot write", target, failure);
        }
    }

    private static void publish(Path temp, Path target) throws IOException {
        try {
            Files.createLink(target, temp);
        } catch (UnsupportedOperationException noLinks) {
            Files.move(temp, target);
        }
        AtomicFile.forceFolder(target.getParent());
    }

    /** Only a copy during which no audit log grew holds together. */
    private static Made writeSettled(Path records, Path temp, Instant at) throws IOException {
        for (int tries = 0; tries < TRIES; tries++) {
            Map<String, Long> before = logs(records);
            Made made = zip(records, temp, at);
            if (before.equals(logs(records))) {
                return made;
            }
        }
        throw new Refusal("records-in-use", Shown.path(records), "records were being saved during the backup; try again");
    }

    private static Map<String, Long> logs(Path records) throws IOException {
        Map<String, Long> sizes = new TreeMap<>();
        Path audit = records.resolve(RecordPlaces.AUDIT);
        for (String name : RecordShelf.names(audit)) {
            sizes.put(name, Files.size(audit.resolve(name)));
        }
        return sizes;
    }

    private static Made zip(Path records, Path temp, Instant at) throws IOException {
        MessageDigest whole = sha256();
        List<Item> items = new ArrayList<>();
        try (FileChannel channel = FileChannel.open(temp, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            OutputStream out = new BufferedOutputStream(new DigestOutputStream(Channels.newOutputStream(channel), whole));
            ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
            for (Path file : files(records)) {
                byte[] bytes = Files.readAllBytes(file);
                String path = path(records, file);
                put(zip, path, bytes, at);
                items.add(new Item(path, bytes.length, Digest.sha256(bytes)));
            }
            put(zip, MANIFEST, manifest(items, at), at);
            zip.finish();
            out.flush();
            channel.force(true);
        }
        return new Made(items.size(), HexFormat.of().formatHex(whole.digest()));
    }

    private static List<Path> files(Path records) throws IOException {
        try (Stream<Path> all = Files.walk(records)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().endsWith(AtomicFile.UNFINISHED))
                    .filter(file -> !file.getFileName().toString().startsWith(Claims.NAME)).sorted().toList();
        }
    }

    private static String path(Path records, Path file) {
        List<String> names = new ArrayList<>();
        records.relativize(file).forEach(name -> names.add(name.toString()));
        return String.join("/", names);
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes, Instant at) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(at.toEpochMilli());
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    private static byte[] manifest(List<Item> items, Instant at) {
        JsonOut out = new JsonOut();
        out.object(() -> out.text("format", FORMAT).text("at", at.toString()).text("program", ProgramVersion.text())
                .objects("files", items, item -> out.text("path", item.path()).number("sizeBytes", item.sizeBytes())
                        .text("sha256", item.sha256())));
        return out.text().getBytes(StandardCharsets.UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
