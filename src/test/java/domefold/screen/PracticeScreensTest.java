package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.practice.NextCase;
import domefold.practice.exercise.Logbook;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Practice as a fellow sees it: approved pictures, and what no key may do. */
class PracticeScreensTest {
    private static final List<String> PAGES = List.of("", "", "", "", "");

    private static Walk atPlan() {
        return PracticeWalk.on(2, 2).lines(PAGES);
    }

    private static Walk marked() {
        return atPlan().lines(PracticeWalk.PLAN).line("commit");
    }

    private static PracticeScreen practice(Walk walk) {
        return (PracticeScreen) walk.screen();
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"80, 24", "160, 48"})
    void looksAsApproved(int columns, int rows) {
        String size = "-" + columns + "x" + rows;
        Approved.check("practice-history" + size, PracticeWalk.on(2, 2).picture(columns, rows));
        Approved.check("practice-frame" + size, PracticeWalk.on(2, 2).line("").picture(columns, rows));
        Approved.check("practice-asked" + size, PracticeWalk.on(2, 2).line("ask upper pinch").line("pinch").picture(columns, rows));
        Approved.check("practice-plan" + size, atPlan().lines(PracticeWalk.PLAN.subList(0, 7)).line("full").picture(columns, rows));
        Approved.check("practice-warnings" + size, atPlan().lines(PracticeWalk.PLAN.subList(0, 12)).line("?").picture(columns, rows));
        Approved.check("practice-marking" + size, marked().picture(columns, rows));
        Approved.check("practice-marking-ceiling" + size, marked().key(Key.Kind.DOWN).key(Key.Kind.DOWN).picture(columns, rows));
        Approved.check("practice-declined" + size, PracticeWalk.on(9, 3).line("state")
                .lines(List.of("no", "none", "too soon", "commit")).picture(columns, rows));
        Approved.check("practice-progress" + size, marked().line("progress").picture(columns, rows));
        Walk drill = PracticeWalk.on(2, 2).line("drill");
        Approved.check("practice-drill" + size, drill.picture(columns, rows));
        Approved.check("practice-drill-answered" + size, drill.line("height weight, scan left").picture(columns, rows));
    }

    @Test
    void theNarrowestWindowHoldsWhatToDoAndTheProgress() {
        Approved.check("practice-history-60x18", PracticeWalk.on(2, 2).picture(60, 18));
        Approved.check("practice-warnings-asked-60x18", atPlan().lines(PracticeWalk.PLAN.subList(0, 12)).picture(60, 18));
        Approved.check("practice-marking-60x18", marked().picture(60, 18));
        Approved.check("practice-progress-60x18", marked().line("progress").picture(60, 18));
    }

    @Test
    void nothingOfTheEngineOpensBeforeThePlanIsHandedIn() {
        Walk walk = atPlan();
        for (String word : List.of("devices", "limits")) {
            walk.line(word);
            assertTrue(practice(walk).looking().isEmpty());
            assertTrue(walk.picture(80, 24).contains("once your plan is handed in"), walk.picture(80, 24));
            walk.key(Key.ctrl('u'));
        }
        assertTrue(practice(walk).exercise().plan().isEmpty());
        Walk marked = marked().line("devices");
        assertTrue(marked.picture(80, 24).contains("PRACTICE"), marked.picture(80, 24));
        assertTrue(practice(marked).looking().isPresent());
        marked.key(Key.Kind.ESCAPE);
        assertTrue(practice(marked).looking().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"sign", "save", "order", "calendar", "export", "print"})
    void nothingOfPracticeLeaves(String word) {
        Walk walk = marked();
        int effects = walk.effects().size();
        walk.line(word);
        assertEquals(effects, walk.effects().size());
        assertTrue(walk.picture(80, 24).contains("nothing of it is saved as a record, ordered, exported or booked"));
    }

    @Test
    void signingInsideTheOpenedConsultIsRefusedInOneSentence() {
        Walk walk = marked().line("devices");
        int effects = walk.effects().size();
        for (int i = 0; i < 3; i++) {
            walk.key(Key.Kind.F3);
        }
        walk.line("save");
        walk.line("sign kb");
        assertEquals(effects, walk.effects().size());
        assertTrue(walk.picture(80, 24).contains("nothing of it is saved as a record"), walk.picture(160, 48));
    }

    @Test
    void aCommittedPlanIsKeptOnceAndCannotBeChanged() {
        Walk walk = marked();
        assertEquals(1, walk.effects().size());
        Effect.Practised kept = (Effect.Practised) walk.effects().get(0);
        assertEquals(2, kept.entry().number());
        PracticeScreen before = practice(walk);
        walk.line("undo").key(Key.ctrl('u')).line("commit");
        assertSame(before.exercise(), practice(walk).exercise());
        assertEquals(1, walk.effects().size());
        assertEquals(1, practice(walk).desk().log().progress().entries().size());
    }

    @Test
    void theNextCaseIsTheOneTheProgressAsksFor() {
        Walk walk = marked();
        NextCase next = NextCase.after(practice(walk).desk().log().progress(), Walk.desk().guide().evidence());
        walk.line("next");
        assertEquals(next.number(), practice(walk).exercise().practice().number());
        assertEquals(next.level(), practice(walk).exercise().practice().level());
        assertTrue(walk.picture(80, 24).contains("case " + next.number() + ", level " + next.level()));
        assertTrue(next.towards().isPresent(), "a marked case with weak spots steers the next");
    }

    @Test
    void theSameNumberIsTheSamePatientAgain() {
        assertEquals(PracticeWalk.on(7, 2).picture(160, 48), PracticeWalk.on(7, 2).picture(160, 48));
        assertFalse(PracticeWalk.on(7, 2).picture(160, 48).equals(PracticeWalk.on(8, 2).picture(160, 48)));
    }

    @Test
    void escapeOnAnEmptyLineGoesToTheStartScreenAndClearsATypedOneFirst() {
        Walk walk = atPlan();
        "abc".codePoints().forEach(c -> walk.key(Key.character(c)));
        walk.key(Key.Kind.ESCAPE);
        assertEquals(List.of(), walk.effects());
        walk.key(Key.Kind.ESCAPE);
        assertEquals(List.of(new Effect.Visit("start")), walk.effects());
    }

    @Test
    void aPlanNotHandedInIsLeftOnlyWhenAskedTwice() {
        Walk walk = atPlan().line("yes").key(Key.Kind.ESCAPE);
        assertEquals(List.of(), walk.effects());
        assertTrue(walk.picture(80, 24).contains("would be lost"), walk.picture(80, 24));
        assertEquals(List.of(new Effect.Visit("start")), walk.key(Key.Kind.ESCAPE).effects());
        Walk next = atPlan().line("yes").line("next");
        assertEquals(2, practice(next).exercise().practice().number());
        assertTrue(practice(next.key(Key.Kind.ENTER)).exercise().answers().isEmpty());
    }

    @Test
    void theSmallestWindowStillNamesTheCaseAndEveryStanding() {
        String picture = marked().picture(60, 18);
        assertTrue(picture.contains("case 2, level 2"), picture);
        assertTrue(picture.contains("stands              points"), picture);
        assertTrue(picture.contains("outside             0 of 3"), picture);
    }

    @Test
    void aDrillIsKeptAndTheNextIsAnother() {
        Walk walk = PracticeWalk.on(2, 2).line("drill").line("none");
        assertTrue(walk.effects().get(0) instanceof Effect.Drilled done && done.drill().number() == 1);
        walk.line("");
        assertEquals(2, ((DrillScreen) walk.screen()).drill().number());
        walk.key(Key.Kind.ESCAPE);
        assertEquals(1, practice(walk).desk().log().drills().size());
    }

    @Test
    void everyScreenSaysThatThePatientIsInventedAndStaysInsideEveryWindow() {
        SplittableRandom random = new SplittableRandom(7);
        Walk walk = PracticeWalk.on(3, 3);
        List<String> lines = List.of("", "", "ask base width", "state", "yes", "11 11.5", "300 same", "skip", "skip", "saline", "skip",
                "gel full 300", "?", "", "undo", "back", "skip", "commit", "drill", "swapped", "progress", "none", "next", "limits");
        for (int i = 0; i < 400; i++) {
            if (random.nextInt(3) == 0) {
                walk.line(lines.get(random.nextInt(lines.size())));
            } else {
                Key.Kind[] kinds = Key.Kind.values();
                Key.Kind kind = kinds[random.nextInt(kinds.length)];
                walk.key(kind == Key.Kind.CHARACTER ? Key.character('a' + random.nextInt(26)) : Key.of(kind));
            }
            Canvas canvas = Frame.of(walk.screen(), 60 + random.nextInt(120), 18 + random.nextInt(40), Glyphs.ASCII);
            assertTrue(canvas.picture().contains("PRACTICE"), "seed 7, step " + i + "\n" + canvas.picture());
        }
    }

    @Test
    void overTheConsultLookedAtEscIsSaidToDoWhatItDoes() {
        Walk walk = marked().line("devices").key(Key.Kind.F4);
        assertTrue(walk.picture(80, 24).contains("Esc closes"), walk.picture(80, 24));
        assertTrue(walk.key(Key.Kind.ESCAPE).picture(80, 24).contains("Esc back to the marking"), walk.picture(80, 24));
    }

    @Test
    void whatIsRefusedOrDoesNothingIsNotNamed() {
        assertFalse(atPlan().picture(80, 24).contains("skip leaves open"), atPlan().picture(80, 24));
        assertTrue(atPlan().lines(PracticeWalk.PLAN.subList(0, 3)).picture(80, 24).contains("skip leaves open"));
        assertFalse(atPlan().lines(PracticeWalk.PLAN).picture(80, 24).contains("skip leaves open"));
        for (Walk walk : List.of(atPlan().key(Key.character('?')), marked(), PracticeWalk.on(2, 2).line("drill"), marked().line("progress"))) {
            assertFalse(walk.picture(80, 24).contains("PgDn further"), walk.picture(80, 24));
        }
        Walk frame = PracticeWalk.on(2, 2).line("");
        assertTrue(frame.picture(80, 18).contains("PgDn: "), frame.picture(80, 18));
    }

    @Test
    void aLongCodeInTheListKeepsProfileAndSize() {
        Walk walk = atPlan().lines(PracticeWalk.PLAN.stream().map(line -> line.equals("full") ? "extra-full" : line).toList()).line("commit");
        assertTrue(walk.picture(80, 24).contains(" gel-…extra-full-240 "), walk.picture(80, 24));
    }

    @Test
    void flagsAreNamedInWords() {
        Walk walk = marked();
        for (int i = 0; i < 20; i++) {
            for (int columns : new int[] {60, 80, 160}) {
                String picture = walk.picture(columns, 48);
                assertFalse(picture.contains("sides-differ") || picture.contains("second-reading"), picture);
            }
            walk.key(Key.Kind.DOWN);
        }
        assertTrue(marked().picture(160, 48).contains("the two sides differ"), marked().picture(160, 48));
    }

    @Test
    void aDrillSaysASourceOnceAndPartsItsSentences() {
        String picture = PracticeWalk.on(2, 2).line("drill").line("none").picture(80, 48).replaceAll("\\s+", " ");
        assertFalse(picture.contains("not published, our own proposal"), picture);
        assertTrue(picture.contains("The readings say the RIGHT. The RIGHT breast"), picture);
    }

    @Test
    void aTutorsOwnCasesFollowEachOther() {
        PracticeDesk drawn = PracticeWalk.desk(Logbook.EMPTY);
        var own = List.of(practice(PracticeWalk.on(4, 1)).exercise().practice(), practice(PracticeWalk.on(5, 2)).exercise().practice());
        Walk walk = Walk.on(new PracticeDesk(drawn.desk(), drawn.log(), own).begin(OptionalInt.empty(), OptionalInt.empty()));
        assertEquals(4, practice(walk).exercise().practice().number());
        walk.line("next");
        assertEquals(5, practice(walk).exercise().practice().number());
    }
}
