package domefold.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import domefold.store.RecordStore;
import domefold.store.Stored;
import domefold.store.Workstation;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a coordinator does to a record from the command line. */
class RecordDeedsTest {
    @TempDir
    private Path home;
    private Stored signed;

    @BeforeEach
    void saveOne() throws IOException {
        signed = store("first", false).sign(SampleRecords.withStatus(RecordStatus.DRAFT, false), 0, "A. Surgeon",
                Cli.DAY.instant(), ConsultSaving::summary);
    }

    private RecordStore store(String workstation, boolean practice) {
        return new RecordStore(home.resolve(practice ? "practice" : "records"), practice, new Workstation(workstation));
    }

    private Cli run(String... words) {
        return Cli.run(home, words);
    }

    private Cli done(String line) {
        Cli run = run(line.split(" "));
        assertEquals(Exit.DONE, run.exit(), run.err());
        return run;
    }

    @Test
    void theOrderListOfADayHoldsThoseBookedForItAndTheListsLookAsApproved() {
        assertTrue(done("records order --day 2026-03-20").out().contains("No case has anything to order"));
        Cli booked = done("records mark K-2041 booked --on 2026-03-20 --by desk");
        assertEquals("K-2041: operation booked for 2026-03-20, entered by desk.\n", booked.out());
        assertEquals("case K-2041, consult of 04-Mar-2026 (2026-03-04); version 1, signed\n", booked.err());
        String digest = signed.loaded().sha256().substring(0, 12);
        Approved.check("records-order-day", done("records order --day 2026-03-20").out().replace(digest, "0123456789ab"));
        Approved.check("records-order-csv", done("records order K-2041 --as csv").out().replace(signed.loaded().sha256(),
                SampleRecords.SHA).replace("\r\n", "\n"));
        Approved.check("records-find", done("records find gel").out());
        Approved.check("records-find-csv", done("records find --as csv").out().replace("\r\n", "\n"));
        Approved.check("records-due-overdue", done("records due 2032-05").out());
        String shown = done("records show K-2041").out();
        Approved.check("records-show-since", shown.substring(shown.indexOf("What happened since")));
    }

    @Test
    void marksAreEventsAndTheRecordStaysAsItWas() throws IOException {
        byte[] before = Files.readAllBytes(signed.file());
        done("records mark K-2041 ordered --by desk");
        done("records mark K-2041 booked --on 2026-03-20");
        done("records implanted K-2041 --side left --fill 290 --on 2026-03-20");
        assertTrue(done("records mark K-2041 booked --on 2031-04-02").out().contains("imaging booked for 2031-04-02"));
        assertTrue(done("records due 2031-04").out().contains("booked for 2031-04-02"));
        assertTrue(done("records mark K-2041 done --on 2031-04-02").out().contains("imaging exam 1 done"));
        assertTrue(done("records due 2031-04").out().contains("0 records"));
        assertTrue(done("records find status:ordered").out().contains("K-2041"));
        assertArrayEquals(before, Files.readAllBytes(signed.file()));
        assertTrue(done("records verify").out().contains("nothing was changed"));
    }

    @Test
    void whatWasPutInIsHeldAgainstWhatWasSettled() {
        assertEquals("""
                LEFT: GEL-M-290, filled to 290 mL, put in on 2026-03-04
                  differs: LEFT: the label was neither scanned nor typed
                """, done("records implanted k-2041 --side left --fill 290").out());
        Cli other = run("records", "implanted", "K-2041", "--side", "left", "--fill", "270", "--device", "GEL-M-270", "--label",
                "(01)09521101530001(10)A213B1(21)1234", "--as", "json");
        assertEquals(Exit.DONE, other.exit(), other.err());
        assertEquals("", other.err());
        for (String code : List.of("neighbouring-size", "other-fill", "\"agrees\" : false", "\"side\" : \"left\"")) {
            assertTrue(other.out().contains(code), other.out());
        }
        Cli twice = run("records", "implanted", "K-2041", "--side", "right", "--fill", "330", "--label",
                "(01)09521101530001(10)A213B1(21)1234");
        assertTrue(twice.out().contains("one label was read twice"), twice.out());
        assertTrue(done("records show K-2041").out().contains("LEFT: GEL-M-270, filled to 270 mL"));
    }

