package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.outcome.Band;
import domefold.practice.Decision;
import domefold.practice.Progress;
import domefold.practice.Standing;
import domefold.record.RecordEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One file per format version ever written, kept forever. Cases, records and settings are read by their own tests; here stand the
 * others.
 */
class SavedSamplesTest {
    private static final Path SAVED = Path.of("src/test/resources/saved");

    @Test
    void everyFormatThatIsReadAgainOrPublishedHasASample() throws IOException {
        try (Stream<Path> files = Files.list(SAVED)) {
            Set<String> names = files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(List.of("case-1.json", "catalogue-1.csv", "event-1.json", "journal-1.journal", "plan-1.json",
                    "progress-1.jsonl", "record-1.json", "settings-1.json"), List.copyOf(names));
        }
    }

    @Test
    void aCatalogueReadsWithoutAFinding() throws IOException {
        Catalogue list = CatalogueFile.read(SAVED.resolve("catalogue-1.csv"));
        assertEquals("an invented list", list.name());
        assertEquals(3, list.devices().size());
        Device saline = list.find("saline-smooth-moderate-plus-280").orElseThrow();
        assertEquals("invented, for saline", saline.line());
        assertEquals(Fill.SALINE, saline.fill());
        assertEquals(Optional.of(new Band(280, 310)), saline.labelFillMl());
        assertEquals(4.0, saline.projectionCm());
        assertEquals(Optional.empty(), list.devices().get(0).labelFillMl());
    }

    /** A plan is for other programs and never read back; what they were promised is the schema. */
    @Test
    void aPlanPassesItsSchema() throws IOException {
        assertEquals(List.of(), Schemas.faults("plan-1", Files.readString(SAVED.resolve("plan-1.json"))));
    }

    @Test
    void anEventReads() throws IOException {
        assertEquals(new RecordEvent("K-2041", 1, RecordEvent.Kind.BOOKED, LocalDate.of(2026, 3, 20), "first on the list", "desk",
                Samples.NOON, "{}"), EventFile.read(SAVED.resolve("event-1.json")));
    }

    @Test
    void aJournalReplays(@TempDir Path folder) throws IOException {
        Files.copy(SAVED.resolve("journal-1.journal"), folder.resolve("one.journal"));
        Journal.Unfinished left = Journals.unfinished(folder).get(0);
        assertFalse(left.torn());
        assertEquals(new Journal.Start(Samples.NOON, false, Optional.of(Samples.ordinary()), "about"), left.start());
        assertEquals(List.of(new Journal.Entry(Samples.NOON.plusSeconds(7), "answer", "baseWidthCm", "12,5 12.8"),
                new Journal.Entry(Samples.NOON.plusSeconds(9), "undo", "", "")), left.entries());
    }

    @Test
    void aFellowsProgressReads(@TempDir Path folder) throws IOException {
        Path file = Files.copy(SAVED.resolve("progress-1.jsonl"), folder.resolve("progress.jsonl"));
        assertEquals(List.of(new Progress.Entry(LocalDate.of(2026, 3, 4), 7, 2, List.of(new Progress.Line(Decision.POCKET,
                Optional.of(domefold.patient.Side.LEFT), Optional.empty(), Standing.INSIDE, 2, 1)))),
                new ProgressFile(folder).read().progress().entries());
        assertArrayEquals(Files.readAllBytes(SAVED.resolve("progress-1.jsonl")), Files.readAllBytes(file));
    }
}
