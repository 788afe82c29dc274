package domefold.app;

import domefold.patient.Case;
import domefold.screen.Screen;
import domefold.terminal.FullScreen;
import domefold.terminal.NoTerminal;
import domefold.terminal.TerminalModes;
import domefold.terminal.Tty;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** The faces of this build. */
final class FacesHere {
    private FacesHere() {}

    static Faces of() {
        return new Faces() {
            @Override
            public int start(Workbench bench) throws Exception {
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    return run(bench, desk.start(), effects);
                }
            }

            @Override
            public int consult(Workbench bench, Optional<Path> file, boolean line) throws Exception {
                Optional<Case> from = file.isEmpty() ? Optional.empty() : Optional.of(bench.readCase(file.get()));
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    return run(bench, effects.opened(desk.begin(from), from), effects);
                }
            }

            @Override
            public int practise(Workbench bench, OptionalInt level, OptionalLong draw) {
                throw new WrongUsage("practice is not in this build yet");
            }

            @Override
            public int records(Workbench bench) {
                throw new WrongUsage("the records shell is not in this build yet; name one of its commands");
            }
        };
    }

    private static int run(Workbench bench, Screen first, ConsultEffects effects) throws IOException {
        try (Tty tty = Tty.open(TerminalModes.detect(bench.console().environment()))) {
            new FullScreen(tty).run(first, effects);
            return Exit.DONE;
        } catch (NoTerminal none) {
            throw new WrongUsage(none.getMessage());
        }
    }
}
