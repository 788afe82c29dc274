package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.interview.Room;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The consult's screens as approved pictures, and what no key may do to them. */
class ConsultScreensTest {
    private static final int READINGS = Walk.ORDINARY.size();

    private static Walk after(int lines) {
        return Walk.consult().lines(Walk.ORDINARY.subList(0, lines));
    }

    private static Walk settled() {
        return after(READINGS).key(Key.Kind.F3).key(Key.Kind.F6).key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.character(' '))
                .key(Key.Kind.F3).lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3"));
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"80, 24", "160, 48"})
    void looksAsApproved(int columns, int rows) {
        String size = "-" + columns + "x" + rows;
        Approved.check("start" + size, Walk.on(StartScreen.of(Walk.desk().list(),
                List.of(new StartScreen.Left("j", "20260041-1", 17, "3 Mar 2026 16:20")))).picture(columns, rows));
        Approved.check("consult-first" + size, Walk.consult().picture(columns, rows));
        Approved.check("consult-frame" + size, after(20).line("12.4 125").picture(columns, rows));
        Approved.check("consult-cover" + size, after(28).picture(columns, rows));
        Approved.check("consult-limits" + size, after(READINGS).picture(columns, rows));
        Walk devices = after(READINGS).key(Key.Kind.F3);
        Approved.check("consult-devices-list" + size, devices.picture(columns, rows));
        Approved.check("consult-devices-pinned" + size, devices.key(Key.character(' ')).key(Key.Kind.DOWN)
                .key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.Kind.DOWN).key(Key.character(' ')).picture(columns, rows));
        Approved.check("consult-devices-columns" + size, devices.key(Key.Kind.F5).key(Key.Kind.F5).picture(columns, rows));
        Approved.check("consult-settle" + size, after(READINGS).key(Key.Kind.F3).key(Key.character(' ')).key(Key.Kind.F3)
                .line("dual-plane").picture(columns, rows));
        Approved.check("consult-record" + size, settled().picture(columns, rows));
        Approved.check("consult-what-if" + size, after(READINGS).key(Key.Kind.F3).key(Key.character(' '))
                .line("if base width 12.9 13.0").line("if pocket submuscular").picture(columns, rows));
        Approved.check("consult-sides" + size, after(READINGS - 1).picture(columns, rows));
        Approved.check("consult-pairs" + size, after(READINGS - 1).line("310 245").key(Key.Kind.F3).key(Key.Kind.F10)
                .key(Key.Kind.DOWN).picture(columns, rows));
        Approved.check("consult-why" + size, after(READINGS).key(Key.Kind.F4).picture(columns, rows));
        Approved.check("consult-help" + size, after(21).key(Key.character('?')).picture(columns, rows));
    }

    @Test
    void anOrdinaryConsultTakesFewEntriesAndKeys() {
        Walk walk = settled().line("sign kb");
        assertEquals(Room.RECORD, ((ConsultScreen) walk.screen()).shown());
        Effect last = walk.effects().get(walk.effects().size() - 1);
        assertTrue(last instanceof Effect.Save save && save.sign(), last.toString());
        assertTrue(walk.entries() <= 45, walk.entries() + " entries");
        assertTrue(walk.keys() <= 400, walk.keys() + " keys");
        System.out.println("ordinary consult: " + walk.entries() + " entries, " + walk.keys() + " key presses");
    }

    @Test
    void afterSigningNothingAsksForASignature() {
        Walk walk = settled().line("sign kb");
        Screen signed = walk.screen().onOutcome(new Effect.Done(walk.effects().get(walk.effects().size() - 1), "Signed and saved."));
        String picture = Frame.of(signed, 80, 24, Glyphs.UNICODE).picture();
        assertTrue(picture.contains("signed; Ctrl-C leaves"), picture);
        assertEquals(false, picture.contains("sign kb"), picture);
        Screen changed = Walk.on(signed).line("undo").screen();
        assertEquals(false, ((ConsultScreen) changed).signed(), "what is changed since is not signed");
    }

    @Test
    void anotherAnswerIsTakenOrDroppedWhole() {
        Walk walk = after(READINGS).key(Key.Kind.F3);
        var before = ((ConsultScreen) walk.screen()).interview().dossier();
        walk.line("if base width 12.9 13.0").line("if route periareolar").line("drop");
        assertEquals(before, ((ConsultScreen) walk.screen()).interview().dossier());
        walk.line("if base width 12.9 13.0").line("if route periareolar").key(Key.ctrl('z')).line("take");
        var after = ((ConsultScreen) walk.screen()).interview().dossier().patientCase();
        assertEquals(12.9, after.left().readings().value(domefold.patient.Measure.BASE_WIDTH).orElseThrow());
        assertEquals(before.patientCase().setting(), after.setting());
        assertTrue(walk.effects().get(walk.effects().size() - 1) instanceof Effect.All all && all.effects().size() == 1);
    }

    @Test
    void aNoteThatComesOrGoesIsNamedInWords() {
        String picture = after(READINGS).key(Key.Kind.F3).line("if base width 12.5 12.5").picture(120, 60);
        assertTrue(picture.contains("volume between rows"), picture);
        assertEquals(false, picture.contains("volume-between-rows"));
    }

    @Test
    void theNameAfterIfIsCompleted() {
        Walk walk = after(READINGS).key(Key.Kind.F3);
        "if base w".codePoints().forEach(c -> walk.key(Key.character(c)));
        assertEquals("if base width ", ((ConsultScreen) walk.key(Key.Kind.TAB).screen()).entry().text());
    }

    @Test
    void aPairIsSettledWithItsFills() {
        Walk walk = after(READINGS - 1).line("310 245").key(Key.Kind.F3).key(Key.Kind.F10).key(Key.Kind.ENTER);
        ConsultScreen screen = (ConsultScreen) walk.screen();
        var choices = screen.interview().dossier().choices();
        assertEquals(Room.SETTLE, screen.shown());
        assertEquals(310 + choices.on(domefold.patient.Side.LEFT).fillMl().orElseThrow(),
                245 + choices.on(domefold.patient.Side.RIGHT).fillMl().orElseThrow(), 1e-9);
    }

    @Test
    void everyAcceptedAnswerIsJournalledAtOnce() {
        Walk walk = after(READINGS);
        assertEquals(READINGS, walk.effects().stream().filter(Effect.Journal.class::isInstance).count());
    }

    @Test
    void anyKeysAtAnySizeDrawSomethingWhole() {
        long seed = 20260304L;
        SplittableRandom dice = new SplittableRandom(seed);
        Key.Kind[] kinds = Key.Kind.values();
        String typed = "0123456789.,  same skip back go undo why ?/-x";
        for (int session = 0; session < 12; session++) {
            Walk walk = after(dice.nextInt(READINGS + 1));
            for (int i = 0; i < 60; i++) {
                int which = dice.nextInt(4);
                if (which == 0) {
                    Key.Kind kind = kinds[dice.nextInt(kinds.length)];
                    walk.key(kind == Key.Kind.CHARACTER ? Key.ctrl((char) ('a' + dice.nextInt(26))) : Key.of(kind));
                } else {
                    walk.key(Key.character(typed.charAt(dice.nextInt(typed.length()))));
                }
                if (i % 6 == 0) {
                    int columns = 1 + dice.nextInt(300);
                    int rows = 1 + dice.nextInt(80);
                    Canvas canvas = Frame.of(walk.screen(), columns, rows, dice.nextBoolean() ? Glyphs.UNICODE : Glyphs.ASCII);
                    assertEquals(rows, canvas.picture().lines().count(), "seed " + seed + ", session " + session + ", key " + i);
                }
            }
        }
    }

    @Test
    void asciiGlassShowsOnlyAscii() {
        Walk walk = after(READINGS).key(Key.Kind.F3).key(Key.character(' '));
        String picture = Frame.of(walk.screen(), 160, 48, Glyphs.ASCII).picture();
        assertEquals("", picture.replaceAll("[\\x20-\\x7e\\n]", ""));
    }
}
