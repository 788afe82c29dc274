package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** House rules read from the source text itself. */
class HouseTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final int LONGEST_FILE = 400;

    @Test
    void noFileIsTwoRooms() throws IOException {
        assertEquals(List.of(), sources().filter(file -> lines(file) > LONGEST_FILE).map(Path::toString).toList());
    }

    @Test
    void everyRoomHasItsSign() throws IOException {
        assertEquals(List.of(), sources().map(Path::getParent).distinct()
                .filter(room -> !Files.exists(room.resolve("package-info.java"))).map(Path::toString).toList());
    }

    @Test
    void everyTableNamesItsSources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("shared"))) {
            assertEquals(List.of(), files.filter(file -> file.toString().endsWith(".csv"))
                    .filter(file -> head(file).stream().noneMatch(line -> line.toLowerCase(java.util.Locale.ROOT).contains("source")))
                    .map(Path::toString).toList());
        }
    }

    private static Stream<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().collect(Collectors.toList()).stream();
        }
    }

    private static int lines(Path file) {
        return read(file).size();
    }

    private static List<String> head(Path file) {
        return read(file).stream().limit(12).toList();
    }

    private static List<String> read(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
