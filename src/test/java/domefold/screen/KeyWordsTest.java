package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the hints and the table of keys promise is what the keys do. */
class KeyWordsTest {
    private static Walk record() {
        return Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3).key(Key.Kind.F6).key(Key.character(' ')).key(Key.Kind.DOWN)
                .key(Key.character(' ')).key(Key.Kind.F3).lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3"));
    }

    private static String typed(String key) {
        return key.replaceFirst(",? ?(then )?Enter$", "");
    }

    @Test
    void theLineNamedForSigningSigns() {
        String hint = record().screen().hints().stream().filter(h -> h.meaning().startsWith("sign")).findFirst().orElseThrow().key();
        String listed = KeysPage.ROWS.stream().filter(r -> r.where().equals("Record") && r.meaning().startsWith("sign")).findFirst().orElseThrow().key();
        for (String key : List.of(hint, listed)) {
            Walk walk = record().line(typed(key));
            assertTrue(walk.effects().get(walk.effects().size() - 1) instanceof Effect.Save save && save.sign(), key);
        }
    }

    @Test
    void theLineNamedForADraftSavesOne() {
        for (KeysPage.Row row : KeysPage.ROWS) {
            if (row.where().equals("Record") && row.meaning().contains("draft")) {
                Walk walk = record().line(typed(row.key()));
                assertTrue(walk.effects().get(walk.effects().size() - 1) instanceof Effect.Save save && !save.sign(), row.key());
            }
        }
    }

    @Test
    void theKeyOfAPageOpensItOverAnotherAndClosesItOverItself() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY.subList(0, 6)).key(Key.character('?'));
        assertEquals(Overlay.Kind.KEYS, ((ConsultScreen) walk.key(Key.Kind.F1).screen()).overlay().kind());
        assertEquals(Overlay.Kind.WORKING, ((ConsultScreen) walk.key(Key.Kind.F4).screen()).overlay().kind());
        assertEquals(Overlay.Kind.NONE, ((ConsultScreen) walk.key(Key.Kind.F4).screen()).overlay().kind());
    }

    @Test
    void scrollingIsPromisedOnlyWhereItHappensAndTheWayToAllAnswersIsNamed() {
        assertFalse(KeysPage.ROWS.stream().anyMatch(r -> r.where().equals("everywhere") && r.key().startsWith("PgUp")
                && !r.meaning().contains("Limits")));
        assertTrue(KeysPage.ROWS.stream().anyMatch(r -> r.where().equals("everywhere") && r.key().equals("summary")));
        assertEquals(Overlay.Kind.SUMMARY, ((ConsultScreen) Walk.consult().lines(Walk.ORDINARY.subList(0, 6)).line("summary").screen())
                .overlay().kind());
    }
}
