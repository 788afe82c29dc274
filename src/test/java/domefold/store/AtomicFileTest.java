package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AtomicFileTest {
    private static final AtomicFile.Linking NO_LINKS = (link, existing) -> {
        throw new UnsupportedOperationException("no hard links here");
    };

    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        return RecordShelf.names(folder);
    }

    @Test
    void aFileIsReplacedWholeAndPrivately() throws IOException {
        Path file = folder.resolve("a.json");
        AtomicFile.replace(file, "first");
        AtomicFile.replace(file, "second");
        assertEquals("second", Files.readString(file));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals(List.of("a.json"), names(), "nothing else stays behind");
    }

    @ParameterizedTest(name = "with hard links: {0}")
    @ValueSource(booleans = {true, false})
    void whatIsThereIsNeverOverwrittenByCreating(boolean links) throws IOException {
        Path file = folder.resolve("v1.json");
        AtomicFile.Linking linking = links ? Files::createLink : NO_LINKS;
        AtomicFile.createUnforced(file, new byte[] {1}, linking);
        assertThrows(FileAlreadyExistsException.class, () -> AtomicFile.createUnforced(file, new byte[] {2}, linking));
        assertArrayEquals(new byte[] {1}, Files.readAllBytes(file));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals(List.of("v1.json"), names());
    }

    @ParameterizedTest(name = "with hard links: {0}")
    @ValueSource(booleans = {true, false})
    void ofManyWhoCreateTheSameFileOneSucceeds(boolean links) throws Exception {
        AtomicFile.Linking linking = links ? Files::createLink : NO_LINKS;
        ExecutorService many = Executors.newFixedThreadPool(8);
        try {
            for (int round = 0; round < 25; round++) {
                Path file = folder.resolve("v" + round + ".json");
                List<Callable<byte[]>> writers = new ArrayList<>();
                for (int writer = 0; writer < 8; writer++) {
                    byte[] bytes = ("writer " + writer).getBytes(java.nio.charset.StandardCharsets.UTF_8);
                    writers.add(() -> {
                        try {
                            AtomicFile.createUnforced(file, bytes, linking);
                            return bytes;
                        } catch (FileAlreadyExistsException lost) {
                            return null;
                        }
                    });
                }
                List<byte[]> won = new ArrayList<>();
                for (Future<byte[]> future : many.invokeAll(writers)) {
                    if (future.get() != null) {
                        won.add(future.get());
                    }
                }
                assertEquals(1, won.size(), "round " + round);
                assertArrayEquals(won.get(0), Files.readAllBytes(file));
            }
        } finally {
            many.shutdown();
        }
    }

    @Test
    void withoutHardLinksAClaimThatACrashLeftDoesNotBlockForEver() throws IOException {
        Path claim = Files.createFile(folder.resolve(".v1.json" + AtomicFile.UNFINISHED));
        Path file = folder.resolve("v1.json");
        assertThrows(FileAlreadyExistsException.class, () -> AtomicFile.createUnforced(file, new byte[] {1}, NO_LINKS));
        Files.setLastModifiedTime(claim, java.nio.file.attribute.FileTime.fromMillis(System.currentTimeMillis() - 3_600_000));
        AtomicFile.createUnforced(file, new byte[] {1}, NO_LINKS);
        assertEquals(List.of("v1.json"), names());
    }

    @Test
    void foldersAreMadePrivatelyAllTheWayDown() throws IOException {
        Path deep = folder.resolve("a/b/c");
        AtomicFile.folder(deep);
        for (Path path = deep; !path.equals(folder); path = path.getParent()) {
            assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(path)));
        }
    }

    @Test
    void aFileInThePlaceOfAFolderIsSaidPlainly() throws IOException {
        Path file = Files.writeString(folder.resolve("records"), "not a folder");
        StoreFailure failure = assertThrows(StoreFailure.class, () -> AtomicFile.folder(file.resolve("K-1")));
        assertTrue(failure.getMessage().startsWith("cannot make the folder "), failure.getMessage());
        assertThrows(StoreFailure.class, () -> AtomicFile.replace(folder.resolve("none/a.json"), "x"));
    }

    /** As root every folder can be written; the sentence is checked as an ordinary user only. */
    @Test
    void aReadOnlyHomeIsSaidPlainlyAndNothingIsHalfWritten() throws IOException {
        Path home = Files.createDirectory(folder.resolve("home"));
        Files.writeString(home.resolve("a.json"), "before");
        Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("r-x------"));
        try {
            assumeTrue(!Files.isWritable(home), "SKIPPED: run as root, who may write everywhere");
            StoreFailure failure = assertThrows(StoreFailure.class, () -> AtomicFile.replace(home.resolve("a.json"), "after"));
            assertTrue(failure.getMessage().endsWith("permission denied"), failure.getMessage());
            assertEquals("before", Files.readString(home.resolve("a.json")));
            assertEquals(List.of("a.json"), RecordShelf.names(home));
        } finally {
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwx------"));
        }
    }

    @Test
    void anUnreadableFileIsSaidPlainly() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), "{}");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeTrue(!Files.isReadable(file), "SKIPPED: run as root, who may read everything");
        StoreFailure failure = assertThrows(StoreFailure.class, () -> CaseFile.read(file, CaseRules.FORM_ONLY));
        assertTrue(failure.getMessage().endsWith("permission denied"), failure.getMessage());
    }
}
