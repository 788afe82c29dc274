package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import domefold.patient.Side;
import domefold.practice.Decision;
import domefold.practice.Progress;
import domefold.practice.Standing;
import domefold.practice.exercise.Logbook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgressFileTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 4);
    private static final Progress.Entry ENTRY = new Progress.Entry(DAY, 7, 2, List.of(
            new Progress.Line(Decision.WARNING, Optional.empty(), Optional.of("nicotine"), Standing.OUTSIDE, 3, 0),
            new Progress.Line(Decision.WIDTH_CEILING, Optional.of(Side.RIGHT), Optional.empty(), Standing.DEFENSIBLE, 2, 0.75)));
    private static final Logbook.Drilled DRILL = new Logbook.Drilled(DAY, 3, 1, 2, 0);

    @TempDir
    Path home;

    @Test
    void whatWasKeptIsReadBack() throws IOException {
        ProgressFile file = new ProgressFile(home.resolve("practice"));
        assertEquals(Logbook.EMPTY, file.read());
        file.add(ENTRY);
        file.add(DRILL);
        new ProgressFile(home.resolve("practice")).add(ENTRY);
        assertEquals(new Logbook(new Progress(List.of(ENTRY, ENTRY)), List.of(DRILL)), file.read());
        List<String> lines = Files.readAllLines(home.resolve("practice/progress.jsonl"));
        assertEquals(4, lines.size());
        assertTrue(lines.get(0).contains("domefold-progress/1"), lines.get(0));
    }

    @Test
    void aDamagedLineIsNamedAndTheFileIsLeftAsItIs() throws IOException {
        ProgressFile file = new ProgressFile(home);
        file.add(ENTRY);
        Path place = home.resolve("progress.jsonl");
        String damaged = Files.readString(place).replace("\"width-ceiling\"", "\"wide-ceiling\"");
        Files.writeString(place, damaged);
        String sentence = assertThrows(Refusal.class, file::read).getMessage();
        assertTrue(sentence.contains("line 2") && sentence.contains("wide-ceiling"), sentence);
        assertThrows(Refusal.class, () -> file.add(DRILL));
        assertEquals(damaged, Files.readString(place));
    }

    @Test
    void aNewerFormatIsLeftAsItIs() throws IOException {
        Files.writeString(home.resolve("progress.jsonl"), "{\"format\": \"domefold-progress/2\"}\n");
        assertEquals("newer-format", assertThrows(Refusal.class, new ProgressFile(home)::read).code());
    }
}
