package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerificationTest {
    @TempDir
    Path home;
    private Path folder;
    private Path log;
    private Path record;

    @BeforeEach
    void aFolderWithEverythingInIt() throws IOException {
        folder = home.resolve("records");
        RecordStore store = new RecordStore(folder, false, new Workstation("desk"));
        Stored signed = store.sign(Samples.settled(), 0, "QT", Samples.NOON, any -> "first\n");
        Stored second = store.amend(signed, SavingChild.changed(signed.record(), "x"), RecordStatus.AMENDED, "why", "QT",
                Samples.NOON, any -> "second\n");
        store.amend(second, SavingChild.changed(signed.record(), "y"), RecordStatus.AMENDED, "why", "QT", Samples.NOON,
                any -> "third\n");
        store.addEvent(new RecordEvent("K-2041", 3, RecordEvent.Kind.BOOKED, LocalDate.EPOCH, "", "AB", Samples.NOON, "{}"));
        store.saveDraft(SavingChild.draft("K-7"), 0, any -> "draft\n");
        log = folder.resolve(".audit/desk.jsonl");
        record = folder.resolve("K-2041");
        assertEquals(List.of(), verify());
    }

    private List<String> verify() throws IOException {
        return Verification.of(folder).findings().stream().map(finding -> finding.code() + " " + finding.where()).toList();
    }

    @Test
    void whatWasCountedIsSaid() throws IOException {
        Verification verification = Verification.of(folder);
        assertEquals(2, verification.records());
        assertEquals(9, verification.files());
        assertEquals(5, verification.lines());
        assertTrue(verification.heads().get("desk.jsonl").matches("[0-9a-f]{64}"));
    }

    @Test
    void everyFlippedByteIsFoundInTheFileItStandsIn() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        long seed = 20260305;
        Random random = new Random(seed);
        for (int round = 0; round < 400; round++) {
            Path file = files.get(round % files.size());
            byte[] whole = Files.readAllBytes(file);
            byte[] damaged = whole.clone();
            int at = random.nextInt(whole.length);
            damaged[at] ^= (byte) (1 << random.nextInt(8));
            Files.write(file, damaged);
            List<String> found = verify();
            String name = file.getFileName().toString();
            assertTrue(found.stream().anyMatch(finding -> finding.contains(name)),
                    "seed " + seed + ", round " + round + ", byte " + at + " of " + name + ": " + found);
            Files.write(file, whole);
        }
        assertEquals(List.of(), verify());
    }

    @Test
    void aMissingVersionIsNamed() throws IOException {
        Files.delete(record.resolve("v2.json"));
        List<String> found = verify();
        assertTrue(found.contains("missing-version K-2041/v2.json"), found.toString());
        Files.delete(record.resolve("v3.json"));
        assertTrue(verify().contains("missing-version K-2041/v3.json"), "the log remembers the last one too");
    }

    @Test
    void aWholeRecordThatIsGoneIsNamed() throws IOException {
        Files.delete(folder.resolve("K-7/draft-1.json"));
        Files.delete(folder.resolve("K-7/draft-1.txt"));
        assertEquals(List.of("missing-file K-7/draft-1.json"), verify());
        Files.delete(folder.resolve("K-7"));
        assertEquals(List.of("missing-file K-7/draft-1.json"), verify());
    }

    @Test
    void aRemovedAnAddedAndAnExchangedLineBreakTheChainWhereTheyAre() throws IOException {
        List<String> lines = Files.readAllLines(log);
        write(lines, 0, 2, 3, 4);
        assertTrue(verify().contains("chain-broken .audit/desk.jsonl line 2"), verify().toString());
        write(lines, 1, 2, 3, 4);
        assertTrue(verify().contains("chain-broken .audit/desk.jsonl line 1"));
        write(lines, 0, 2, 1, 3, 4);
        assertTrue(verify().contains("chain-broken .audit/desk.jsonl line 2"));
        write(lines, 0, 1, 1, 2, 3, 4);
        assertTrue(verify().contains("chain-broken .audit/desk.jsonl line 3"));
        write(lines, 0, 1, 2, 3);
        assertEquals(List.of("unlogged K-7/draft-1.json"), verify(), "a line cut from the end leaves its file unlogged");
    }

    @Test
    void aForgedLineWithAHashOfItsOwnBreaksTheChainAfterIt() throws IOException {
        List<String> lines = Files.readAllLines(log);
        AuditLine second = AuditLine.read(lines.get(1)).orElseThrow();
        String forged = new AuditLine(second.seq(), second.at(), "somebody else", second.event(), second.id(), second.file(),
                second.sha256(), second.summarySha256(), second.previous()).text().strip();
        Files.writeString(log, String.join("\n", lines).replace(lines.get(1), forged) + "\n");
        assertEquals(List.of("chain-broken .audit/desk.jsonl line 3"), verify());
    }

    @Test
    void aVersionPutInByAnotherHandIsFound() throws IOException {
        Files.copy(record.resolve("v3.json"), record.resolve("v4.json"));
        List<String> found = verify();
        assertTrue(found.contains("unlogged K-2041/v4.json") && found.contains("wrong-place K-2041/v4.json"), found.toString());
        Files.writeString(folder.resolve("note.txt"), "x");
        assertTrue(verify().contains("stray-file note.txt"));
    }

    @Test
    void aTornLogGoesOnAfterItsTailIsSetAside() throws IOException {
        Files.writeString(log, Files.readString(log) + "{\"seq\":6,\"at");
        assertEquals(List.of("log-torn .audit/desk.jsonl line 6"), verify());
        new RecordStore(folder, false, new Workstation("desk")).saveDraft(SavingChild.draft("K-8"), 0, any -> "draft\n");
        assertEquals(List.of(), verify());
    }

    private void write(List<String> lines, int... order) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int line : order) {
            text.append(lines.get(line)).append('\n');
        }
        Files.writeString(log, text);
    }
}
