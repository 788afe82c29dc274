package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.RecordEvent;
import domefold.record.RecordStatus;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordStoreTest {
    private static final RecordStore.Summary SUMMARY = loaded -> "summary of version " + loaded.record().version() + "\n";

    @TempDir
    Path home;
    private Path folder;
    private RecordStore store;
    private RecordStore elsewhere;

    @BeforeEach
    void twoWorkstationsOnOneFolder() {
        folder = home.resolve("records");
        store = new RecordStore(folder, false, new Workstation("desk-1"));
        elsewhere = new RecordStore(folder, false, new Workstation("desk 2"));
    }

    private static Refusal refused(Action action) {
        return assertThrows(Refusal.class, action::run);
    }

    private interface Action {
        void run() throws IOException;
    }

    private void sound() throws IOException {
        assertEquals(List.of(), Verification.of(folder).findings());
    }

    private Stored signed() throws IOException {
        return store.sign(Samples.settled(), 0, "QT", Samples.NOON, SUMMARY);
    }

    private Stored amended(Stored from, String text) throws IOException {
        return store.amend(from, SavingChild.changed(from.record(), text), RecordStatus.AMENDED, "a reason", "QT",
                Samples.NOON.plusSeconds(60), SUMMARY);
    }

    @Test
    void aDraftIsReplacedAndSignedOnceAndForAll() throws IOException {
        Stored first = store.saveDraft(Samples.draft(), 0, SUMMARY);
        Stored second = store.saveDraft(Samples.settled(), first.revision(), SUMMARY);
        assertFalse(Files.exists(first.file()), "a later state takes the place of an earlier one");
        sound();
        Stored signed = store.sign(second.record(), second.revision(), "QT", Samples.NOON, SUMMARY);
        assertEquals("v1.json", signed.file().getFileName().toString());
        assertEquals("summary of version 1\n", Files.readString(signed.summary()));
        assertEquals(RecordStatus.SIGNED, store.shelf().newest("K-2041").orElseThrow().record().status());
        assertTrue(store.shelf().draft("K-2041").isEmpty());
        sound();
        assertEquals("already-signed", refused(() -> store.saveDraft(Samples.draft(), 0, SUMMARY)).code());
        assertEquals("version-clash", refused(() -> store.sign(Samples.settled(), 0, "QT", Samples.NOON, SUMMARY)).code());
    }

    @Test
    void anAmendmentLeavesTheSignedVersionUntouched() throws IOException {
        Stored first = signed();
        byte[] before = Files.readAllBytes(first.file());
        Stored second = amended(first, "a later thought");
        Amendment amendment = second.record().amendment().orElseThrow();
        assertEquals(2, second.version());
        assertEquals(first.loaded().sha256(), amendment.supersedesSha256());
        assertEquals(Digest.sha256(before), amendment.supersedesSha256());
        assertTrue(amendment.changes().contains(new Amendment.FieldChange("answers[0].text", "12.4 12,6", "a later thought")),
                amendment.changes().toString());
        assertArrayEquals(before, Files.readAllBytes(first.file()));
        assertEquals(List.of(1, 2), store.shelf().versions("K-2041").stream().map(Stored::version).toList());
        Stored third = store.amend(second, second.record(), RecordStatus.ENTERED_IN_ERROR, "wrong case", "QT", Samples.NOON, SUMMARY);
        assertEquals(RecordStatus.ENTERED_IN_ERROR, third.record().status());
        sound();
    }

    @Test
    void anAmendmentSaysWhyAndWhatAndOfWhat() throws IOException {
        Stored draft = store.saveDraft(Samples.draft(), 0, SUMMARY);
        assertEquals("not-signed", refused(() -> amended(draft, "x")).code());
        Stored signed = store.sign(draft.record(), 1, "QT", Samples.NOON, SUMMARY);
        assertEquals("nothing-changed", refused(() -> store.amend(signed, signed.record(), RecordStatus.AMENDED, "why", "QT",
                Samples.NOON, SUMMARY)).code());
        assertEquals("no-reason", refused(() -> store.amend(signed, SavingChild.changed(signed.record(), "x"),
                RecordStatus.AMENDED, " ", "QT", Samples.NOON, SUMMARY)).code());
    }

    @Test
    void ofTwoWhoAmendTheSameVersionBothKeepTheirs() throws IOException {
        Stored base = signed();
        Stored mine = amended(base, "mine");
        Refusal clash = refused(() -> elsewhere.amend(base, SavingChild.changed(base.record(), "theirs"),
                RecordStatus.AMENDED, "why", "XY", Samples.NOON, SUMMARY));
        assertEquals("version-clash", clash.code());
        assertTrue(clash.getMessage().contains("conflict-"), clash.getMessage());
        assertEquals(mine.loaded().sha256(), store.shelf().newest("K-2041").orElseThrow().loaded().sha256());
        List<Stored> conflicts = store.shelf().conflicts("K-2041");
        assertEquals("theirs", conflicts.get(0).record().answers().get(0).text());
        assertEquals(List.of("conflict-open"), Verification.of(folder).findings().stream().map(Verification.Finding::code).toList());
    }

    @Test
    void ofTwoWhoChangeTheSameDraftBothKeepTheirs() throws IOException {
        Stored draft = store.saveDraft(Samples.draft(), 0, SUMMARY);
        Stored theirs = elsewhere.saveDraft(SavingChild.changed(draft.record(), "theirs"), draft.revision(), SUMMARY);
        ConsultRecord mine = SavingChild.changed(draft.record(), "mine");
        assertEquals("version-clash", refused(() -> store.saveDraft(mine, draft.revision(), SUMMARY)).code());
        assertEquals("version-clash", refused(() -> store.sign(mine, draft.revision(), "QT", Samples.NOON, SUMMARY)).code());
        assertEquals("case-code-taken", refused(() -> store.saveDraft(mine, 0, SUMMARY)).code());
        Stored fourth = elsewhere.saveDraft(SavingChild.changed(draft.record(), "again"), theirs.revision(), SUMMARY);
        assertEquals("version-clash", refused(() -> store.saveDraft(mine, draft.revision(), SUMMARY)).code());
        assertEquals(fourth.loaded().sha256(), store.shelf().newest("K-2041").orElseThrow().loaded().sha256());
        assertEquals(3, store.shelf().conflicts("K-2041").size());
    }

    @Test
    void aDiscardedDraftIsGoneAndThatIsWrittenDown() throws IOException {
        Stored draft = store.saveDraft(Samples.draft(), 0, SUMMARY);
        store.discardDraft(draft, "QT", Samples.NOON);
        assertTrue(store.shelf().newest("K-2041").isEmpty());
        sound();
    }

    @Test
    void aRecordOfANewerVersionIsNotAmended() throws IOException {
        Stored signed = signed();
        Files.writeString(signed.file(), Files.readString(signed.file()).replaceFirst("\"practice\"", "\"novelty\": 1, \"practice\""));
        Stored newer = store.shelf().newest("K-2041").orElseThrow();
        assertEquals("written-by-newer", refused(() -> amended(newer, "x")).code());
    }

    @Test
    void whatHappenedLaterIsAFileOfItsOwn() throws IOException {
        RecordEvent ordered = new RecordEvent("K-2041", 1, RecordEvent.Kind.ORDERED, LocalDate.of(2026, 3, 5), "by post", "AB",
                Samples.NOON, "{ \"copies\": 2 }");
        assertEquals("not-signed", refused(() -> store.addEvent(ordered)).code());
        signed();
        store.addEvent(ordered);
        store.addEvent(ordered);
        assertEquals(List.of(ordered, ordered), store.shelf().events("K-2041"));
        sound();
    }

    /** Read back before it is published: what could not be read again is not written. */
    @Test
    void whatCouldNotBeReadAgainIsNeverWritten() throws IOException {
        ConsultRecord noPlan = ConsultRecord.draft(Samples.ordinary(), "{ \"format\": ", Samples.draft().versions(), "QT", Samples.NOON);
        refused(() -> store.saveDraft(noPlan, 0, SUMMARY));
        refused(() -> store.saveDraft(SavingChild.draft("K".repeat(41)), 0, SUMMARY));
        assertEquals(List.of(), store.shelf().ids().stream().filter(id -> {
            try {
                return store.shelf().newest(id).isPresent();
            } catch (IOException failure) {
                throw new java.io.UncheckedIOException(failure);
            }
        }).toList());
        sound();
    }

    @Test
    void practiceCasesLiveApartAndAreNeverOrdered() throws IOException {
        RecordStore practice = new RecordStore(home.resolve("practice"), true, new Workstation("desk-1"));
        assertThrows(IllegalArgumentException.class, () -> practice.saveDraft(Samples.draft(), 0, SUMMARY));
        assertEquals("practice-record", refused(() -> practice.addEvent(new RecordEvent("K-2041", 1, RecordEvent.Kind.ORDERED,
                LocalDate.EPOCH, "", "AB", Samples.NOON, "{}"))).code());
    }

    @Test
    void issuedCodesAreNeverIssuedTwice() throws IOException {
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < 20; i++) {
            assertTrue(codes.add((i % 2 == 0 ? store : elsewhere).issueCode(2026)));
        }
        assertTrue(codes.contains("C-2026-0001-" + domefold.record.DammCode.digit("20260001")));
        sound();
    }

    @Test
    void anyCaseCodeMakesASafeFolderName() throws IOException {
        for (String code : List.of("../../etc", "a/b\\c", "K 20:41*", "Müller-7", ".audit", "CON+1%20", "..")) {
            Stored saved = store.saveDraft(SavingChild.draft(code), 0, SUMMARY);
            assertEquals(folder, saved.file().getParent().getParent());
            assertTrue(saved.file().getParent().getFileName().toString().matches("[A-Za-z0-9_%-]+"));
            assertEquals(code, store.shelf().newest(code).orElseThrow().record().id());
        }
        assertEquals(7, store.shelf().ids().size());
        sound();
    }

    @Test
    void onlyTheUserCanReadAnyOfIt() throws IOException {
        amended(signed(), "x");
        Map<String, Integer> modes = new HashMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.toList()) {
                String mode = PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
                assertEquals(Files.isDirectory(path) ? "rwx------" : "rw-------", mode, path.toString());
                modes.merge(mode, 1, Integer::sum);
            }
        }
        assertEquals(Map.of("rwx------", 3, "rw-------", 5), modes);
    }

    @Test
    void aHalfWrittenFileIsRecognisedAndSetAside() throws IOException {
        Stored signed = signed();
        Path half = Files.writeString(signed.file().resolveSibling(".v2.json.123" + AtomicFile.UNFINISHED), "{ \"format\": ");
        assertEquals(List.of("half-written"), Verification.of(folder).findings().stream().map(Verification.Finding::code).toList());
        assertEquals(List.of(), store.setLeftoversAside(java.time.Instant.now()), "it may still be being written");
        assertEquals(1, store.setLeftoversAside(java.time.Instant.now().plusSeconds(3600)).size());
        assertFalse(Files.exists(half));
        sound();
    }

    /** Killed in mid-write six times: what was said to be saved is there to the last byte, and the chain stands. */
    @Test
    void aKilledProcessLosesNothingThatWasSaved() throws Exception {
        List<String> acknowledged = new ArrayList<>();
        for (int run = 1; run <= 6; run++) {
            Path output = home.resolve("run-" + run);
            Process child = SavingChild.start(folder, "desk-1", "K-" + run, 100_000, output);
            while (child.isAlive() && Files.readAllLines(output).size() < 2 + 2 * run) {
                Thread.sleep(2);
            }
            Thread.sleep(run * 3L);
            child.destroyForcibly().waitFor();
            List<String> whole = Files.readString(output).lines().filter(line -> line.matches(".* [0-9a-f]{64}")).toList();
            assertTrue(whole.size() >= 2 + 2 * run, "run " + run + " ended by itself");
            acknowledged.addAll(whole);
        }
        assertTrue(acknowledged.size() >= 54, "six runs saved " + acknowledged.size());
        for (String line : acknowledged) {
            String[] words = line.split(" ");
            Path file = folder.resolve(words[1]).resolve(words[2]);
            assertEquals(words[3], Digest.sha256(Files.readAllBytes(file)), line);
        }
        Set<String> allowed = Set.of("half-written", "unlogged", "summary-missing", "log-torn", "draft-beside-signed");
        for (Verification.Finding finding : Verification.of(folder).findings()) {
            assertTrue(allowed.contains(finding.code()), finding.toString());
        }
    }

    /** {@code -Ddomefold.saves=500} for the long run. */
    @Test
    void twoProcessesOnOneFolderOverwriteNothing() throws Exception {
        int saves = Integer.getInteger("domefold.saves", 25);
        SavingChild.signed(store, "SHARED");
        Process one = SavingChild.start(folder, "desk-1", "K-1", saves, home.resolve("one"));
        Process two = SavingChild.start(folder, "desk-1", "K-2", saves, home.resolve("two"));
        List<String> said = new ArrayList<>();
        assertEquals(0, one.waitFor());
        assertEquals(0, two.waitFor());
        said.addAll(Files.readAllLines(home.resolve("one")));
        said.addAll(Files.readAllLines(home.resolve("two")));
        long clashes = said.stream().filter(line -> line.equals("clash version-clash")).count();
        Set<String> files = new HashSet<>();
        for (String line : said) {
            String[] words = line.split(" ");
            if (words[0].equals("saved")) {
                assertTrue(files.add(words[1] + "/" + words[2]), "saved twice: " + line);
                assertEquals(words[3], Digest.sha256(Files.readAllBytes(folder.resolve(words[1]).resolve(words[2]))), line);
            }
        }
        assertEquals(2L * (2 * saves + 1), files.size() + clashes, said.stream().filter(line -> line.startsWith("clash"))
                .distinct().toList().toString());
        assertEquals(clashes, store.shelf().conflicts("SHARED").size());
        Verification verification = Verification.of(folder);
        assertEquals(clashes, verification.findings().size(), verification.findings().toString());
        assertEquals(2L * (2 * saves + 2) + 2, verification.lines());
    }
}
