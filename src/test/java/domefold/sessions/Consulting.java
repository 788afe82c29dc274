package domefold.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import domefold.store.Schemas;
import domefold.terminal.LauncherFlags;
import domefold.terminal.TmuxSession;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The program in a real terminal, driven as a surgeon drives it, and what it leaves in its home. */
final class Consulting implements AutoCloseable {
    private static final Path JAR = Path.of("target/domefold.jar");
    private static final Path CLASSES = Path.of("target/classes");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final TmuxSession terminal;
    private final Path home;
    private int entries;
    private int keys;

    private Consulting(TmuxSession terminal, Path home) {
        this.terminal = terminal;
        this.home = home;
    }

    /** A window of that size in which {@code domefold ARGUMENTS} has been started, with a home of its own. */
    static Consulting start(Path home, int columns, int rows, String arguments) throws IOException {
        return start(home, columns, rows, Map.of(), arguments);
    }

    static Consulting start(Path home, int columns, int rows, Map<String, String> environment, String arguments)
            throws IOException {
        Map<String, String> all = new HashMap<>(Map.of("DOMEFOLD_HOME", home.toString(), "LC_ALL", "C.UTF-8"));
        all.putAll(environment);
        TmuxSession terminal = TmuxSession.open(columns, rows, all);
        // tmux names its own terminal, so another name is given to the program alone.
        String named = environment.containsKey("TERM") ? "TERM=" + environment.get("TERM") + " " : "";
        terminal.type("clear; " + named + program(terminal) + " " + arguments + "; echo ended $?");
        terminal.keys("Enter");
        return new Consulting(terminal, home);
    }

    /** The packaged program where it is of this build, started as {@code scripts/run} starts it; else the classes. */
    static String program(TmuxSession terminal) throws IOException {
        if (!packaged()) {
            return terminal.command("domefold.app.Main");
        }
        StringBuilder words = new StringBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        LauncherFlags.list("consult").forEach(flag -> words.append(" '").append(flag).append('\''));
        return words.append(" -jar '").append(JAR.toAbsolutePath()).append('\'').toString();
    }

    private static boolean packaged() throws IOException {
        if (!Files.exists(JAR) || !Files.isDirectory(JAR.resolveSibling("lib"))) {
            return false;
        }
        long packagedMs = Files.getLastModifiedTime(JAR).toMillis();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            return files.filter(Files::isRegularFile).noneMatch(file -> file.toFile().lastModified() > packagedMs);
        }
    }

    TmuxSession terminal() {
        return terminal;
    }

    /** Waits for that text and gives the whole picture. */
    String sees(String text) {
        return terminal.await(text);
    }

    /** Types one line and Enter. */
    Consulting line(String text) throws IOException {
        if (!text.isEmpty()) {
            terminal.type(text);
        }
        terminal.keys("Enter");
        entries++;
        keys += text.codePointCount(0, text.length()) + 1;
        return this;
    }

    Consulting lines(List<String> lines) throws IOException {
        for (String line : lines) {
            line(line);
        }
        return this;
    }

    /** Types without Enter. */
    Consulting types(String text) throws IOException {
        terminal.type(text);
        keys += text.length();
        return this;
    }

    /** Presses keys by tmux's names. */
    Consulting keys(String... names) throws IOException {
        terminal.keys(names);
        keys += names.length;
        return this;
    }

    int entries() {
        return entries;
    }

    int keyPresses() {
        return keys;
    }

    /** Leaves with Ctrl-C, and the terminal is as it was. */
    void leaves() throws IOException {
        terminal.keys("C-c");
        ended(0);
    }

    /** The program has ended with that code and left the window to the shell. */
    String ended(int exit) throws IOException {
        String picture = terminal.await("ended " + exit);
        assertFalse(terminal.alternateOn(), picture);
        assertFalse(picture.contains("xception"), picture);
        return picture;
    }

    /** Signs in the record room and waits until it is saved. */
    Consulting signs() throws IOException {
        sees("▸Record");
        line("sign qt");
        sees("Signed and saved");
        return this;
    }

    /** The one saved record, whole, private, valid, its summary beside it. */
    JsonNode saved(String name) throws IOException {
        List<Path> found = files(name + ".json");
        assertEquals(1, found.size(), "records named " + name + ": " + tree());
        Path json = found.get(0);
        Path text = json.resolveSibling(name + ".txt");
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(json)), json.toString());
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(text)), text.toString());
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(json.getParent())));
        String content = Files.readString(json);
        assertEquals(List.of(), Schemas.faults("record-1", content));
        assertEquals(List.of(), files(".unfinished"), "nothing half-written");
        return JSON.readTree(content);
    }

    /** The readable summary beside the record. */
    String summary(String name) throws IOException {
        return Files.readString(files(name + ".txt").get(0));
    }

    /** The files of the home whose names end so. */
    List<Path> files(String ending) throws IOException {
        if (!Files.exists(home)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(home)) {
            return files.filter(Files::isRegularFile).filter(file -> file.toString().endsWith(ending)).sorted().toList();
        }
    }

    /** What was typed for a question, as the record keeps it; the last one where it was asked again. */
    static List<String> typed(JsonNode saved, String question) {
        List<String> texts = new ArrayList<>();
        saved.get("answers").forEach(answer -> {
            if (answer.get("question").asText().equals(question)) {
                texts.add(answer.get("text").asText());
            }
        });
        return texts;
    }

    private String tree() {
        try (Stream<Path> files = Files.walk(home)) {
            return files.toList().toString();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    public void close() throws IOException {
        terminal.close();
    }
}
