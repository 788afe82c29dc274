package domefold.app;

import domefold.line.LineConsult;
import domefold.patient.Case;
import domefold.practice.PracticeCase;
import domefold.screen.ConsultScreen;
import domefold.screen.ListLine;
import domefold.screen.Screen;
import domefold.screen.StartScreen;
import domefold.store.Homes;
import domefold.store.RecordShelf;
import domefold.store.Stored;
import domefold.terminal.Effects;
import domefold.terminal.FullScreen;
import domefold.terminal.NoTerminal;
import domefold.terminal.Opening;
import domefold.terminal.TerminalModes;
import domefold.terminal.Tty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;

/** The faces of this build. */
final class FacesHere {
    private FacesHere() {}

    static Faces of() {
        return new Faces() {
            @Override
            public int start(Console console, Homes homes, Callable<Workbench> laid) throws Exception {
                if (lineByLine(console, false)) {
                    return consult(console, laid, Optional.empty(), true);
                }
                TerminalModes modes = TerminalModes.detect(console.environment());
                boolean offeredAgain;
                try (Opening opening = Opening.of(modes);
                        LateEffects effects = new LateEffects(() -> effects(laid.call()))) {
                    RecordShelf.check(homes.records());
                    // The surgeon's settings may name another list, or be wrong, which is said at once.
                    ListLine list = Files.exists(homes.settings()) ? ListLine.of(laid.call().catalogue()) : ListLine.SHIPPED;
                    StartScreen screen = StartScreen.of(list, LeftConsults.of(homes, console.clock()));
                    opening.rehearse(screen);
                    run(opening.tty(), screen, effects);
                    offeredAgain = effects.offeredAgain();
                } catch (NoTerminal none) {
                    throw new WrongUsage(none.getMessage());
                }
                LineFace.sayWhatIsKept(console, offeredAgain);
                return Exit.DONE;
            }

            @Override
            public int consult(Console console, Callable<Workbench> laid, Optional<Path> file, boolean line) throws Exception {
                if (lineByLine(console, line)) {
                    return led(laid.call(), file, (first, effects, left) ->
                            LineFace.run(console, LineConsult.of(first.desk(), first.interview(), left), effects));
                }
                AtomicBoolean offeredAgain = new AtomicBoolean();
                try (Tty tty = opened(console)) {
                    led(laid.call(), file, (first, effects, left) -> {
                        run(tty, first, effects);
                        offeredAgain.set(effects.offeredAgain());
                        return Exit.DONE;
                    });
                }
                LineFace.sayWhatIsKept(console, offeredAgain.get());
                return Exit.DONE;
            }

            @Override
            public int amend(Workbench bench, Stored from, String reason, boolean line) throws Exception {
                ConsultSaving saving = new ConsultSaving(bench);
                ConsultDesk desk = new ConsultDesk(bench, from.record().id());
                try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
                    ConsultScreen first = effects.amending(from, reason);
                    if (lineByLine(bench.console(), line)) {
                        bench.console().text(effects.amendment() + "\n");
                    }
                    return lineByLine(bench.console(), line)
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
                if (lineByLine(bench.console(), line)) {
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

    /** What a consult is shown by. */
    private interface Shown {
        int by(ConsultScreen first, ConsultEffects effects, List<StartScreen.Left> left) throws IOException;
    }

    private static int led(Workbench bench, Optional<Path> file, Shown shown) throws IOException {
        Optional<Case> from = file.isEmpty() ? Optional.empty() : Optional.of(bench.readCase(file.get()));
        from.ifPresent(one -> ConsultSaving.refusePractice(one.code()));
        ConsultSaving saving = new ConsultSaving(bench);
        ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
        try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
            List<StartScreen.Left> left = desk.left();
            return shown.by(effects.opened(desk.begin(from), from), effects, left);
        }
    }

    /** Asked for, or nothing can be painted here. */
    private static boolean lineByLine(Console console, boolean asked) {
        return asked || !console.terminal() || !TerminalModes.detect(console.environment()).fullScreen();
    }

    private static Tty opened(Console console) {
        try {
            return Tty.open(TerminalModes.detect(console.environment()));
        } catch (NoTerminal none) {
            throw new WrongUsage(none.getMessage());
        }
    }

    private static ConsultEffects effects(Workbench bench) throws IOException {
        ConsultSaving saving = new ConsultSaving(bench);
        return new ConsultEffects(bench, new ConsultDesk(bench, saving.offeredCode()), saving);
    }

    private static int run(Workbench bench, Screen first, Effects effects) throws IOException {
        try (Tty tty = opened(bench.console())) {
            return run(tty, first, effects);
        }
    }

    private static int run(Tty tty, Screen first, Effects effects) throws IOException {
        new FullScreen(tty).run(first, effects);
        return Exit.DONE;
    }
}
