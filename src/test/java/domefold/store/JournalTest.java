package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {
    @TempDir
    Path home;
    private Path folder;

    @BeforeEach
    void aFolderThatIsNotThereYet() {
        folder = home.resolve("journal");
    }

    private Journal begin() throws IOException {
        return Journal.begin(folder, new Journal.Start(Samples.NOON, false, Optional.of(Samples.ordinary()), "about"));
    }

    private static Journal.Entry entry(int number) {
        return new Journal.Entry(Samples.NOON.plusSeconds(number), "answer", "baseWidthCm", "12,5 12.8\n\"é\" " + number);
    }

    private Journal.Unfinished only() throws IOException {
        List<Journal.Unfinished> all = Journals.unfinished(folder);
        assertEquals(1, all.size());
        return all.get(0);
    }

    @Test
    void whatWasAnsweredIsThereAfterwardsWithoutAnyClosing() throws IOException {
        Journal journal = begin();
        for (int i = 1; i <= 21; i++) {
            journal.append(entry(i));
        }
        Journal.Unfinished left = only();
        assertEquals(21, left.entries().size());
        assertEquals(entry(21), left.entries().get(20));
        assertEquals(Optional.of(Samples.ordinary()), left.start().start());
        assertEquals(Samples.NOON.plusSeconds(21), left.lastAt());
        assertFalse(left.torn());
        assertEquals(journal.id(), left.id());
        journal.close();
    }

    /** Cut at every byte: the whole lines before the cut come back, and the rest is put aside and gone on after. */
    @Test
    void aTornTailIsCutOffAndSetAside() throws IOException {
        try (Journal journal = begin()) {
            journal.append(entry(1));
            journal.append(entry(2));
        }
        Path file = only().file();
        byte[] whole = Files.readAllBytes(file);
        int second = new String(whole, 0, whole.length - 1, java.nio.charset.StandardCharsets.ISO_8859_1).lastIndexOf('\n') + 1;
        for (int cut = second; cut < whole.length; cut++) {
            Files.write(file, java.util.Arrays.copyOf(whole, cut));
            Journal.Unfinished left = only();
            assertEquals(1, left.entries().size(), "cut at " + cut);
            assertEquals(cut > second, left.torn());
        }
        try (Journal resumed = Journal.resume(only())) {
            resumed.append(entry(3));
        }
        assertEquals(List.of(entry(1), entry(3)), only().entries());
        assertTrue(Files.exists(file.resolveSibling(file.getFileName() + Journal.TORN)));
    }

    @Test
    void aChangedByteEndsTheReplayBeforeItsLine() throws IOException {
        try (Journal journal = begin()) {
            for (int i = 1; i <= 5; i++) {
                journal.append(entry(i));
            }
        }
        Path file = only().file();
        byte[] whole = Files.readAllBytes(file);
        List<Integer> ends = new ArrayList<>();
        for (int at = 0; at < whole.length; at++) {
            if (whole[at] == '\n') {
                ends.add(at);
            }
        }
        long seed = 7;
        Random random = new Random(seed);
        for (int round = 0; round < 300; round++) {
            byte[] damaged = whole.clone();
            int at = ends.get(0) + 1 + random.nextInt(whole.length - ends.get(0) - 1);
            damaged[at] ^= (byte) (1 + random.nextInt(255));
            Files.write(file, damaged);
            int line = (int) ends.stream().filter(end -> end < at).count();
            List<Journal.Entry> entries = only().entries();
            assertEquals(line - 1, entries.size(), "seed " + seed + ", round " + round + ", byte " + at);
        }
    }

    @Test
    void severalUnfinishedConsultsAreListedTheLatestFirst() throws IOException {
        try (Journal first = begin(); Journal second = begin()) {
            second.append(entry(1));
            first.append(entry(2));
            List<Journal.Unfinished> all = Journals.unfinished(folder);
            assertEquals(List.of(first.id(), second.id()), all.stream().map(Journal.Unfinished::id).toList());
        }
        Journals.discard(Journals.unfinished(folder).get(0));
        Path kept = Journals.keepAside(only());
        assertTrue(Files.exists(kept));
        assertEquals(List.of(), Journals.unfinished(folder));
    }

    @Test
    void aFinishedConsultLeavesNothing() throws IOException {
        Journal journal = begin();
        journal.finish();
        assertEquals(List.of(), Journals.unfinished(folder));
    }

    @Test
    void oneThatIsOpenElsewhereIsNotTakenOver() throws IOException {
        try (Journal journal = begin()) {
            Journal.Unfinished left = only();
            assertTrue(left.inUse());
            assertEquals("journal-in-use", assertThrows(Refusal.class, () -> Journal.resume(left)).code());
            journal.append(entry(1));
        }
        assertFalse(only().inUse());
        assertEquals(1, only().entries().size());
    }

    @Test
    void oneThatWentOnSinceItWasListedLosesNothing() throws IOException {
        begin().close();
        Journal.Unfinished stale = only();
        try (Journal elsewhere = Journal.resume(stale)) {
            elsewhere.append(entry(1));
        }
        assertEquals("journal-moved-on", assertThrows(Refusal.class, () -> Journal.resume(stale)).code());
        assertEquals(1, only().entries().size());
    }

    @Test
    void onlyTheUserCanReadIt() throws IOException {
        begin().close();
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(only().file())));
    }

    @Test
    void aFileThatIsNoJournalIsLeftAlone() throws IOException {
        begin().close();
        Path other = Files.writeString(folder.resolve("other" + Journal.ENDING), "not a journal\n", StandardOpenOption.CREATE);
        only();
        assertTrue(Files.exists(other));
    }
}