    @Test
    void enteredInErrorIsTheNextVersionAndNothingIsOrderedFromIt() {
        Cli amended = run("records", "amend", "K-2041", "--entered-in-error", "--reason", "another patient's readings", "--by",
                "A. Surgeon");
        assertEquals(Exit.DONE, amended.exit(), amended.err());
        assertTrue(Files.exists(home.resolve("records/K-2041/v1.json")) && Files.exists(home.resolve("records/K-2041/v2.json")));
        assertEquals(Exit.REFUSED, run("records", "order", "K-2041").exit());
        assertEquals(Exit.REFUSED, run("records", "mark", "K-2041", "done").exit());
        assertTrue(done("records show K-2041").out().contains("another patient's readings"));
        assertFalse(done("records show K-2041 --version-number 1").out().contains("another patient's readings"));
        assertTrue(done("records verify").out().contains("nothing was changed"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"records order K-PRACTICE", "records export K-PRACTICE --as ics", "records export K-PRACTICE --as pdf",
        "records export K-PRACTICE --as text", "records export K-PRACTICE --as json", "records mark K-PRACTICE ordered",
        "records implanted K-PRACTICE --side left --fill 290", "records amend K-PRACTICE --reason x --entered-in-error"})
    void aPracticeCaseIsRefusedInOneSentence(String line) throws IOException {
        ConsultRecord practice = practice();
        store("first", true).sign(practice, 0, "A. Fellow", Cli.DAY.instant(), ConsultSaving::summary);
        Cli run = run(line.split(" "));
        assertEquals(Exit.REFUSED, run.exit(), run.err());
        assertTrue(run.err().contains("invented patient"), run.err());
        assertEquals("", run.out());
        assertFalse(done("records find").out().contains("K-PRACTICE"));
    }

    private static ConsultRecord practice() {
        ConsultRecord plain = SampleRecords.withStatus(RecordStatus.DRAFT, true);
        return new ConsultRecord("K-PRACTICE", 1, plain.status(), true, plain.inputs(), plain.answers(), plain.planJson(),
                plain.left(), plain.right(), plain.considered(), plain.topics(), plain.followUp(), plain.outcomes(),
                plain.overrides(), plain.versions(), plain.authorship(), plain.amendment());
    }

    @Test
    void aBackupGoesRoundWithEveryByteAndOnlyIntoAnEmptyFolder() throws IOException {
        done("records mark K-2041 ordered");
        Path zip = home.resolve("kept.zip");
        Cli backup = run("records", "backup", zip.toString());
        assertEquals(Exit.DONE, backup.exit(), backup.err());
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(zip)));
        assertEquals(Exit.REFUSED, run("records", "backup", zip.toString()).exit());
        assertEquals(Exit.REFUSED, run("records", "restore", zip.toString()).exit());
        Path other = home.resolve("other");
        Cli restored = run("records", "restore", zip.toString(), "--home", other.toString());
        assertEquals(Exit.DONE, restored.exit(), restored.err());
        assertEquals(bytes(home.resolve("records")), bytes(other.resolve("records")));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(other.resolve("records/K-2041"))));
        assertEquals("rw-------", PosixFilePermissions.toString(
                Files.getPosixFilePermissions(other.resolve("records/K-2041/v1.json"))));
        Cli verify = run("records", "verify", "--home", other.toString());
        assertTrue(verify.out().contains("nothing was changed"), verify.out());
    }

    private static Map<String, String> bytes(Path folder) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                found.put(folder.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return found;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"altered, is not as it was backed up", "missing, is missing", "added, is not in its manifest",
        "bare, holds no manifest.json", "cut, no whole zip file"})
    void aBackupThatIsNotWholeRestoresNothing(String how, String sentence) throws IOException {
        Path zip = home.resolve("kept.zip");
        run("records", "backup", zip.toString());
        spoil(zip, how);
        Path other = home.resolve("other");
        Cli restored = run("records", "restore", zip.toString(), "--home", other.toString());
        assertEquals(Exit.REFUSED, restored.exit(), restored.err());
        assertTrue(restored.err().contains(sentence), restored.err());
        try (Stream<Path> left = Files.list(other)) {
            assertEquals(List.of(), left.toList());
        }
    }

    private static void spoil(Path zip, String how) throws IOException {
        if (how.equals("cut")) {
            byte[] whole = Files.readAllBytes(zip);
            Files.write(zip, java.util.Arrays.copyOf(whole, whole.length / 2));
            return;
        }
        try (FileSystem inside = FileSystems.newFileSystem(zip)) {
            Path record = inside.getPath("K-2041/v1.json");
            switch (how) {
                case "altered" -> Files.writeString(record, Files.readString(record).replace("GEL-M-290", "GEL-M-390"));
                case "missing" -> Files.delete(record);
                case "bare" -> Files.delete(inside.getPath("manifest.json"));
                default -> Files.writeString(inside.getPath("K-2041/v9.json"), "{}");
            }
        }
    }

    @Test
    void twoWritersAtOnceAreBothShown() throws IOException {
        ConsultRecord mirrored = SampleRecords.mirrored(signed.record());
        store("first", false).amend(signed, mirrored, RecordStatus.AMENDED, "sides exchanged", "A. Surgeon",
                Cli.DAY.instant().plusSeconds(60), ConsultSaving::summary);
        domefold.outcome.Refusal clash = org.junit.jupiter.api.Assertions.assertThrows(domefold.outcome.Refusal.class,
                () -> store("second", false).amend(signed, signed.record(), RecordStatus.ENTERED_IN_ERROR, "another patient",
                        "B. Surgeon", Cli.DAY.instant().plusSeconds(61), ConsultSaving::summary));
        assertEquals("version-clash", clash.code());
        String shown = done("records show K-2041").out();
        assertTrue(shown.contains("Saved from elsewhere at the same time") && shown.contains("B. Surgeon"), shown);
        assertTrue(shown.contains("left.device.id: above 'GEL-M-330', there 'GEL-M-290'"), shown);
        Cli verify = run("records", "verify");
        assertEquals(Exit.REFUSED, verify.exit());
        assertTrue(verify.out().contains("waits for somebody to look at both"), verify.out());
    }

    @Test
    void withoutATerminalTheShellPrintsItsHelpAndEndsWithTwo() {
        Cli run = run("records");
        assertEquals(Exit.WRONG_USAGE, run.exit());
        assertTrue(run.out().contains("domefold records") && run.out().contains("implanted"), run.out());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"records mark K-2041 booked | 2 | a booking has a day",
        "records mark K-2041 implanted | 2 | cannot be marked", "records mark K-2041 lost | 2 | cannot be marked",
        "records mark K-2041 done --on 3/4/2026 | 2 | is no day", "records mark K-9 done | 3 | no record",
        "records implanted K-2041 --side middle --fill 290 | 2 | is no side",
        "records implanted K-2041 --side left --fill 0 | 3 | above 0 mL",
        "records implanted K-2041 --side left --fill 290 --label (01)09521101530002 | 3 | check",
        "records order | 2 | name one case", "records amend K-2041 | 2 | --reason", "records restore none.zip | 3 | holds records",
        "records show K-2041 --version-number 4 | 3 | has no version 4"})
    void whatCannotBeDoneIsSaidInOneSentence(String line, int exit, String part) throws IOException {
        Map<String, String> before = bytes(home.resolve("records"));
        Cli run = run(line.split(" "));
        assertEquals(exit, run.exit(), run.err());
        assertTrue(run.err().contains(part), run.err());
        assertEquals("", run.out());
        assertEquals(before, bytes(home.resolve("records")));
    }

    @Test
    void signingAnAmendmentLineByLineMakesTheNextVersion() throws IOException {
        Stored whole = AmendedConsult.signed(home);
        Cli run = amend(whole, "go baseWidthCm\n12.4 12.6\nrecord\nsign kb\n");
        assertEquals(Exit.DONE, run.exit(), run.toString());
        assertTrue(run.out().contains("Amending " + whole.record().id() + ", version 1: read again."), run.out());
        String next = Files.readString(whole.file().resolveSibling("v2.json"));
        assertTrue(next.contains("read again") && next.contains(whole.loaded().sha256()), run.toString());
        List<domefold.record.Amendment.FieldChange> changes = new domefold.store.RecordShelf(home.resolve("records"))
                .newest(whole.record().id()).orElseThrow().record().amendment().orElseThrow().changes();
        assertTrue(changes.stream().anyMatch(change -> change.field().contains("right.baseWidthCm")
                && change.before().equals("12.5") && change.after().equals("12.6")), changes.toString());
        assertTrue(changes.stream().noneMatch(change -> change.field().contains("uid")), changes.toString());
        assertFalse(Files.exists(whole.file().resolveSibling(".claim")));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"text", "pdf", "patient", "order", "ics", "fhir", "json"})
    void whatIsWrittenIsReadableByTheOwnerAloneAndNamesOnlyTheCase(String format) throws IOException {
        Path file = home.resolve(RecordOut.fileName(signed, format));
        Cli run = run("records", "export", "K-2041", "--as", format, "--out", file.toString());
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertTrue(file.getFileName().toString().matches("K-2041-v1-" + format + "\\.(txt|pdf|ics|json)"), file.toString());
    }

    @Test
    void nothingChangedIsNoAmendmentAndADraftOfOneIsNotKept() throws IOException {
        Stored whole = AmendedConsult.signed(home);
        Cli run = amend(whole, "draft\nrecord\nsign kb\n");
        assertEquals(Exit.REFUSED, run.exit(), run.toString());
        assertTrue(run.out().contains("An amendment is signed") && run.out().contains("Nothing was changed"), run.out());
        assertFalse(Files.exists(whole.file().resolveSibling("v2.json")));
    }

    @Test
    void whatIsOpenElsewhereIsNotAmendedUntilItsClaimIsStale() throws IOException {
        Stored whole = AmendedConsult.signed(home);
        domefold.store.Claims other = new domefold.store.Claims(home.resolve("records"), new Workstation("theatre-2"),
                java.util.UUID.randomUUID());
        other.take(whole.record().id(), "B. Surgeon", Cli.DAY.instant().minusSeconds(60));
        Cli refused = amend(whole, "");
        assertEquals(Exit.REFUSED, refused.exit(), refused.toString());
        assertTrue(refused.err().contains("theatre-2"), refused.err());
        other.release(whole.record().id());
        other.take(whole.record().id(), "B. Surgeon", Cli.DAY.instant().minusSeconds(600));
        assertEquals(Exit.DONE, amend(whole, "").exit());
        try (Stream<Path> logs = Files.list(home.resolve("records/.audit"))) {
            assertTrue(logs.anyMatch(log -> {
                try {
                    return Files.readString(log).contains("claim-taken-over");
                } catch (IOException failure) {
                    throw new java.io.UncheckedIOException(failure);
                }
            }));
        }
    }

    private Cli amend(Stored whole, String typed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = Cli.console(home, out, err, StandardCharsets.UTF_8);
        int exit = CommandShell.run(new String[] {"records", "amend", whole.record().id(), "--line", "--reason", "read again"},
                new Console(out, err, console.environment(), console.folder(), console.clock(), false, StandardCharsets.UTF_8,
                        new java.io.ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8))));
        return new Cli(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
