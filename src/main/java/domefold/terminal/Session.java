package domefold.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import java.io.Closeable;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.jline.terminal.Terminal;

/** The terminal while the full screen has it: entered, signalled, suspended, resumed, and given back once. */
final class Session implements Closeable {
    /** Two writes and a call take a fraction of this; somebody who stops and continues a program takes longer. */
    private static final long LONGEST_GIVING_BACK_NS = 200_000_000;

    private final Tty tty;
    private final TtyTerminal terminal;
    private final Glass glass;
    private final HeldErrors errors;
    private final Map<Terminal.Signal, Terminal.SignalHandler> before = new EnumMap<>(Terminal.Signal.class);
    private boolean restored;
    private volatile boolean takenDown;
    private volatile boolean resized;
    private volatile boolean interrupted;
    private volatile boolean askedToSuspend;
    private volatile boolean continued;

    Session(Tty tty) throws IOException {
        this.tty = tty;
        this.terminal = TtyTerminal.on(tty.jline());
        this.glass = new Glass(terminal, new Palette(tty.modes().colour(), tty.modes().ground()));
        this.errors = new HeldErrors();
        tty.whenEnded(() -> {
            takenDown = true;
            restore();
        });
        on(Terminal.Signal.WINCH, () -> resized = true);
        on(Terminal.Signal.INT, () -> interrupted = true);
        on(Terminal.Signal.TSTP, () -> askedToSuspend = true);
        on(Terminal.Signal.CONT, () -> continued = true);
        try {
            glass.enter();
        } catch (IOException | RuntimeException failure) {
            close();
            throw failure;
        }
    }

    Glass glass() {
        return glass;
    }

    TerminalModes modes() {
        return tty.modes();
    }

    /** True once a signal is ending the program; what fails from then on fails because the terminal is given back. */
    boolean takenDown() {
        return takenDown;
    }

    KeyStroke poll() throws IOException {
        return terminal.pollInput();
    }

    /** Waits for a key, a new size or a return from suspension; true where an interrupt came from outside. */
    boolean awaitSomething(int lookUpMs) throws IOException {
        while (true) {
            if (interrupted) {
                return true;
            }
            if (askedToSuspend) {
                askedToSuspend = false;
                continued = false;
                suspend();
                return false;
            }
            if (resized || continued) {
                noticeWorld();
                return false;
            }
            if (terminal.keys().await(lookUpMs)) {
                return false;
            }
        }
    }

    private void noticeWorld() throws IOException {
        if (continued) {
            terminal.takeKeys();
            glass.repaintWhole();
        }
        continued = false;
        resized = false;
        terminal.getTerminalSize();
    }

    /**
     * Gives the terminal back, stops the job, and goes on when continued. A stop that came from outside has handed the terminal to
     * the shell already; then giving it back is what stops this process, and it must not be stopped again when it goes on.
     */
    private void suspend() throws IOException {
        long before = System.nanoTime();
        glass.leave();
        terminal.giveKeysBack();
        if (!continued && System.nanoTime() - before < LONGEST_GIVING_BACK_NS) {
            Job.stop();
        }
        terminal.takeKeys();
        terminal.getTerminalSize();
        glass.enter();
    }

    private void on(Terminal.Signal signal, Runnable action) {
        before.put(signal, tty.jline().handle(signal, received -> action.run()));
    }

    /** May run twice, once from the end of the program. */
    private synchronized void restore() {
        if (restored) {
            return;
        }
        restored = true;
        try {
            glass.leave();
        } catch (IOException gone) {
            // A terminal that hung up cannot be restored and need not be.
        }
        try {
            terminal.close();
        } catch (IOException gone) {
            // As above.
        }
        errors.release();
    }

    @Override
    public void close() {
        restore();
        tty.whenEnded(() -> {});
        if (!takenDown) {
            before.forEach((signal, handler) -> tty.jline().handle(signal, handler));
        }
    }
}
