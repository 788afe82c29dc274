package domefold.app;

import domefold.line.LineConsult;
import domefold.patient.Case;
import domefold.practice.PracticeCase;
import domefold.screen.ConsultScreen;
import domefold.screen.Screen;
import domefold.screen.StartScreen;
import domefold.store.Stored;
import domefold.terminal.FullScreen;
import domefold.terminal.NoTerminal;
import domefold.terminal.TerminalModes;
import domefold.terminal.Tty;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The faces of this build. */
final class FacesHere {
    private FacesHere() {}

    static Faces of() {
        return new Faces() {
            @Override
            public int start(Workbench bench) throws Exception {
                if (lineByLine(bench, false)) {
                    return consult(bench, Optional.empty(), true);
                }
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    return run(bench, desk.start(), effects);
                }
            }

            @Override
            public int consult(Workbench bench, Optional<Path> file, boolean line) throws Exception {
                Optional<Case> from = file.isEmpty() ? Optional.empty() : Optional.of(bench.readCase(file.get()));
                from.ifPresent(one -> ConsultSaving.refusePractice(one.code()));
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    List<StartScreen.Left> left = desk.left();
                    ConsultScreen first = effects.opened(desk.begin(from), from);
                    return lineByLine(bench, line)
                            ? LineFace.run(bench.console(), LineConsult.of(first.desk(), first.interview(), left), effects)
                            : run(bench, first, effects);
                }
            }

            @Override
            public int amend(Workbench bench, Stored from, String reason, boolean line) throws Exception {
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, from.record().id());
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    ConsultScreen first = effects.amending(from, reason);
                    if (lineByLine(bench, line)) {
                        bench.console().text(effects.amendment() + "\n");
                    }
                    return lineByLine(bench, line)
                            ? LineFace.run(bench.console(), LineConsult.of(first.desk(), first.interview(), List.of()), effects)
                            : run(bench, first, effects);
                }
            }

            @Override
            public int practise(Workbench bench, OptionalInt level, OptionalInt draw, List<PracticeCase> own, boolean line)
                    throws Exception {
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
                PracticeRoom room = new PracticeRoom(bench, desk.desk());
                if (lineByLine(bench, line)) {
                    return PracticeLines.run(bench.console(), room.lines(level, draw, own), room);
                }
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    return run(bench, room.screen(level, draw, own), effects);
                }
            }

            @Override
            public int records(Workbench bench) throws Exception {
                TerminalModes modes = TerminalModes.detect(bench.console().environment());
                if (!modes.fullScreen()) {
                    throw new WrongUsage("the coordinator's shell needs a terminal; name one of its commands");
                }
                try (Tty tty = Tty.open(modes)) {
                    return new RecordsShell(bench, tty).run();
                } catch (NoTerminal none) {
                    throw new WrongUsage(none.getMessage());
                }
            }
        };
    }

    /** Asked for, or nothing can be painted here. */
    private static boolean lineByLine(Workbench bench, boolean asked) {
        return asked || !bench.console().terminal() || !TerminalModes.detect(bench.console().environment()).fullScreen();
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
