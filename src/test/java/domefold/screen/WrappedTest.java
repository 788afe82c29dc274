package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import domefold.outcome.Band;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WrappedTest {
    private final Canvas unicode = new Canvas(40, 1, Glyphs.UNICODE);

    @Test
    void furtherLinesStandBelowTheBeginningOfTheText() {
        assertEquals(List.of("! a caution", "  that is", "  long"), Wrapped.text(unicode, "! a caution that is long", 11));
        assertEquals(List.of("10. talked", "    over at", "    length"), Wrapped.text(unicode, "10. talked over at length", 12));
        assertEquals(List.of("Esc      clears", "         the line"), Wrapped.text(unicode, "Esc      clears the line", 18));
    }

    @Test
    void whatFitsIsLeftAsItIs() {
        assertEquals(List.of("place  device   outside"), Wrapped.text(unicode, "place  device   outside", 40));
    }

    @Test
    void aValueBeyondTheRulerIsMarkedAtTheEnd() {
        assertEquals(">", ruler(17.5).substring(19));
        assertEquals("<", ruler(7).strip());
        assertEquals("#", ruler(16).substring(19));
    }

    @Test
    void aBandBeyondTheRulerSaysSo() {
        Canvas canvas = new Canvas(20, 1, Glyphs.ASCII);
        SideRuler.VOLUME_ML.band(canvas, 0, 0, 20, Optional.of(new Band(550, 735)), Role.DRAWING);
        assertTrue(canvas.picture().stripTrailing().endsWith("/>"), canvas.picture());
    }

    @Test
    void theRulersSayThatAReadingIsOnlyTyped() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY.subList(0, 20));
        assertFalse(walk.picture(80, 24).contains("as typed"));
        "12 12".codePoints().forEach(c -> walk.key(Key.character(c)));
        assertTrue(walk.picture(80, 24).contains("with 12 12 as typed"));
        assertTrue(walk.picture(120, 36).contains("with 12 12 as typed"));
    }

    @Test
    void theSettledPageSaysWhereItsRestIs() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3).key(Key.Kind.F3);
        assertTrue(walk.picture(80, 24).contains("more rows in Record"), walk.picture(80, 24));
        assertFalse(walk.picture(160, 48).contains("more rows in Record"));
    }

    @Test
    void aRefusedLineIsAnsweredInRoomsThatShowMoreThanTheyAsk() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).line("xyz");
        for (int room = 0; room < 2; room++) {
            assertTrue(walk.picture(80, 24).contains("xyz'") || walk.picture(80, 24).contains("xyz is"), walk.picture(80, 24));
            walk.key(Key.Kind.ESCAPE).key(Key.Kind.F3).line("xyz");
        }
    }

    @Test
    void whatBlocksTheCaseStandsFirstInLimits() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).line("go health").line("pregnant").line("go limits");
        assertTrue(walk.picture(80, 24).lines().skip(3).findFirst().orElse("").startsWith(" BLOCKED"), walk.picture(80, 24));
    }

    @Test
    void aMissingReadingIsNamedAsAPersonReadsItAndNoShareIsClaimedForIt() {
        List<String> few = Walk.ORDINARY.subList(0, 19);
        Walk walk = Walk.consult().lines(few).line("12 12.3");
        for (int i = 0; i < 16; i++) {
            walk.lineCleared("skip");
        }
        walk.line("go limits");
        assertTrue(walk.picture(160, 60).contains("not taken: medial pinch, lateral pinch"), walk.picture(160, 60));
        walk.key(Key.Kind.F3).key(Key.character(' '));
        assertTrue(walk.picture(160, 60).contains("what was read"), walk.picture(160, 60));
    }

    private static String ruler(double valueCm) {
        Canvas canvas = new Canvas(20, 1, Glyphs.ASCII);
        SideRuler.WIDTH_CM.mark(canvas, 0, 0, 20, OptionalDouble.of(valueCm), canvas.glyphs().full(), Role.DRAWING);
        return canvas.picture().replace("\n", "");
    }
}
