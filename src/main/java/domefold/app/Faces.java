package domefold.app;

import domefold.practice.PracticeCase;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The faces that need a terminal: full screen and line by line. Each returns the exit code. */
public interface Faces {
    /** The start screen. */
    int start(Workbench bench) throws Exception;

    /**
     * A consult.
     *
     * @param file the case to start from
     * @param line line by line instead of full screen
     */
    int consult(Workbench bench, Optional<Path> file, boolean line) throws Exception;

    /**
     * A practice case; the same number always draws the same patient.
     *
     * @param own a tutor's own cases instead of drawn ones; the number then counts in them
     */
    int practise(Workbench bench, OptionalInt level, OptionalInt draw, List<PracticeCase> own, boolean line) throws Exception;

    /** A signed record's consult again; signing saves the next version. */
    int amend(Workbench bench, domefold.store.Stored from, String reason, boolean line) throws Exception;

    /** The coordinator's shell. */
    int records(Workbench bench) throws Exception;
}
