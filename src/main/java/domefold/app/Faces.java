package domefold.app;

import domefold.practice.PracticeCase;
import domefold.store.Homes;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;

/** The faces that need a terminal: full screen and line by line. Each returns the exit code. */
public interface Faces {
    /**
     * The start screen.
     *
     * @param bench lays out the workbench; asked for as late as can be, because that takes as long as opening a terminal
     */
    int start(Console console, Homes homes, Callable<Workbench> bench) throws Exception;

    /**
     * A consult.
     *
     * @param bench as for the start screen
     * @param file the case to start from
     * @param line line by line instead of full screen
     */
    int consult(Console console, Callable<Workbench> bench, Optional<Path> file, boolean line) throws Exception;

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
