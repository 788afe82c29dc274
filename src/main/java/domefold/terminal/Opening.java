package domefold.terminal;

import domefold.screen.Frame;
import domefold.screen.Screen;
import java.io.Closeable;
import java.io.IOException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** A terminal being opened on a second thread, which takes as long as making what it will show. Whoever asks for it waits. */
public final class Opening implements Closeable {
    private static final int USUAL_COLUMNS = 80;
    private static final int USUAL_ROWS = 24;

    private final FutureTask<Tty> opening;
    private final TerminalModes modes;

    private Opening(TerminalModes modes) {
        this.modes = modes;
        opening = new FutureTask<>(() -> Tty.open(modes));
    }

    /** Begins. */
    public static Opening of(TerminalModes modes) {
        Opening begun = new Opening(modes);
        Thread thread = new Thread(begun.opening, "opening the terminal");
        thread.setDaemon(true);
        thread.start();
        return begun;
    }

    /** Draws and paints what will be shown, in the usual size and on no terminal, while the real one is opened. */
    public void rehearse(Screen screen) throws IOException {
        Glass.rehearse(Frame.of(screen, USUAL_COLUMNS, USUAL_ROWS, modes.glyphs()), new Palette(modes.colour(), modes.ground()));
    }

    /** The terminal, opened. */
    public Tty tty() throws NoTerminal {
        try {
            return opening.get();
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof NoTerminal none) {
                throw none;
            }
            throw new IllegalStateException(failure.getCause());
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interruption);
        }
    }

    /** Closes the terminal, once it is open. */
    @Override
    public void close() throws IOException {
        try {
            tty().close();
        } catch (NoTerminal nothingToClose) {
            // It was said where the terminal was asked for.
        }
    }
}
