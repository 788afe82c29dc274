package domefold.app;

import domefold.practice.PracticeCase;
import domefold.store.Homes;
import domefold.store.Stored;
import domefold.terminal.FullScreen;
import domefold.terminal.Tty;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;

/** The faces a command of the coordinator's shell may ask for: the terminal is open already. */
final class FacesInShell implements Faces {
    private final Tty tty;

    FacesInShell(Tty tty) {
        this.tty = tty;
    }

    @Override
    public int start(Console console, Homes homes, Callable<Workbench> bench) {
        throw elsewhere();
    }

    @Override
    public int consult(Console console, Callable<Workbench> bench, Optional<Path> file, boolean line) {
        throw elsewhere();
    }

    @Override
    public int practise(Workbench bench, OptionalInt level, OptionalInt draw, List<PracticeCase> own, boolean line) {
        throw elsewhere();
    }

    @Override
    public int records(Workbench bench) {
        throw elsewhere();
    }

    @Override
    public int amend(Workbench bench, Stored from, String reason, boolean line) throws Exception {
        if (line) {
            throw new WrongUsage("in the shell an amendment opens on the full screen; leave the shell for --line");
        }
        try (ConsultEffects effects = new ConsultEffects(bench, new ConsultDesk(bench, from.record().id()),
                new ConsultSaving(bench))) {
            new FullScreen(tty).run(effects.amending(from, reason), effects);
            return Exit.DONE;
        }
    }

    private static WrongUsage elsewhere() {
        return new WrongUsage("that is opened from outside the shell; `leave` leaves it");
    }
}
