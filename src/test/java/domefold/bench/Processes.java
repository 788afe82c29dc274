package domefold.bench;

import domefold.terminal.LauncherFlags;
import domefold.terminal.TmuxSession;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The whole program as the shell starts it: how long, how large, and what it costs while nobody types. */
final class Processes {
    private static final int RUNS = 21;
    private static final int SIZES = 5;
    private static final int IDLE_SECONDS = 60;
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final Path TARGET = Path.of("target").toAbsolutePath();

    private Processes() {}

    static List<String> program(String... arguments) {
        List<String> words = new ArrayList<>(List.of(JAVA.toString()));
        words.addAll(LauncherFlags.list(arguments.length == 0 ? "" : arguments[0]));
        words.addAll(List.of("-jar", TARGET.resolve("domefold.jar").toString()));
        words.addAll(List.of(arguments));
        return words;
    }

    static List<String> empty() {
        List<String> words = new ArrayList<>(List.of(JAVA.toString()));
        LauncherFlags.list("").stream().filter(flag -> !flag.contains("SharedArchiveFile")).forEach(words::add);
        words.addAll(List.of("-cp", TARGET.resolve("test-classes").toString(), "domefold.bench.EmptyMain"));
        return words;
    }

    /**
     * @param ms from start to end
     * @param peakMb the largest resident set seen
     */
    record Cost(Spread ms, Spread peakMb) {}

    /** Each command once in turn, {@link #RUNS} times, so that an hour when the machine is slow counts for all of them alike. */
    static List<Cost> costs(Path home, List<List<String>> commands) throws Exception {
        List<List<Double>> times = commands.stream().<List<Double>>map(command -> new ArrayList<>()).toList();
        for (int i = 0; i <= RUNS; i++) {
            for (int c = 0; c < commands.size(); c++) {
                long start = System.nanoTime();
                started(commands.get(c), home).waitFor();
                if (i > 0) {
                    times.get(c).add((System.nanoTime() - start) / 1e6);
                }
            }
        }
        List<Cost> costs = new ArrayList<>();
        for (int c = 0; c < commands.size(); c++) {
            costs.add(new Cost(Spread.of(times.get(c)), peakMb(commands.get(c), home)));
        }
        return costs;
    }

    /** Looked at every other millisecond, which takes a processor's time; so not while the clock runs. */
    private static Spread peakMb(List<String> command, Path home) throws Exception {
        List<Double> peaks = new ArrayList<>();
        for (int i = 0; i < SIZES; i++) {
            Process process = started(command, home);
            double peakMb = 0;
            while (process.isAlive()) {
                peakMb = Math.max(peakMb, peakMb(process.pid()));
                process.waitFor(2, java.util.concurrent.TimeUnit.MILLISECONDS);
            }
            peaks.add(peakMb);
        }
        return Spread.of(peaks);
    }

    private static Process started(List<String> command, Path home) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectInput(new File("/dev/null"))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("DOMEFOLD_HOME", home.toString());
        return builder.start();
    }

    private static double peakMb(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream().filter(line -> line.startsWith("VmHWM"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024).findFirst().orElse(0);
        } catch (IOException gone) {
            return 0;
        }
    }

    /** From Enter to that text in the window of a real terminal. */
    static Spread untilSeen(List<String> command, String text) throws IOException {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i <= RUNS; i++) {
            try (TmuxSession session = window()) {
                session.type(quoted(command));
                long start = System.nanoTime();
                session.keys("Enter");
                session.await(text);
                if (i > 0) {
                    times.add((System.nanoTime() - start) / 1e6);
                }
            }
        }
        return Spread.of(times);
    }

    private static String quoted(List<String> command) {
        return "'" + String.join("' '", command) + "'";
    }

    private static TmuxSession window() throws IOException {
        Path home = Files.createTempDirectory("domefold-bench");
        TmuxSession session = TmuxSession.open(160, 48, Map.of("DOMEFOLD_HOME", home.toString(), "LC_ALL", "C.UTF-8"));
        return session;
    }

    /**
     * @param cpuMs processor time used while nobody typed
     * @param seconds over so long
     * @param peakMb the largest resident set until then
     */
    record Idle(double cpuMs, int seconds, double peakMb) {}

    static Idle idle() throws Exception {
        try (TmuxSession session = window()) {
            session.type(quoted(program()));
            session.keys("Enter");
            session.await("New consult");
            session.keys("Enter");
            session.await("Case code");
            ProcessHandle process = session.program();
            Thread.sleep(1000);
            double before = cpuMs(process);
            Thread.sleep(1000L * IDLE_SECONDS);
            return new Idle(cpuMs(process) - before, IDLE_SECONDS, peakMb(process.pid()));
        }
    }

    private static double cpuMs(ProcessHandle process) {
        return process.info().totalCpuDuration().orElseThrow().toNanos() / 1e6;
    }
}
