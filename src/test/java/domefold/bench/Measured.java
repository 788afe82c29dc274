package domefold.bench;

import domefold.screen.Key;
import domefold.screen.Walk;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.PlanJson;
import domefold.terminal.FrameTimer;
import domefold.terminal.TmuxSession;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Measures everything that has a time and prints it as tables, each row beside a baseline of the same run. Nothing passes
 * and nothing fails. {@code --write} puts the tables into docs/benchmarks.md; {@code --only REGEX} picks benchmarks.
 */
public final class Measured {
    private static final int RECORDS = 1000;
    private static final int RECORD_KB = 4;
    private static final Path PAGE = Path.of("docs/benchmarks.md");
    private static final String MARK = "<!-- Below this line scripts/bench --write puts what it measured. -->";
    /** Which benchmark stands beside which, by the end of its name. */
    private static final Map<String, String> BASELINE = Map.of("planOfTheShippedList", "bareLoopOfTheShippedList",
            "planOfAThousandDevices", "bareLoopOfAThousandDevices", "rigid", "adaptive", "stretching", "adaptive",
            "setUp", "adaptive");

    private final StringBuilder page = new StringBuilder();

    public static void main(String[] arguments) throws Exception {
        List<String> asked = Arrays.asList(arguments);
        int only = asked.indexOf("--only");
        Measured measured = new Measured();
        measured.machine();
        measured.consult();
        measured.frames();
        measured.processes();
        measured.engine(only >= 0 ? asked.get(only + 1) : "domefold\\.bench\\..*Bench\\..*");
        System.out.println(measured.page);
        if (asked.contains("--write")) {
            String head = Files.readString(PAGE);
            Files.writeString(PAGE, head.substring(0, head.indexOf(MARK) + MARK.length()) + "\n\n" + measured.page.toString().strip()
                    + "\n");
        }
    }

    private void line(String text) {
        page.append(text).append('\n');
    }

    private static String file(String path, String otherwise) {
        try {
            return Files.readString(Path.of(path)).strip();
        } catch (IOException absent) {
            return otherwise;
        }
    }

    private void machine() throws Exception {
        String cpu = file("/proc/cpuinfo", "").lines().filter(line -> line.startsWith("model name"))
                .map(line -> line.substring(line.indexOf(':') + 1).strip()).findFirst().orElse("unknown processor");
        line("Measured " + LocalDate.now() + " on " + cpu + ", " + Runtime.getRuntime().availableProcessors() + " cores, "
                + System.getProperty("os.name") + " " + System.getProperty("os.version") + ", Java " + Runtime.version() + ".");
        line("Load when the run began (1, 5, 15 minutes): " + String.join(", ", file("/proc/loadavg", "? ? ?").split(" ")[0],
                file("/proc/loadavg", "? ? ?").split(" ")[1], file("/proc/loadavg", "? ? ?").split(" ")[2])
                + "; above the number of cores, times are longer than on a quiet machine and only the ratios say much.");
        line("Checksum of the results (SHA-256 over the plans of all demo cases as JSON): `" + checksum() + "`.");
        line("");
    }

