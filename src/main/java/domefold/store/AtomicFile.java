package domefold.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * Files that are there whole or not at all, private to the user: written beside their place, forced to disk, then
 * published by one rename or one hard link, and the folder forced after it.
 */
public final class AtomicFile {
    /** Ending of a file that is being written; one that stays behind was cut off by a crash. */
    static final String UNFINISHED = ".unfinished";

    private static final long STALE_MS = 60_000;
    private static final FileAttribute<?>[] NONE = {};

    private AtomicFile() {}

    /** Puts the text there, in place of whatever was there before. */
    public static void replace(Path target, String text) throws IOException {
        replace(target, text.getBytes(StandardCharsets.UTF_8));
    }

    public static void replace(Path target, byte[] bytes) throws IOException {
        replaceUnforced(target, bytes);
        forceFolder(target.toAbsolutePath().getParent());
    }

    /** Where several files of one folder go together: the folder is still to be forced, once, before it counts. */
    static void replaceUnforced(Path target, byte[] bytes) throws IOException {
        publish(target, bytes, temp -> Files.move(temp, target, StandardCopyOption.ATOMIC_MOVE));
    }

    /**
     * Puts the bytes there if nothing is there yet.
     *
     * @throws FileAlreadyExistsException if something is; it stays as it was
     */
    public static void create(Path target, byte[] bytes) throws IOException {
        createUnforced(target, bytes, Files::createLink);
        forceFolder(target.toAbsolutePath().getParent());
    }

    /** As above, the folder still to be forced. */
    static void createUnforced(Path target, byte[] bytes) throws IOException {
        createUnforced(target, bytes, Files::createLink);
    }

    /** As above, with the linking to use: some shares have no hard links. */
    static void createUnforced(Path target, byte[] bytes, Linking linking) throws IOException {
        if (Files.exists(target)) {
            throw new FileAlreadyExistsException(target.toString());
        }
        publish(target, bytes, temp -> {
            try {
                linking.link(target, temp);
            } catch (UnsupportedOperationException noLinks) {
                moveUnderClaim(temp, target);
            }
        });
    }

    /** Where there are no links: the name is claimed by an exclusive creation, then the whole file moved into place. */
    private static void moveUnderClaim(Path temp, Path target) throws IOException {
        Path claim = target.resolveSibling("." + target.getFileName() + UNFINISHED);
        dropStale(claim);
        Files.createFile(claim, ownerOnly(target, "rw-------"));
        try {
            if (Files.exists(target)) {
                throw new FileAlreadyExistsException(target.toString());
            }
            Files.move(temp, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(claim);
        }
    }

    /** A claim lives for a moment; one that is older was left by a crash. */
    private static void dropStale(Path claim) throws IOException {
        try {
            if (Files.getLastModifiedTime(claim).toMillis() < System.currentTimeMillis() - STALE_MS) {
                Files.deleteIfExists(claim);
            }
        } catch (NoSuchFileException nobodyClaims) {
            // Whoever held it a moment ago has put it down; the exclusive creation decides.
        }
    }

    private static void publish(Path target, byte[] bytes, Publishing publishing) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        Path temp = null;
        try {
            temp = Files.createTempFile(folder, "." + target.getFileName() + ".", UNFINISHED, ownerOnly(folder, "rw-------"));
            try (FileChannel channel = FileChannel.open(temp, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            publishing.publish(temp);
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (IOException failure) {
            throw StoreFailure.of("cannot write", target, failure);
        } finally {
            if (temp != null) {
                Files.deleteIfExists(temp);
            }
        }
    }

    /** Makes the folder and those above it, private to the user, if they are not there. */
    public static void folder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        try {
            Path parent = folder.toAbsolutePath().getParent();
            if (parent != null) {
                folder(parent);
            }
            Files.createDirectory(folder, ownerOnly(folder, "rwx------"));
            if (parent != null) {
                forceFolder(parent);
            }
        } catch (FileAlreadyExistsException raced) {
            if (!Files.isDirectory(folder)) {
                throw StoreFailure.of("cannot make the folder", folder, raced);
            }
        } catch (IOException failure) {
            throw StoreFailure.of("cannot make the folder", folder, failure);
        }
    }

    /** Forces a folder's own entries to disk, where the system lets a folder be opened. */
    static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            // Windows opens no folder; its rename is in the journal of the file system already.
        }
    }

    /** {@code permissions} where the file system has them, else nothing. */
    static FileAttribute<?>[] ownerOnly(Path place, String permissions) {
        return place.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))}
                : NONE;
    }

    private interface Publishing {
        void publish(Path temp) throws IOException;
    }

    /** Makes {@code link} another name of {@code existing}, refusing a name that is taken. */
    interface Linking {
        void link(Path link, Path existing) throws IOException;
    }
}
