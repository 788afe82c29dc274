package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Case;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import domefold.records.RecordHeader;
import domefold.records.RecordQuery;
import domefold.sheet.SampleRecords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordIndexTest {
    private static final Instant NOW = Instant.parse("2026-03-04T10:00:00Z");
    private static final RecordStore.Summary SUMMARY = loaded -> "summary\n";

    @TempDir
    Path home;

    private RecordStore store;
    private Path records;
    private RecordIndex index;

    @BeforeEach
    void anEmptyFolder() {
        records = home.resolve("records");
        store = new RecordStore(records, false, new Workstation("front-desk"));
        index = new RecordIndex(records, home.resolve("cache"));
    }

    @Test
    void anEmptyFolderIsAnEmptyList() throws IOException {
        assertEquals(List.of(), index.open().list().all());
        assertEquals(List.of(), index.open().list().all());
    }

    @Test
    void theIndexSaysWhatTheFilesSay() throws IOException {
        sign("K-1");
        sign("K-2");
        store.saveDraft(named("K-3", RecordStatus.DRAFT), 0, SUMMARY);
        store.issueCode(2026);
        assertAgrees();
        assertEquals(3, index.open().list().all().size());
        RecordHeader one = index.open().list().byCode("K-1").orElseThrow();
        assertEquals(RecordHeader.of(store.shelf().newest("K-1").orElseThrow().record(), List.of()), one);
    }

    @Test
    void everyKindOfChangeIsSeenAtTheNextOpening() throws IOException {
        Stored first = sign("K-1");
        index.open();
        sign("K-2");
        assertAgrees();
        ConsultRecord changed = withAuthorOfCase(first.record(), LocalDate.of(2026, 3, 5));
        store.amend(first, changed, RecordStatus.AMENDED, "wrong day", "Dr B", NOW.plusSeconds(60), SUMMARY);
        assertEquals(RecordStatus.AMENDED, index.open().list().byCode("K-1").orElseThrow().status());
        store.addEvent(new RecordEvent("K-1", 2, RecordEvent.Kind.ORDERED, LocalDate.of(2026, 3, 6), "", "desk",
                NOW.plusSeconds(90), "{}"));
        assertEquals("ordered", index.open().list().byCode("K-1").orElseThrow().stands());
        Stored draft = store.saveDraft(named("K-9", RecordStatus.DRAFT), 0, SUMMARY);
        assertAgrees();
        store.discardDraft(draft, "Dr B", NOW);
        assertEquals(2, index.open().list().all().size());
        assertAgrees();
    }

    @Test
    void anotherWorkstationsChangesAreSeenToo() throws IOException {
        sign("K-1");
        index.open();
        new RecordStore(records, false, new Workstation("theatre")).sign(named("K-2", RecordStatus.DRAFT), 0, "Dr C", NOW,
                SUMMARY);
        assertTrue(index.open().list().byCode("K-2").isPresent());
    }

    @Test
    void aFolderThatWasCopiedInOrTakenAwayByHandIsSeen() throws IOException {
        sign("K-1");
        sign("K-2");
        index.open();
        Files.move(records.resolve("K-2"), home.resolve("aside"));
        assertEquals(1, index.open().list().all().size());
        Files.move(home.resolve("aside"), records.resolve("K-2"));
        assertEquals(2, index.open().list().all().size());
    }

    @Test
    void aDamagedOrMissingIndexIsMadeAgain() throws IOException {
        sign("K-1");
        sign("K-2");
        List<RecordHeader> right = index.open().list().all();
        Path file = onlyFile(home.resolve("cache"));
        byte[] sound = Files.readAllBytes(file);
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            byte[] odd = sound.clone();
            odd[random.nextInt(odd.length)] ^= (byte) (1 << random.nextInt(7));
            Files.write(file, round % 3 == 0 ? java.util.Arrays.copyOf(odd, random.nextInt(odd.length)) : odd);
            assertEquals(right, index.open().list().all(), "seed 7, round " + round);
        }
        Files.delete(file);
        assertAgrees();
    }

    @Test
    void whatCannotBeReadIsNamedAndTheRestIsListed() throws IOException {
        sign("K-1");
        sign("K-2");
        Files.writeString(records.resolve("K-2").resolve("v1.json"), "{\"format\":\"domefold-record/7\",\"id\":\"K-2\",\"plan\":{}}");
        RecordIndex.Opened opened = index.open();
        assertEquals(List.of("K-1"), ids(opened));
        assertEquals(Map.of("K-2", "was written by another version of the program, as domefold-record/7"), opened.unreadable());
        assertEquals(opened.unreadable(), index.open().unreadable(), "at the next opening too");
    }

    @Test
    void aListOpensWhereNoIndexCanBeKept() throws IOException {
        sign("K-1");
        Files.writeString(home.resolve("cache"), "a file where a folder should be");
        assertEquals(List.of("K-1"), ids(index.open()));
    }

    private void assertAgrees() throws IOException {
        List<RecordHeader> expected = new ArrayList<>();
        for (String id : store.shelf().ids()) {
            List<RecordEvent> events = store.shelf().events(id);
            store.shelf().newest(id).ifPresent(stored -> expected.add(RecordHeader.of(stored.record(), events)));
        }
        expected.sort(RecordHeader.NEWEST_FIRST);
        assertEquals(expected, index.open().list().all());
        assertEquals(expected, index.open().list().find(RecordQuery.of("")));
    }

    private Stored sign(String id) throws IOException {
        return store.sign(named(id, RecordStatus.DRAFT), 0, "Dr A", NOW, SUMMARY);
    }

    private static List<String> ids(RecordIndex.Opened opened) {
        return opened.list().all().stream().map(RecordHeader::id).toList();
    }

    private static Path onlyFile(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findFirst().orElseThrow();
        }
    }

    private static ConsultRecord named(String id, RecordStatus status) {
        return with(SampleRecords.withStatus(status, false), id, LocalDate.of(2026, 3, 4));
    }

    private static ConsultRecord withAuthorOfCase(ConsultRecord record, LocalDate day) {
        return with(record, record.id(), day);
    }

    private static ConsultRecord with(ConsultRecord record, String id, LocalDate day) {
        Case of = record.inputs();
        Case inputs = new Case(id, day, of.readBy(), of.patient(), of.chest(), of.left(), of.right(), of.history(), of.wishes(),
                of.setting());
        return new ConsultRecord(id, record.version(), record.status(), false, inputs, record.answers(), record.planJson(),
                record.left(), record.right(), record.considered(), record.topics(), record.followUp(), record.outcomes(),
                record.overrides(), record.versions(), record.authorship(), record.amendment());
    }
}
