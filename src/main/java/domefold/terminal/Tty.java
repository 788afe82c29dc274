package domefold.terminal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.utils.InfoCmp;
import org.jline.utils.ShutdownHooks;

/**
 * The terminal this process was started on, opened once and owned here; both faces live on it, one after the other.
 * Nobody else may touch {@code System.in}.
 */
public final class Tty implements Closeable {
    /** JLine 4.5 raises a signal for Ctrl-C even where the line discipline leaves it alone, unless told not to. */
    private static final String SIGNALS_FROM_BYTES = "org.jline.terminal.softwareSignals";

    /** What JLine would log, for example about a terminal that nobody has described, it would log onto the screen. */
    private static final Logger UNHEARD = Logger.getLogger("org.jline");

    static {
        UNHEARD.setLevel(Level.OFF);
    }

    private final Terminal jline;
    private final TerminalModes modes;
    private final LastAct lastAct;

    /** What is to be done on the terminal when the program is ended by a signal. */
    private static final class LastAct implements ShutdownHooks.Task {
        private volatile Runnable act = () -> {};

        @Override
        public void run() {
            act.run();
        }
    }

    private Tty(Terminal jline, TerminalModes modes, LastAct lastAct) {
        this.jline = jline;
        this.modes = modes;
        this.lastAct = lastAct;
    }

    /** Opens the terminal; both standard input and standard output must be one. */
    public static Tty open(TerminalModes modes) throws NoTerminal {
        if (!modes.fullScreen()) {
            throw new NoTerminal("This terminal cannot show a full screen (TERM is dumb or not set); use --line.", null);
        }
        Charset charset = modes.utf8() ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
        System.setProperty(SIGNALS_FROM_BYTES, "false");
        // Added before JLine adds its own closing of the terminal, because JLine runs them in that order.
        LastAct lastAct = ShutdownHooks.add(new LastAct());
        describe(System.getenv("TERM"));
        try {
            return new Tty(built(charset), modes, lastAct);
        } catch (IOException | IllegalStateException failure) {
            ShutdownHooks.remove(lastAct);
            throw new NoTerminal("There is no terminal here; use --line, or plan for a case file.", failure);
        }
    }

    /** By the system's own calls; by helper programs only where those cannot be made, because allowing both asks both. */
    private static Terminal built(Charset charset) throws IOException {
        try {
            return built(charset, true);
        } catch (IOException | IllegalStateException noCallsHere) {
            return built(charset, false);
        }
    }

    private static Terminal built(Charset charset, boolean calls) throws IOException {
        return TerminalBuilder.builder().system(true).dumb(false).systemOutput(TerminalBuilder.SystemOutput.SysOut)
                .ffm(false).jni(calls).exec(!calls).graphemeCluster(false).encoding(charset).stdinEncoding(charset).stdoutEncoding(charset)
                .nativeSignals(true).signalHandler(Terminal.SignalHandler.SIG_DFL).build();
    }

    /** JLine asks a helper program what a terminal of this name can do, though it carries the answer for the usual ones. */
    private static void describe(String name) {
        String like = name == null ? "" : name.startsWith("tmux") ? name.replace("tmux", "screen") : name;
        String carried = InfoCmp.getDefaultInfoCmp(like);
        if (carried != null) {
            InfoCmp.setLoadedInfoCmp(name, carried);
        }
    }

    /** For the line face, which reads lines on the same terminal. */
    public Terminal jline() {
        return jline;
    }

    public TerminalModes modes() {
        return modes;
    }

    /** Sets what is done while the terminal is still open, when a signal ends the program. */
    public void whenEnded(Runnable act) {
        lastAct.act = act;
    }

    @Override
    public void close() throws IOException {
        ShutdownHooks.remove(lastAct);
        jline.close();
    }
}
