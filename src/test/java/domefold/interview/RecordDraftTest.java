package domefold.interview;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.followup.FollowUps;
import domefold.record.ConsultRecord;
import domefold.record.OutcomeShown;
import domefold.record.Versions;
import domefold.screen.Key;
import domefold.screen.Walk;
import domefold.screen.ConsultScreen;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class RecordDraftTest {
    private static ConsultRecord drafted() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3).key(Key.character(' '));
        Interview interview = ((ConsultScreen) walk.screen()).interview();
        return RecordDraft.of(interview, false, "{}", new Versions("0", "list", "", "0", true, "0"), "kb",
                Instant.parse("2026-03-04T10:15:30Z"), () -> new UUID(1, 2));
    }

    @Test
    void everyFigureShownSaysHowItCameToUs() {
        List<OutcomeShown> shown = drafted().outcomes();
        assertFalse(shown.isEmpty());
        shown.forEach(figure -> assertDoesNotThrow(() -> Status.of(figure.status()), figure.toString()));
    }

    @Test
    void aFigureIsOnlyAsSureAsItsLeastSurePoint() {
        Evidence evidence = Walk.desk().guide().evidence();
        var gel = Walk.desk().guide().catalogue().devices().stream().filter(d -> d.fill() == Fill.GEL).findFirst().orElseThrow();
        FollowUps.figures(gel, evidence).forEach(figure -> assertEquals(
                figure.rows().stream().mapToInt(row -> row.status().ordinal()).max().orElseThrow(), figure.status().ordinal()));
    }
}