    private static String checksum() throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json")).sorted().toList()) {
                String plan = PlanJson.write(Walk.desk().guide().planner().apply(CaseFile.read(file, CaseRules.FORM_ONLY)), "0");
                digest.update(plan.getBytes(StandardCharsets.UTF_8));
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, 16);
    }

    private void consult() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3).key(Key.Kind.F6).key(Key.character(' '))
                .key(Key.Kind.DOWN).key(Key.character(' ')).key(Key.Kind.F3)
                .lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3", "sign qt"));
        line("## An ordinary consult");
        line("Both sides, every reading, two devices settled, signed: " + walk.entries() + " entries, " + walk.keys()
                + " key presses, one more of each to open it from the start screen.");
        line("");
    }

    private void frames() throws IOException {
        line("## A key to its painted frame at 160 x 48");
        line("In this process: the screen's answer, the drawing, the changed cells to a stream; no terminal and no link. Measured in"
                + " the third consult typed, after two to warm up.");
        line("");
        line("| keys | min ms | median ms | slowest ms | bytes per key | writes per key | keys counted |");
        line("|---|---|---|---|---|---|---|");
        Map<String, List<FrameTimer.Cost>> costs = new LinkedHashMap<>();
        for (int pass = 0; pass < 3; pass++) {
            costs.clear();
            FrameTimer timer = new FrameTimer(Walk.consult().screen(), 160, 48);
            for (String text : Walk.ORDINARY) {
                for (int c : text.codePoints().toArray()) {
                    press(timer, costs, "a character of an answer", Key.character(c));
                }
                press(timer, costs, "Enter, which takes the answer and plans anew", Key.of(Key.Kind.ENTER));
            }
            press(timer, costs, "to the devices", Key.of(Key.Kind.F3));
            for (int i = 0; i < 2; i++) {
                press(timer, costs, "pinning a device", Key.character(' '));
                press(timer, costs, "moving in the list beside columns", Key.of(Key.Kind.DOWN));
            }
            for (int i = 0; i < 40; i++) {
                press(timer, costs, "moving in the list beside columns", Key.of(i % 2 == 0 ? Key.Kind.DOWN : Key.Kind.UP));
            }
            for (int i = 0; i < 10; i++) {
                press(timer, costs, "turning a saline fill beside columns", Key.character(i % 2 == 0 ? '+' : '-'));
            }
            for (int i = 0; i < 6; i++) {
                press(timer, costs, "scrolling the columns", Key.of(Key.Kind.PAGE_DOWN));
            }
        }
        costs.forEach((name, each) -> {
            Spread ms = Spread.of(each.stream().map(FrameTimer.Cost::medianMs).toList());
            line("| " + name + " | " + Spread.figure(ms.min()) + " | " + Spread.figure(ms.median()) + " | " + Spread.figure(ms.max())
                    + " | " + Spread.figure(each.stream().mapToDouble(FrameTimer.Cost::bytesPerKey).average().orElse(0)) + " | "
                    + Spread.figure(each.stream().mapToDouble(FrameTimer.Cost::writesPerKey).average().orElse(0)) + " | "
                    + each.size() + " |");
        });
        line("");
    }

    private static void press(FrameTimer timer, Map<String, List<FrameTimer.Cost>> costs, String name, Key key) throws IOException {
        costs.computeIfAbsent(name, none -> new ArrayList<>()).add(timer.press(List.of(key)));
    }

    private void processes() throws Exception {
        line("## The whole program");
        line("Started as `scripts/run` starts it. The baseline is a Java that prints one line, started with the same compiler and collector; it needs no class archive."
                + " What runs to its end takes turns with it.");
        line("");
        line("| what | min | median | max | unit | runs | times the baseline |");
        line("|---|---|---|---|---|---|---|");
        Path home = Files.createTempDirectory("domefold-bench");
        RecordsBench.make(RECORDS, RECORD_KB, home.resolve("records"));
        List<Processes.Cost> costs = Processes.costs(home, List.of(Processes.empty(),
                Processes.program("plan", "demo-data/ordinary.json", "--as", "json"), Processes.program("plan", "demo-data/ordinary.json"),
                Processes.program("records", "find", RecordsBench.code(RECORDS / 2))));
        RecordsBench.remove(home);
        Processes.Cost empty = costs.get(0);
        Processes.Cost plan = costs.get(1);
        Processes.Cost find = costs.get(3);
        row("baseline, to its end", empty.ms(), "ms", empty.ms());
        row("`plan` of a case as JSON, to its end", plan.ms(), "ms", empty.ms());
        row("`plan` of a case as text, to its end", costs.get(2).ms(), "ms", empty.ms());
        row("`records find` of a code among " + RECORDS + ", to its end", find.ms(), "ms", empty.ms());
        row("baseline, largest resident set", empty.peakMb(), "MB", empty.peakMb());
        row("`plan`, largest resident set", plan.peakMb(), "MB", empty.peakMb());
        row("`records find`, largest resident set", find.peakMb(), "MB", empty.peakMb());
        if (TmuxSession.available()) {
            Spread printed = Processes.untilSeen(Processes.empty(), "nothing to do");
            row("baseline, Enter to its line in a terminal's window", printed, "ms", printed);
            row("Enter to the start screen in a terminal's window", Processes.untilSeen(Processes.program(), "New consult"), "ms", printed);
            Processes.Idle idle = Processes.idle();
            row("processor time in " + idle.seconds() + " s at a question, nobody typing", Spread.of(List.of(idle.cpuMs())), "ms", null);
            row("full-screen consult, largest resident set by then", Spread.of(List.of(idle.peakMb())), "MB", empty.peakMb());
        }
        line("");
    }

    private void row(String name, Spread spread, String unit, Spread baseline) {
        line("| " + name + " | " + spread.cells(unit) + " | "
                + (baseline == null ? "–" : Spread.figure(spread.median() / baseline.median())) + " |");
    }

    private void engine(String only) throws Exception {
        Map<String, RunResult> results = new LinkedHashMap<>();
        run(results, new OptionsBuilder().include(only).exclude("PracticeBench").forks(1).warmupIterations(3)
                .warmupTime(TimeValue.milliseconds(500)).measurementIterations(5).measurementTime(TimeValue.milliseconds(500)));
        if (Pattern.compile(only).matcher("domefold.bench.PracticeBench.tenThousandDrawn").find()) {
            run(results, new OptionsBuilder().include("PracticeBench").forks(1).warmupIterations(1).measurementIterations(3));
        }
        line("## The engine, warm");
        line("By JMH, one fork, short settings. The baseline of a plan is the same counting in a bare loop over arrays, that of a"
                + " shell the same descents by a general integrator; where none is named there is none.");
        line("");
        line("| benchmark | min | median | max | unit | runs | times the baseline | baseline |");
        line("|---|---|---|---|---|---|---|---|");
        results.forEach((name, result) -> {
            String beside = BASELINE.get(result.getParams().getBenchmark().replaceAll(".*\\.", ""));
            RunResult baseline = beside == null ? null : results.entrySet().stream()
                    .filter(entry -> entry.getKey().contains("." + beside) && parameters(entry.getValue()).equals(parameters(result)))
                    .map(Map.Entry::getValue).findFirst().orElse(null);
            line("| " + name + " | " + spread(result).cells(result.getPrimaryResult().getScoreUnit()) + " | "
                    + (baseline == null ? "– | –" : Spread.figure(spread(result).median() / spread(baseline).median()) + " | " + beside)
                    + " |");
        });
    }

    private static void run(Map<String, RunResult> results, ChainedOptionsBuilder options) throws RunnerException {
        try {
            for (RunResult result : new Runner(options.verbosity(VerboseMode.SILENT).shouldFailOnError(true).build()).run()) {
                results.put(name(result), result);
            }
        } catch (NoBenchmarksException noneAsked) {
            return;
        }
    }

    private static Spread spread(RunResult result) {
        var statistics = result.getPrimaryResult().getStatistics();
        return new Spread(statistics.getMin(), statistics.getPercentile(50), statistics.getMax(), (int) statistics.getN());
    }

    private static String name(RunResult result) {
        return result.getParams().getBenchmark().replace("domefold.bench.", "") + parameters(result);
    }

    private static String parameters(RunResult result) {
        StringBuilder text = new StringBuilder();
        result.getParams().getParamsKeys().forEach(key -> text.append(' ').append(key).append(' ')
                .append(result.getParams().getParam(key)));
        return text.toString();
    }
}
