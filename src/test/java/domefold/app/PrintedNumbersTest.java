package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Glyphs;
import domefold.screen.Frame;
import domefold.screen.Key;
import domefold.screen.Walk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every text the program prints or paints, searched for numbers that can be misread. */
class PrintedNumbersTest {
    /** What must stand nowhere, with the reason. */
    private static final Map<Pattern, String> WRONG = Map.of(
            Pattern.compile("(?i)\\d\\s*cc\\b"), "cc as a unit",
            Pattern.compile("(?<![\\w.])\\.\\d"), "a decimal point without its nought",
            Pattern.compile("\\d\\.0+ ?mL\\b"), "a trailing nought on millilitres",
            Pattern.compile("\\d(mL|ml|cm|mm|kg|%)(?![\\w/-])"), "a unit glued to its number");

    @TempDir
    private Path home;

    @Test
    void everyNumberThatIsPrintedOrPaintedCanBeReadOneWayOnly() throws IOException {
        List<String> found = new ArrayList<>();
        Map<String, String> outputs = outputs();
        outputs.forEach((name, text) -> text.lines().forEach(line -> WRONG.forEach((pattern, reason) -> {
            Matcher matcher = pattern.matcher(line);
            if (matcher.find()) {
                found.add(name + ": " + reason + ": '" + matcher.group() + "' in " + line.strip());
            }
        })));
        assertTrue(outputs.size() > 40, outputs.size() + " outputs");
        assertEquals(List.of(), found);
    }

    @Test
    void thePatternsFindWhatTheyAreFor() {
        for (String wrong : List.of("300 cc", "300cc", "about .5 cm", "300.0 mL", "12.5cm", "50%")) {
            assertTrue(WRONG.keySet().stream().anyMatch(pattern -> pattern.matcher(wrong).find()), wrong);
        }
        for (String right : List.of("300 mL", "0.5 cm", "12.0 cm", "50 %", "v1.json", "50%-filled")) {
            assertTrue(WRONG.keySet().stream().noneMatch(pattern -> pattern.matcher(right).find()), right);
        }
    }

    private Map<String, String> outputs() throws IOException {
        Map<String, String> outputs = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json")).sorted().toList()) {
                command(outputs, "plan " + file + " --save");
                command(outputs, "plan " + file + " --as json");
            }
        }
        for (String line : List.of("evidence", "catalogue list", "catalogue check shared/catalogue/invented.csv", "--help",
                "schedule US-2020 --fill gel --from 2026-03-04 --years 20",
                "shape --half-width 6.55 --dome 2.45 --exponent 1.5 --fill 0.9", "records find",
                "records show DEMO-LAKE-1")) {
            command(outputs, line);
        }
        try (Stream<Path> files = Files.walk(home.resolve("records"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".txt")).toList()) {
                outputs.put(file.getFileName() + " of " + file.getParent().getFileName(), Files.readString(file));
            }
        }
        screens(outputs);
        return outputs;
    }

    private void command(Map<String, String> outputs, String line) {
        Cli run = Cli.run(home, line.split(" "));
        assertEquals(Exit.DONE, run.exit(), line + ": " + run.err());
        outputs.put(line, run.out());
    }

    private static void screens(Map<String, String> outputs) {
        for (int columns : new int[] {80, 160}) {
            Walk walk = Walk.consult();
            for (int i = 0; i < Walk.ORDINARY.size(); i++) {
                walk.line(Walk.ORDINARY.get(i));
                paint(outputs, "after answer " + (i + 1), walk, columns);
            }
            walk.key(Key.Kind.F3).key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.character(' ')).key(Key.character('+'));
            paint(outputs, "devices", walk, columns);
            paint(outputs, "columns", walk.key(Key.Kind.F5).key(Key.Kind.F5), columns);
            for (int page = 0; page < 12; page++) {
                paint(outputs, "columns " + page, walk.key(Key.Kind.PAGE_DOWN), columns);
            }
            paint(outputs, "why", walk.key(Key.Kind.F2).key(Key.Kind.F4), columns);
            for (int page = 0; page < 12; page++) {
                paint(outputs, "why " + page, walk.key(Key.Kind.PAGE_DOWN), columns);
            }
        }
    }

    private static void paint(Map<String, String> outputs, String name, Walk walk, int columns) {
        outputs.put(name + " at " + columns, Frame.of(walk.screen(), columns, columns * 3 / 10, Glyphs.UNICODE).picture());
    }
}
