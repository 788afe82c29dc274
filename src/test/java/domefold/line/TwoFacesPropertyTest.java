package domefold.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.interview.Exchange;
import domefold.interview.Interview;
import domefold.interview.Question;
import domefold.interview.Room;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import domefold.screen.Key;
import domefold.screen.Walk;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The same lines typed into the full screen and into the line face lead to the same consult. */
class TwoFacesPropertyTest {
    private static final List<String> NOISE = List.of("undo", "redo", "back", "nonsense", "go base width", "go age",
            "go upper", "skip", "12.5 12.8", "12,5 same", "again 12.6 12.9", "left 12.1", "300", "-5", "none", "yes", "999 999",
            "125 mm 12.8", "/cover", "II same", "5 5 5 5 5 5 5", "round");

    private static Interview shown(Walk walk) {
        return ((ConsultScreen) walk.screen()).interview();
    }

    private static void assertSame(Walk screen, LineWalk line, String where) {
        assertEquals(shown(screen).dossier(), line.interview().dossier(), where);
        assertEquals(shown(screen).exchanges(), line.interview().exchanges(), where);
        assertEquals(shown(screen).current().map(Question::id), line.interview().current().map(Question::id), where);
        assertEquals(screen.effects().stream().filter(Effect.Journal.class::isInstance).toList(), line.effects(), where);
    }

    @Test
    void anOrdinaryConsultIsTheSameInBothFacesToItsLastAnswer() {
        Walk screen = Walk.consult().lines(Walk.ORDINARY);
        LineWalk line = LineWalk.consult().lines(Walk.ORDINARY);
        assertSame(screen, line, "readings");
        screen.key(Key.Kind.F3).key(Key.Kind.F6).key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.character(' ')).key(Key.Kind.F3);
        screen.lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3"));
        line.lines(LineWalk.SETTLED);
        assertTrue(line.interview().complete());
        assertSame(screen, line, "settled");
    }

    @Test
    void anyLinesLeadToTheSameDossierJournalAndQuestion() {
        long seed = 20260304L;
        SplittableRandom dice = new SplittableRandom(seed);
        Map<String, String> answers = answers();
        int taken = 0;
        for (int session = 0; session < 8; session++) {
            Walk screen = Walk.consult();
            LineWalk line = LineWalk.consult();
            for (int i = 0; i < 45 && line.interview().room().ordinal() < Room.LIMITS.ordinal(); i++) {
                String id = line.interview().current().orElseThrow().id();
                String typed = dice.nextInt(3) == 0 ? NOISE.get(dice.nextInt(NOISE.size())) : answers.getOrDefault(id, "skip");
                screen.lineCleared(typed);
                line.line(typed);
                assertSame(screen, line, "seed " + seed + ", session " + session + ", line " + i + ": " + typed);
            }
            taken += line.interview().exchanges().size();
        }
        assertTrue(taken > 100, taken + " answers taken");
    }

    private static Map<String, String> answers() {
        Map<String, String> answers = new HashMap<>(LineWalk.consult().lines(Walk.ORDINARY).interview().exchanges().stream()
                .collect(Collectors.toMap(Exchange::questionId, Exchange::typed)));
        answers.put("case", "");
        return answers;
    }
}
