package domefold.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** The world failed (disk, permission): one sentence for a person, and nothing half-written. The shell ends with 4. */
public final class StoreFailure extends IOException {
    private static final long serialVersionUID = 1L;

    public StoreFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }

    /**
     * What went wrong, in words.
     *
     * @param attempt what was tried, for example "cannot write"
     */
    static StoreFailure of(String attempt, Path path, IOException cause) {
        if (cause instanceof StoreFailure already) {
            return already;
        }
        return new StoreFailure(attempt + " " + Shown.path(path) + ": " + why(cause), cause);
    }

    private static String why(IOException cause) {
        if (cause instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (cause instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (cause instanceof FileAlreadyExistsException) {
            return "a file of that name is there already";
        }
        if (cause instanceof NotDirectoryException || cause instanceof DirectoryNotEmptyException) {
            return "it is not a folder that can be used";
        }
        if (cause instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason().toLowerCase(java.util.Locale.ROOT);
        }
        return "the system could not do it";
    }
}
