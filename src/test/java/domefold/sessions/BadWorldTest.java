package domefold.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole program as an ordinary user whose home cannot be read or written. Root may do both, so root runs it as nobody. */
class BadWorldTest {
    private static final List<String> NOBODY = List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups");
    private static final Path CASE = Path.of("demo-data/ordinary.json");

    @TempDir
    private Path folder;
    private Path home;
    private List<String> program;

    /** How a process ended. */
    private record Ended(int exit, String out, String err) {}

    @BeforeEach
    void layOut() throws Exception {
        open(folder, "rwxr-xr-x");
        home = Files.createDirectory(folder.resolve("home"));
        Path place = Files.createDirectory(folder.resolve("program"));
        List<String> classPath = new ArrayList<>();
        copyClasses(place.resolve("classes"));
        classPath.add(place.resolve("classes").toString());
        for (String entry : System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")).split(":")) {
            if (entry.endsWith(".jar") && !entry.contains("junit") && !entry.contains("archunit")) {
                Path copy = place.resolve(Path.of(entry).getFileName().toString());
                Files.copy(Path.of(entry), copy, StandardCopyOption.REPLACE_EXISTING);
                open(copy, "rw-r--r--");
                classPath.add(copy.toString());
            }
        }
        Files.copy(CASE, folder.resolve("case.json"));
        open(folder.resolve("case.json"), "rw-r--r--");
        open(place, "rwxr-xr-x");
        program = new ArrayList<>(isRoot() ? NOBODY : List.of());
        program.addAll(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC", "-Xshare:auto", "-cp", String.join(":", classPath), "domefold.app.Main"));
        Ended there;
        try {
            there = run("--version");
        } catch (IOException cannotBeRun) {
            there = new Ended(-1, "", cannotBeRun.getMessage());
        }
        if (there.exit() != 0) {
            System.err.println("SKIPPED: the program cannot be run as an ordinary user here: " + there.err().strip());
            abort("cannot be run as an ordinary user");
        }
    }

    @AfterEach
    void letItBeRemoved() throws IOException {
        open(home, "rwx------");
    }

    private static boolean isRoot() throws IOException {
        return (Integer) Files.getAttribute(Path.of("/proc/self"), "unix:uid") == 0;
    }

    private static void open(Path path, String permissions) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
    }

    private static void copyClasses(Path to) throws IOException {
        Path from = Path.of("target/classes");
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                    open(copy, "rwxr-xr-x");
                } else {
                    Files.copy(file, copy);
                    open(copy, "rw-r--r--");
                }
            }
        }
    }

    /** Makes the home such as its user finds it. */
    private void home(String permissions) throws Exception {
        if (isRoot()) {
            Files.setAttribute(home, "unix:uid", 65534);
        }
        open(home, permissions);
    }

    private Ended run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(program);
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        Map<String, String> environment = builder.environment();
        environment.keySet().removeAll(List.of("JAVA_TOOL_OPTIONS", "XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME"));
        environment.putAll(Map.of("DOMEFOLD_HOME", home.toString(), "LC_ALL", "C.UTF-8"));
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        Process process = builder.redirectInput(new java.io.File("/dev/null")).redirectOutput(out.toFile())
                .redirectError(err.toFile()).start();
        int exit = process.waitFor();
        return new Ended(exit, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    private static void oneSentence(Ended run, int exit, String part) {
        assertEquals(exit, run.exit(), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().startsWith("domefold: ") && run.err().contains(part), run.err());
        assertFalse(run.err().contains("xception"), run.err());
        assertEquals("", run.out());
    }

    private String tree() throws IOException {
        open(home, "rwx------");
        try (Stream<Path> files = Files.walk(home)) {
            return files.filter(path -> !path.equals(home)).map(path -> home.relativize(path).toString()).sorted()
                    .collect(Collectors.joining(" "));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"r-xr-xr-x", "---------"})
    void aHomeThatMayNotBeWrittenOrReadIsTheWorldsFault(String permissions) throws Exception {
        home(permissions);
        oneSentence(run("plan", "case.json", "--save"), 4, "denied");
        oneSentence(run("consult", "--line"), 4, "denied");
        assertEquals("", tree());
    }

    @Test
    void aHomeThatMayOnlyBeReadStillAnswers() throws Exception {
        home("r-xr-xr-x");
        Ended plan = run("plan", "case.json");
        assertEquals(0, plan.exit(), plan.err());
        assertTrue(plan.out().contains("LEFT"));
        assertEquals("", tree());
    }

    @Test
    void settingsOrACaseThatMayNotBeReadAreTheWorldsFault() throws Exception {
        home("rwx------");
        Path settings = Files.writeString(home.resolve("settings.json"), "{\"format\": \"domefold-settings/1\"}");
        open(settings, "---------");
        oneSentence(run("plan", "case.json"), 4, "settings.json");
        Files.delete(settings);
        open(folder.resolve("case.json"), "---------");
        oneSentence(run("plan", "case.json"), 4, "case.json");
    }

    @Test
    void withoutATerminalItPrintsItsHelpAndEndsWithTwo() throws Exception {
        home("rwx------");
        Ended alone = run();
        assertEquals(2, alone.exit());
        assertTrue(alone.out().startsWith("Usage: domefold"), alone.out());
        assertEquals(1, alone.err().lines().count(), alone.err());
        assertEquals("", tree());
    }
}
