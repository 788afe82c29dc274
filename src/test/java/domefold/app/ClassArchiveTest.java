package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassArchiveTest {
    /** Taken as it is spelled, the jar of a project in such a folder was not found, so no image could be made. */
    @Test
    void aFolderWithABlankInItsNameIsFound(@TempDir Path folder) throws Exception {
        Path jar = folder.resolve("two words + ä %41").resolve("domefold.jar");
        assertEquals(jar, ClassArchive.path(jar.toUri().toURL()));
    }
}
