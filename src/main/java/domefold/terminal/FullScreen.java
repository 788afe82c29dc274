package domefold.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import domefold.screen.Effect;
import domefold.screen.Frame;
import domefold.screen.Key;
import domefold.screen.Screen;
import domefold.screen.SmallWindow;
import java.io.IOException;
import java.util.Optional;

/**
 * Shows a screen, hands it keys, carries out what it asks, until it asks to quit. However it ends, by a key, a signal or a
 * fault, the terminal is left as it was found.
 */
public final class FullScreen {
    private static final int LOOK_UP_MS = 100;
    private static final int KEYS_BEFORE_A_FRAME = 4096;

    private final Tty tty;

    /** Why the loop ended. */
    public enum Ended {
        /** The screen asked for it. */
        QUIT,
        /** An interrupt from outside; Ctrl-C is a key and does not lead here. */
        INTERRUPTED,
        /** The terminal is gone, or a signal is ending the program. */
        HUNG_UP
    }

    public FullScreen(Tty tty) {
        this.tty = tty;
    }

    /** Runs until the end; a fault of a screen or of an effect is thrown after the terminal is restored. */
    public Ended run(Screen first, Effects shell) throws IOException {
        try (Session session = new Session(tty)) {
            try {
                return new Loop(session, shell, first).run();
            } catch (IOException | RuntimeException failure) {
                if (session.takenDown()) {
                    return Ended.HUNG_UP;
                }
                throw failure;
            }
        }
    }

    /** The screen shown and how far it has got. */
    private static final class Loop {
        private final Session session;
        private final Effects shell;
        private final KeyReader reader = new KeyReader();
        private Screen screen;
        private boolean quit;

        Loop(Session session, Effects shell, Screen first) {
            this.session = session;
            this.shell = shell;
            this.screen = first;
        }

        Ended run() throws IOException {
            boolean painted = false;
            while (!quit) {
                TerminalSize size = session.glass().size();
                session.glass().show(Frame.of(screen, size.getColumns(), size.getRows(), session.modes().glyphs()));
                if (!painted) {
                    painted = true;
                    shell.painted();
                }
                if (session.awaitSomething(LOOK_UP_MS)) {
                    return Ended.INTERRUPTED;
                }
                if (!takeKeys(SmallWindow.isTooSmall(size.getColumns(), size.getRows()))) {
                    return Ended.HUNG_UP;
                }
            }
            return Ended.QUIT;
        }

        /** Hands over every key that has arrived, so that a paste is one frame; false at the end of the input. */
        private boolean takeKeys(boolean tooSmall) throws IOException {
            for (int count = 0; count < KEYS_BEFORE_A_FRAME && !quit; count++) {
                KeyStroke stroke = session.poll();
                if (stroke == null) {
                    return true;
                }
                if (stroke.getKeyType() == KeyType.EOF) {
                    return false;
                }
                Optional<Key> key = reader.read(stroke);
                if (key.isPresent()) {
                    take(key.get(), tooSmall);
                }
            }
            return true;
        }

        private void take(Key key, boolean tooSmall) throws IOException {
            if (key.isCtrl('l')) {
                session.glass().repaintWhole();
            } else if (!tooSmall || key.isCtrl('c')) {
                Screen.Step step = screen.onKey(key);
                screen = step.next();
                carryOut(step.effect());
            }
        }

        private void carryOut(Effect effect) throws IOException {
            if (effect instanceof Effect.Quit) {
                quit = true;
            } else if (!(effect instanceof Effect.Nothing)) {
                screen = screen.onOutcome(shell.carryOut(effect));
            }
        }
    }
}
