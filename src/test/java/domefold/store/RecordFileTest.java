package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RecordFileTest {
    private static final Path SAVED = Path.of("src/test/resources/saved");

    static Stream<ConsultRecord> records() {
        ConsultRecord signed = Samples.settled().signed("QT", Samples.NOON);
        String digest = Digest.sha256(RecordFile.bytes(signed));
        return Stream.of(Samples.draft(), Samples.settled(), signed,
                signed.following(RecordStatus.AMENDED, Samples.amendment(1, digest)),
                signed.following(RecordStatus.ENTERED_IN_ERROR, Samples.amendment(2, digest)));
    }

    @ParameterizedTest
    @MethodSource("records")
    void whatIsWrittenReadsBackTheSameAndPassesTheSchema(ConsultRecord record) {
        byte[] bytes = RecordFile.bytes(record);
        RecordFile.Loaded loaded = RecordFile.read(bytes, "v1.json");
        byte[] again = RecordFile.bytes(loaded.record());
        assertArrayEquals(bytes, again);
        assertEquals(Digest.sha256(bytes), loaded.sha256());
        assertFalse(loaded.readOnly());
        assertEquals(List.of(), Schemas.faults("record-1", new String(bytes, StandardCharsets.UTF_8)));
        assertEquals(record.planJson(), loaded.record().planJson());
        assertEquals(record.left(), loaded.record().left());
        assertEquals(record.right(), loaded.record().right());
        assertEquals(record.followUp(), loaded.record().followUp());
        assertEquals(record.amendment(), loaded.record().amendment());
    }

    static Stream<Path> saved() throws IOException {
        try (Stream<Path> files = Files.list(SAVED)) {
            return files.filter(file -> file.getFileName().toString().startsWith("record-")).sorted().toList().stream();
        }
    }

    /** One file per format version ever written, kept forever. */
    @ParameterizedTest
    @MethodSource("saved")
    void everyVersionEverWrittenStaysReadable(Path file) throws IOException {
        byte[] before = Files.readAllBytes(file);
        RecordFile.Loaded loaded = RecordFile.read(file);
        assertEquals("K-2041", loaded.record().id());
        assertEquals(310, loaded.record().right().orElseThrow().fillMl());
        assertEquals(12.6, loaded.record().inputs().right().readings().value(domefold.patient.Measure.BASE_WIDTH).orElseThrow());
        assertEquals(List.of(), Schemas.faults("record-1", Files.readString(file)));
        assertArrayEquals(before, Files.readAllBytes(file), "reading never rewrites");
    }

    @Test
    void aFieldFromLaterIsKeptAndTheRecordIsReadOnly() {
        String text = new String(RecordFile.bytes(Samples.settled()), StandardCharsets.UTF_8)
                .replaceFirst("\"practice\": false,", "\"practice\": false, \"novelty\": {\"a\": 1},")
                .replaceFirst("\"fillMl\": 290,", "\"fillMl\": 290, \"fillTemperature\": 20,");
        RecordFile.Loaded loaded = RecordFile.read(text.getBytes(StandardCharsets.UTF_8), "v1.json");
        assertEquals(List.of("novelty", "settled.left.fillTemperature"), loaded.unknownFields().stream().sorted().toList());
        assertTrue(loaded.readOnly());
        Refusal refusal = assertThrows(Refusal.class, loaded::forChange);
        assertTrue(refusal.getMessage().contains("novelty"), refusal.getMessage());
    }

    @Test
    void aLaterFormatIsRefusedByName() {
        String text = new String(RecordFile.bytes(Samples.draft()), StandardCharsets.UTF_8)
                .replace("domefold-record/1", "domefold-record/2");
        Refusal refusal = assertThrows(Refusal.class, () -> RecordFile.read(text.getBytes(StandardCharsets.UTF_8), "v1.json"));
        assertEquals("newer-format", refusal.code());
        assertTrue(refusal.getMessage().contains("domefold-record/2"), refusal.getMessage());
    }

    /** Whatever is cut out or exchanged, reading ends in a record or a refusal, never in another failure. */
    @Test
    void aDamagedRecordIsRefusedAndNothingElseHappens() {
        byte[] whole = RecordFile.bytes(Samples.settled().signed("QT", Samples.NOON));
        long seed = 20260401;
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            byte[] damaged = whole.clone();
            int at = random.nextInt(whole.length);
            if (i % 3 == 0) {
                damaged = java.util.Arrays.copyOf(whole, at);
            } else {
                damaged[at] = (byte) random.nextInt(256);
            }
            try {
                RecordFile.read(damaged, "v1.json");
            } catch (Refusal expected) {
                assertFalse(expected.getMessage().isBlank(), "seed " + seed + ", round " + i);
            }
        }
    }
}
