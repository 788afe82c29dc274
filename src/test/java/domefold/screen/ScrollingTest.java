package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whatever is scrolled stops at its last page, and the first key back moves. */
class ScrollingTest {
    private static final Pattern ROWS = Pattern.compile("rows (\\d+)–(\\d+) of (\\d+)");

    private static Walk consult() {
        return Walk.consult().lines(Walk.ORDINARY);
    }

    private static Walk press(Walk walk, Key.Kind kind, int times) {
        for (int i = 0; i < times; i++) {
            walk.key(kind);
        }
        return walk;
    }

    private static int first(Walk walk) {
        return rows(walk, 1);
    }

    private static int rows(Walk walk, int group) {
        Matcher rows = ROWS.matcher(walk.picture(80, 24));
        assertTrue(rows.find(), walk.picture(80, 24));
        return Integer.parseInt(rows.group(group));
    }

    private static void comesBackAtOnce(Walk walk, int pageRows) {
        press(walk, Key.Kind.PAGE_DOWN, 40);
        int last = first(walk);
        assertEquals(rows(walk, 3), rows(walk, 2), walk.picture(80, 24));
        walk.key(Key.Kind.PAGE_UP);
        assertEquals(Math.max(1, last - pageRows), first(walk), walk.picture(80, 24));
        press(walk, Key.Kind.PAGE_UP, 40).key(Key.Kind.PAGE_DOWN);
        assertEquals(Math.min(last, 1 + pageRows), first(walk));
    }

    @Test
    void pagesOverARoom() {
        for (Walk walk : List.of(consult().key(Key.Kind.F1), consult().key(Key.Kind.F4), consult().line("doubt"), consult().line("summary"))) {
            comesBackAtOnce(walk, 10);
            walk.key(Key.Kind.END);
            int last = first(walk);
            press(walk, Key.Kind.UP, 2);
            assertEquals(last - 2, first(walk), walk.picture(80, 24));
            assertEquals(1, first(walk.key(Key.Kind.HOME)));
        }
    }

    @Test
    void roomsAndWhatIf() {
        comesBackAtOnce(consult(), 8);
        Walk record = press(consult(), Key.Kind.F3, 3);
        assertEquals(domefold.interview.Room.RECORD, ((ConsultScreen) record.screen()).shown());
        comesBackAtOnce(record, 8);
        Walk whatIf = consult().key(Key.Kind.F3).line("if base width 12.9 13.0");
        comesBackAtOnce(whatIf, 8);
    }

    @Test
    void columnsOfDevicesAndOwning() {
        comesBackAtOnce(consult().key(Key.Kind.F3).key(Key.character(' ')), 8);
        comesBackAtOnce(consult().key(Key.Kind.F3).key(Key.Kind.F9), 10);
    }

    @Test
    void pagesOfPractice() {
        for (Walk walk : List.of(PracticeWalk.on(2, 2), PracticeWalk.on(2, 2).line(""),
                PracticeWalk.on(2, 2).lines(List.of("", "", "", "", "")).lines(PracticeWalk.PLAN).line("commit"),
                PracticeWalk.on(2, 2).line("drill"))) {
            press(walk, Key.Kind.PAGE_DOWN, 20);
            String end = walk.picture(60, 18);
            assertFalse(end.equals(walk.key(Key.Kind.PAGE_UP).picture(60, 18)), end);
        }
    }

    @Test
    void joinedStepsLeadWhereEachAloneDoes() {
        long seed = 20260304L;
        SplittableRandom dice = new SplittableRandom(seed);
        for (int walk = 0; walk < 300; walk++) {
            int last = dice.nextInt(60);
            int from = dice.nextInt(last + 1);
            int at = from;
            Scrolled scrolled = Scrolled.START;
            for (int i = 0; i < 200; i++) {
                int step = dice.nextInt(-12, 13);
                at = Math.max(0, Math.min(last, at + step));
                scrolled = scrolled.by(step);
                assertEquals(at, scrolled.row(from, last), "seed " + seed + ", walk " + walk + ", step " + i);
            }
            assertTrue(scrolled.steps().size() < 60, "seed " + seed + ": " + scrolled);
        }
        assertEquals(7, Scrolled.END.by(10).by(-3).row(10));
    }
}
