package domefold.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assumptions;

/**
 * A program in a real terminal: a shell in a private tmux server, driven by keys and read from its picture. Waits by
 * looking again, never by a fixed sleep.
 */
public final class TmuxSession implements AutoCloseable {
    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final long PATIENCE_MS = 60_000;
    private static final long LOOK_AGAIN_MS = 15;

    private final String server;
    private final Path folder;

    private TmuxSession(String server, Path folder) {
        this.server = server;
        this.folder = folder;
    }

    /** A shell in a window of that size. Without tmux the test is skipped and says so. */
    public static TmuxSession open(int columns, int rows, Map<String, String> environment) throws IOException {
        if (!available()) {
            System.err.println("SKIPPED: tmux is not installed, so nothing was tried in a real terminal.");
            Assumptions.abort("tmux is not installed");
        }
        TmuxSession session = new TmuxSession("domefold-" + ProcessHandle.current().pid() + "-"
                + NUMBER.incrementAndGet(), Files.createTempDirectory("domefold-tmux"));
        List<String> command = new ArrayList<>(List.of("new-session", "-d", "-x", "" + columns, "-y", "" + rows));
        environment.forEach((name, value) -> command.addAll(List.of("-e", name + "=" + value)));
        command.add("PS1='ready$ ' exec bash --norc --noprofile");
        session.tmux(command.toArray(String[]::new));
        session.awaitPrompt();
        return session;
    }

    public static TmuxSession open(int columns, int rows) throws IOException {
        return open(columns, rows, Map.of());
    }

    public static boolean available() {
        try {
            return new ProcessBuilder("tmux", "-V").redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Starts a main class of this build in the shell, with the test's own Java and class path; it keeps the shell's job. */
    public void run(String mainClass, String... arguments) throws IOException {
        type(command(mainClass, arguments));
        keys("Enter");
    }

    /** The shell command that {@link #run} types. */
    public String command(String mainClass, String... arguments) throws IOException {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        // What the manifest grants the jar; a newer Java warns of native calls by classes without it.
        List<String> words = new ArrayList<>(List.of("--enable-native-access=ALL-UNNAMED", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-cp", path, mainClass));
        words.addAll(List.of(arguments));
        Path file = folder.resolve("arguments");
        Files.writeString(file, words.stream().map(word -> '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"')
                .collect(Collectors.joining("\n")));
        return Path.of(System.getProperty("java.home"), "bin", "java") + " @" + file;
    }

    /** Presses keys by tmux's names: {@code Enter}, {@code C-c}, {@code F1}, {@code BTab}, {@code x}. */
    public void keys(String... names) throws IOException {
        String[] command = new String[names.length + 1];
        command[0] = "send-keys";
        System.arraycopy(names, 0, command, 1, names.length);
        tmux(command);
    }

    /** Types text as it is. */
    public void type(String text) throws IOException {
        tmux("send-keys", "-l", "--", text);
    }

    /** Pastes text in one piece. */
    public void paste(String text) throws IOException {
        tmux("set-buffer", "--", text);
        tmux("paste-buffer");
    }

    /** What the window shows. */
    public String picture() throws IOException {
        return tmux("capture-pane", "-p");
    }

    /** What the window shows and what has scrolled out of it. */
    public String history() throws IOException {
        return tmux("capture-pane", "-p", "-S", "-");
    }

    /** What the window shows, with its colours and weights as escape sequences. */
    public String colouredPicture() throws IOException {
        return tmux("capture-pane", "-e", "-p");
    }

    /** Waits until the window shows that text, and returns the picture. */
    public String await(String text) {
        String[] last = {""};
        await("the window shows '" + text + "'", () -> {
            try {
                last[0] = picture();
                return last[0].contains(text);
            } catch (IOException failure) {
                last[0] = failure.toString();
                return false;
            }
        }, last);
        return last[0];
    }

    /** Waits until that holds. */
    public static void await(String what, BooleanSupplier holds, String... last) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MS);
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain until " + what + "; last seen:\n" + String.join("\n", last));
            }
            try {
                Thread.sleep(LOOK_AGAIN_MS);
            } catch (InterruptedException interruption) {
                Thread.currentThread().interrupt();
                throw new AssertionError(interruption);
            }
        }
    }

    public void resize(int columns, int rows) throws IOException {
        tmux("resize-window", "-x", "" + columns, "-y", "" + rows);
    }

    /** Whether a program has the alternate screen. */
    public boolean alternateOn() throws IOException {
        return tmux("display", "-p", "#{alternate_on}").strip().equals("1");
    }

    public boolean cursorShown() throws IOException {
        return tmux("display", "-p", "#{cursor_flag}").strip().equals("1");
    }

    /** Whether a program has set the cursor keys or the keypad to send what applications ask for. */
    public boolean keysChanged() throws IOException {
        return tmux("display", "-p", "#{keypad_cursor_flag}#{keypad_flag}").contains("1");
    }

    /** Waits until the shell has the window again and asks for a command. */
    public void awaitPrompt() {
        String[] last = {""};
        await("the shell asks for a command", () -> {
            try {
                last[0] = picture();
                return last[0].stripTrailing().endsWith("\nready$") || last[0].strip().equals("ready$");
            } catch (IOException failure) {
                last[0] = failure.toString();
                return false;
            }
        }, last);
    }

    /** Has the shell run a command, without the window showing what it prints, and returns that. */
    public String ask(String command) throws IOException {
        awaitPrompt();
        Path answer = folder.resolve("answer");
        Files.deleteIfExists(answer);
        type("clear; " + command + " >" + folder.resolve("draft") + " 2>&1; mv " + folder.resolve("draft") + " " + answer);
        keys("Enter");
        await("the shell answers " + command, () -> Files.exists(answer));
        String text = Files.readString(answer);
        Files.delete(answer);
        return text.strip();
    }

    /** The line discipline's settings as a command of the shell meets them. */
    public String lineSettings() throws IOException {
        return ask("stty -g");
    }

    /** The program the shell runs. */
    public ProcessHandle program() throws IOException {
        ProcessHandle shell = ProcessHandle.of(Long.parseLong(tmux("display", "-p", "#{pane_pid}").strip())).orElseThrow();
        return shell.children().findFirst().orElseThrow();
    }

    /** Writes onto the window past the program, as a message of the system would. */
    public void scribble(String text) throws IOException {
        Files.writeString(Path.of(tmux("display", "-p", "#{pane_tty}").strip()), text);
    }

    /** Sends a signal by name to the program, for example {@code KILL}. */
    public void signal(String name) throws IOException {
        run(List.of("kill", "-" + name, "" + program().pid()), Map.of());
    }

    @Override
    public void close() throws IOException {
        tmux("kill-server");
        Files.deleteIfExists(folder.resolve("arguments"));
        Files.deleteIfExists(folder);
    }

    private String tmux(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("tmux", "-u", "-L", server, "-f", "/dev/null"));
        command.addAll(List.of(words));
        return run(command, Map.of("LC_ALL", "C.UTF-8"));
    }

    private static String run(List<String> command, Map<String, String> environment) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().keySet().removeAll(List.of("TMUX", "COLORTERM", "NO_COLOR", "JAVA_TOOL_OPTIONS"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            if (process.waitFor() != 0) {
                throw new IOException(String.join(" ", command) + ": " + output);
            }
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
            throw new IOException(interruption);
        }
        return output;
    }
}
