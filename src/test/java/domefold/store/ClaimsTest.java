package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClaimsTest {
    private static final Instant NOW = Samples.NOON;

    @TempDir
    Path folder;
    private Claims one;
    private Claims two;

    @BeforeEach
    void twoWorkstations() throws IOException {
        one = new Claims(folder, new Workstation("desk-1"), new UUID(0, 1));
        two = new Claims(folder, new Workstation("desk-2"), new UUID(0, 2));
        SavingChild.signed(new RecordStore(folder, false, new Workstation("desk-1")), "K-1");
    }

    private List<Verification.Finding> findings() throws IOException {
        return Verification.of(folder).findings();
    }

    @Test
    void whoComesSecondLearnsWhoHasIt() throws IOException {
        assertEquals(Optional.empty(), one.take("K-1", "QT", NOW));
        assertEquals(Optional.empty(), one.take("K-1", "QT", NOW), "taking it again here is no clash");
        Claims.Claim holder = two.take("K-1", "XY", NOW.plusSeconds(10)).orElseThrow();
        assertEquals("desk-1", holder.workstation());
        assertEquals("QT", holder.who());
        two.release("K-1");
        assertTrue(one.holder("K-1").isPresent(), "nobody gives back what another holds");
        one.release("K-1");
        assertEquals(Optional.empty(), two.take("K-1", "XY", NOW));
        assertEquals(List.of(), findings(), "a claim is no part of a record");
    }

    @Test
    void onlyAStaleClaimIsTakenOverAndThatIsWrittenDown() throws IOException {
        one.take("K-1", "QT", NOW);
        one.refresh("K-1", NOW.plusSeconds(60));
        assertEquals("claim-not-stale", assertThrows(Refusal.class, () -> two.takeOver("K-1", "XY", NOW.plusSeconds(350))).code());
        two.takeOver("K-1", "XY", NOW.plusSeconds(361));
        assertEquals("desk-2", one.holder("K-1").orElseThrow().workstation());
        one.refresh("K-1", NOW.plusSeconds(400));
        assertEquals("desk-2", one.holder("K-1").orElseThrow().workstation(), "who lost it does not take it back by refreshing");
        assertTrue(Files.readString(folder.resolve(".audit/desk-2.jsonl")).contains("\"claim-taken-over\""));
        assertEquals(List.of(), findings());
    }

    @Test
    void anUnreadableClaimCountsAsStale() throws IOException {
        one.take("K-1", "QT", NOW);
        Files.writeString(folder.resolve("K-1").resolve(Claims.NAME), "{");
        two.takeOver("K-1", "XY", NOW);
        assertEquals("desk-2", two.holder("K-1").orElseThrow().workstation());
    }
}
