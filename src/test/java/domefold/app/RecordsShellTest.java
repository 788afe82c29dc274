package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import domefold.store.RecordStore;
import domefold.store.Workstation;
import domefold.terminal.TmuxSession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The coordinator's shell in a real terminal. */
@Tag("terminal")
class RecordsShellTest {
    @TempDir
    private Path home;

    @BeforeEach
    void saveOne() throws IOException {
        new RecordStore(home.resolve("records"), false, new Workstation("test")).sign(
                SampleRecords.withStatus(RecordStatus.DRAFT, false), 0, "A. Surgeon", Cli.DAY.instant(), ConsultSaving::summary);
    }

    private TmuxSession shell() throws IOException {
        TmuxSession session = TmuxSession.open(100, 30, Map.of("DOMEFOLD_HOME", home.toString(), "LC_ALL", "C.UTF-8"));
        session.run(Main.class.getName(), "records");
        session.await("records>");
        return session;
    }

    @Test
    void findShowListAndExport() throws IOException {
        try (TmuxSession session = shell()) {
            session.type("find gel");
            session.keys("Enter");
            session.await("LEFT   GEL-M-290, gel, filled to 290 mL");
            session.type("show K-20");
            session.keys("Tab");
            session.await("show K-2041");
            session.keys("Enter");
            session.await("more lines: Enter goes on");
            session.type("q");
            session.keys("Enter");
            session.await("records>");
            session.type("list");
            session.keys("Enter");
            session.await("1 of 1 record");
            assertTrue(session.alternateOn());
            session.keys("F6");
            session.await("K-2041 · consult of 04-Mar-2026 · version 1, signed");
            session.type("2026-03-20");
            session.keys("Enter");
            session.await("K-2041: operation booked for 2026-03-20");
            session.keys("F8");
            session.await("Due for imaging");
            session.keys("Escape");
            session.await("1 of 1 record");
            session.keys("Escape");
            session.await("records>");
            assertEquals(false, session.alternateOn());
            Path file = home.resolve("reminders.ics");
            session.type("export K-2041 --as ics --out " + file);
            session.keys("Enter");
            session.await("written: ");
            assertTrue(Files.readString(file).startsWith("BEGIN:VCALENDAR"));
            session.keys("C-d");
            session.awaitPrompt();
        }
    }

    @Test
    void anAmendmentOpensOnTheFullScreenAndComesBackToTheShell() throws IOException {
        String id = AmendedConsult.signed(home).record().id();
        try (TmuxSession session = shell()) {
            session.type("amend " + id + " --reason \"left base width read again\"");
            session.keys("Enter");
            session.await("Amending " + id + ", version 1: left base width read again.");
            assertTrue(session.alternateOn());
            session.keys("C-c");
            session.await("records>");
            assertEquals(false, session.alternateOn());
            session.type("mark " + id + " booked");
            session.keys("Enter");
            session.await("a booking has a day");
        }
    }

    @Test
    void aRecordThatCannotBeReadIsNamedOnTheList() throws IOException {
        Path other = Files.createDirectories(home.resolve("records/K-2042"));
        Files.writeString(other.resolve("v1.json"), "{");
        try (TmuxSession session = shell()) {
            session.type("list");
            session.keys("Enter");
            session.await("Not listed, because unreadable: K-2042.");
            session.keys("C-c");
            session.await("records>");
        }
    }

    @Test
    void theStartScreenOpensTheListAndEscapeComesBack() throws IOException {
        try (TmuxSession session = TmuxSession.open(80, 24, Map.of("DOMEFOLD_HOME", home.toString(), "LC_ALL", "C.UTF-8"))) {
            session.run(Main.class.getName());
            session.await("New consult");
            session.keys("Down", "Down", "Enter");
            session.await("1 of 1 record");
            session.keys("Escape");
            session.await("New consult");
            session.keys("Escape");
            session.awaitPrompt();
        }
    }

    @Test
    void endedByASignalItLeavesTheKeysAsTheyWere() throws IOException {
        try (TmuxSession session = shell()) {
            session.type("list");
            session.keys("Enter");
            session.await("1 of 1 record");
            session.keys("Escape");
            session.await("records>");
            TmuxSession.await("a line is read", () -> keysChanged(session));
            session.signal("HUP");
            session.await("records> ready$");
            assertEquals(false, session.keysChanged());
        }
    }

    private static boolean keysChanged(TmuxSession session) {
        try {
            return session.keysChanged();
        } catch (IOException failure) {
            throw new AssertionError(failure);
        }
    }
}
