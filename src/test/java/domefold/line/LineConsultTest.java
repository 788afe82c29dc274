package domefold.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.canvas.TextWidth;
import domefold.interview.Question;
import domefold.interview.Room;
import domefold.patient.Side;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import domefold.screen.StartScreen;
import domefold.screen.Walk;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineConsultTest {
    private static final int READINGS = Walk.ORDINARY.size();

    private static final LineWalk READ = LineWalk.consult().lines(Walk.ORDINARY);
    private static final LineWalk SETTLED = READ.fork().lines(LineWalk.SETTLED);

    private static LineWalk after(int lines) {
        return lines == READINGS ? READ.fork() : LineWalk.consult().lines(Walk.ORDINARY.subList(0, lines));
    }

    private static LineWalk settled() {
        return SETTLED.fork();
    }

    private static String question(LineWalk walk) {
        return walk.interview().current().map(Question::id).orElse("");
    }

    @Test
    void readsAsApproved() {
        Approved.check("line-first-answers", LineWalk.consult().lines(List.of("K 1", "", "thirty", "31", "?", "undo", "redo",
                "1660", "166", "58", "none", "summary", "back", "go base width", "12.4", "12.4 125 mm", "limits", "why width",
                "go age", "quit")).printed());
        LineWalk readings = after(READINGS);
        Approved.check("line-limits-and-devices", readings.last());
        String before = readings.printed();
        Approved.check("line-settle-and-sign", readings.lines(LineWalk.SETTLED).line("sign kb").printed().substring(before.length()));
        Approved.check("line-compare", after(READINGS).lines(List.of("sort verdict", "pin 1 2 4", "compare")).last());
    }

    @Test
    void everyLineStaysWithinEightyColumns() {
        LineWalk walk = settled().lines(List.of("devices all", "compare", "why", "help", "limits", "record"));
        assertEquals(List.of(), walk.printed().lines().filter(line -> TextWidth.of(line) > 80).toList());
    }

    @Test
    void everyAcceptedAnswerIsJournalledAtOnceAndNothingElseIs() {
        LineWalk walk = after(READINGS);
        assertEquals(READINGS, walk.effects().size());
        walk.lines(List.of("devices", "compare", "limits", "why", "summary", "help", "nonsense", "go age", "record", "sort volume"));
        assertEquals(READINGS, walk.effects().size());
        walk.line("pin 2");
        assertEquals(new Effect.Journal("20260042-9", "answer", "pins", walk.now().listing().ids().get(1)), walk.lastEffect());
        walk.line("undo");
        assertEquals(new Effect.Journal("20260042-9", "undo", "", ""), walk.lastEffect());
        walk.line("redo");
        assertEquals(new Effect.Journal("20260042-9", "redo", "", ""), walk.lastEffect());
    }

    @Test
    void aPinNumberMeansTheRowThatWasPrintedWithIt() {
        LineWalk walk = after(READINGS);
        String before = walk.now().listing().ids().get(2);
        walk.line("sort width");
        String after = walk.now().listing().ids().get(2);
        assertFalse(before.equals(after));
        assertTrue(walk.last().contains("\n 3. " + walk.interview().guide().catalogue().find(after).orElseThrow().fill().key()), walk.last());
        assertEquals(List.of(after), walk.line("pin 3").interview().dossier().choices().pinned());
    }

    @Test
    void pinsAreRefusedWithWhatWouldBeRight() {
        assertTrue(after(READINGS - 1).line("pin 1").last().startsWith("No list has been printed"));
        LineWalk walk = after(READINGS);
        assertTrue(walk.line("pin 900").last().startsWith("The list last printed has rows 1 to 20, not 900."));
        assertTrue(walk.line("pin").last().startsWith("Which device?"));
        assertTrue(walk.line("pin 1 2 3 4 5").last().startsWith("Up to 4 devices"));
        assertTrue(walk.line("drop 1").last().startsWith("'1' is not pinned; no device is."));
        assertTrue(walk.line("pin 1").line("pin 1").last().contains("is pinned already"));
        assertTrue(walk.line("drop 1").last().startsWith("No device is pinned now."));
        assertEquals(List.of(), walk.interview().dossier().choices().pinned());
    }

    @Test
    void thePinsKeepTheFloorUntilAnEmptyLineAndThenThePocketIsAsked() {
        LineWalk walk = after(READINGS).line("pin 1").line("pin 2");
        assertEquals("pins", question(walk));
        assertEquals("pocket", question(walk.line("")));
        assertEquals("pocket", question(after(READINGS).line("1 2")));
    }

    @Test
    void anotherAnswerIsTriedBesideTheConsultAndChangesNothing() {
        LineWalk walk = after(READINGS);
        var before = walk.interview().dossier();
        walk.line("if base width 13.4 13.5");
        assertTrue(walk.last().startsWith("If base width were LEFT 13.4 cm, RIGHT 13.5 cm (now LEFT 12.4 cm,"), walk.last());
        assertTrue(walk.last().contains("  LEFT: width ceiling 12.0 ± 0.6 cm on a base of 13.4 cm"), walk.last());
        assertEquals(before, walk.interview().dossier());
        assertEquals(READINGS, walk.effects().size());
        assertTrue(walk.line("if").last().contains("begins with no reading"), walk.last());
    }

    @Test
    void numbersTypedAloneAtThePinsAreRowsOfTheList() {
        LineWalk walk = after(READINGS);
        List<String> ids = walk.now().listing().ids();
        walk.line("2, 4");
        assertEquals(List.of(ids.get(1), ids.get(3)), walk.interview().dossier().choices().pinned());
    }

    @Test
    void onlyASummaryThatWasReadIsSigned() {
        LineWalk walk = settled();
        assertTrue(walk.line("sign").last().startsWith("Who signs?"));
        walk.line("drop 2").line("sign kb");
        assertFalse(walk.lastEffect() instanceof Effect.Save, "changed since it was read");
        assertTrue(walk.last().contains("`sign kb` again signs it"), walk.last());
        walk.line("sign kb");
        assertTrue(walk.lastEffect() instanceof Effect.Save save && save.sign() && save.author().equals("kb"));
        walk.told(new Effect.Done(walk.lastEffect(), "Signed and saved: x"));
        assertSame(Effect.QUIT, walk.lastEffect());
    }

    @Test
    void theInventedListAndTheCautionsAreSaidAtTheStartAndBeforeSigning() {
        String sentence = Walk.desk().list().sentence();
        assertEquals(2, settled().printed().split(java.util.regex.Pattern.quote(sentence), -1).length - 1);
        String record = settled().last();
        LimitsInWords.cautions(settled().interview()).forEach(caution ->
                assertTrue(record.replaceAll("\\s+", " ").contains(caution.replaceAll("\\s+", " ")), caution));
    }

    @Test
    void anIncompleteOrBlockedConsultIsNotSignedButKept() {
        LineWalk walk = after(READINGS);
        assertTrue(walk.line("sign kb").last().startsWith("Signing needs every required answer"));
        walk.line("draft kb");
        assertTrue(walk.lastEffect() instanceof Effect.Save save && !save.sign() && save.author().equals("kb"));
        LineWalk blocked = settled().line("go nicotine").line("pregnant").line("she asked for it");
        assertTrue(blocked.line("sign kb").last().startsWith("A blocked case is not signed off"), blocked.last());
    }

    @Test
    void aFailedSavingIsSaidAndTheConsultGoesOn() {
        LineWalk walk = settled().line("sign kb");
        walk.told(new Effect.Failed(walk.lastEffect(), "the disk is full"));
        assertTrue(walk.last().startsWith("Not done: The disk is full."), walk.last());
        assertTrue(walk.lastEffect() instanceof Effect.Save, "no quitting");
    }

    @Test
    void aReasonInFreeWordsMayBeginWithASteeringWord() {
        LineWalk walk = after(READINGS).lines(List.of("devices all", "skip", "dual-plane"));
        String outside = walk.interview().plan().orElseThrow().candidates().stream()
                .filter(c -> c.left().verdict() == domefold.plan.Verdict.OUTSIDE).findFirst().orElseThrow().device().id();
        walk.line(outside + " same");
        while (!question(walk).equals("reason")) {
            walk.line("skip");
        }
        walk.line("compare of both sides favours it");
        assertEquals(Optional.of("compare of both sides favours it"), walk.interview().dossier().choices().reasonTyped());
    }

    @Test
    void noAnswerWordIsASteeringWordOfThisFace() {
        LineWalk walk = settled();
        for (Question question : walk.interview().questions()) {
            question.words(walk.interview().dossier(), walk.interview().guide()).forEach(word ->
                    assertEquals(Optional.empty(), SteeringWord.leading(word), question.id()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"12\u0000 13", "12.4 \uFFFD", "\u001b[A", "a\u0085b"})
    void aBrokenLineIsSaidAndLeftOut(String line) {
        LineWalk walk = after(5).line(line);
        assertTrue(walk.last().startsWith("That line holds characters that cannot be read; it was left out."), walk.last());
        assertEquals(5, walk.effects().size());
        assertTrue(after(5).line("x".repeat(1001)).last().startsWith("That line is longer than 1000 characters"));
    }

    @Test
    void anUnfinishedConsultIsOfferedUntilTheFirstAnswer() {
        LineConsult first = LineWalk.consult().now();
        LineWalk walk = LineWalk.on(LineConsult.of(first.desk(), first.interview(),
                List.of(new StartScreen.Left("j1", "20260041-1", 17, "3 Mar 2026 16:20"))));
        assertTrue(walk.last().contains("1. 20260041-1, 17 answers, last 3 Mar 2026 16:20"), walk.last());
        assertTrue(walk.line("continue 2").last().startsWith("Unfinished consults are numbered 1 to 1."));
        Effect open = walk.line("continue 1").lastEffect();
        assertEquals(new Effect.Open(Optional.of("j1")), open);
        walk.told(new Effect.Opened(open, ConsultScreen.of(first.desk(), after(21).interview())));
        assertTrue(walk.last().startsWith("Continued: 20260042-9, 21 answers."), walk.last());
        assertEquals(Room.FRAME, walk.interview().room());
        assertTrue(walk.line("continue 1").last().startsWith("No consult was left unfinished."));
    }

    @Test
    void completionKnowsTheWordsOfTheQuestionAndThoseThatSteer() {
        LineConsult pole = after(5).now();
        assertTrue(pole.completion("").words().containsAll(List.of("sloped", "even", "round", "undo", "devices")));
        assertTrue(pole.completion("go ").words().containsAll(List.of("frame", "base width")));
        assertTrue(pole.completion("sort ").words().contains("width"));
        assertEquals(new Completion(0, List.of("summary")), pole.completion("Su"));
    }

    @Test
    void aNameOfSeveralWordsIsCompletedAsAWholeInSmallLettersOrCapitals() {
        LineConsult pole = after(5).now();
        assertEquals(new Completion(3, List.of("base width")), pole.completion("go bas"));
        assertEquals(new Completion(5, List.of("base width")), pole.completion("  go BASE w"));
        assertEquals(new Completion(3, List.of("base width")), pole.completion("if bas"));
        assertEquals(new Completion(1, List.of("base width")), pole.completion("/bas"));
        assertEquals(List.of(), pole.completion("go upper po").words().stream().filter(word -> !word.startsWith("upper po")).toList());
        assertEquals(List.of(), pole.completion("if base width 12").words());
    }

    @Test
    void whatIsCompletedIsUnderstood() {
        LineConsult pole = after(READINGS).now();
        pole.completion("go ").words().forEach(name -> assertFalse(pole.say("go " + name).text().contains("names no room"), name));
        pole.completion("if ").words().forEach(name -> assertFalse(pole.say("if " + name).text().contains("begins with no reading"), name));
        pole.completion("sort ").words().forEach(name -> assertFalse(pole.say("sort " + name).text().startsWith("The devices can"), name));
    }

    @Test
    void whatWasTriedIsTakenOrDropped() {
        LineWalk walk = after(READINGS);
        assertTrue(walk.line("take").last().startsWith("Nothing is being tried"), walk.last());
        walk.line("if base width 13.4 13.5");
        assertTrue(walk.line("drop").last().startsWith("Dropped; all is as it was."), walk.last());
        assertTrue(walk.line("take").last().startsWith("Nothing is being tried"), walk.last());
        assertEquals(READINGS, walk.effects().size());
        walk.line("if base width 13.4 13.5").line("take");
        assertTrue(walk.last().startsWith("Taken: base width, LEFT 13.4 cm, RIGHT 13.5 cm.\n\nWhat this allows so far\n"), walk.last());
        assertEquals(new Effect.Journal("20260042-9", "answer", "baseWidthCm", "13.4 13.5"), walk.lastEffect());
        assertTrue(walk.line("undo").last().startsWith("Taken back: base width"), walk.last());
    }

    @Test
    void doubtPairsAndOwningAreSaidInWords() {
        assertTrue(LineWalk.consult().line("doubt").last().startsWith("Nothing is computed yet"));
        assertTrue(LineWalk.consult().line("pairs").last().startsWith("Nothing is computed yet"));
        assertTrue(LineWalk.consult().line("owning").last().startsWith("No device is pinned;"));
        String doubt = after(READINGS).line("doubt").last();
        assertTrue(doubt.startsWith("How sure this is\n"), doubt);
        assertTrue(doubt.contains("\n  LEFT fits: under the reading error it fits in "), doubt);
        assertTrue(doubt.contains("\nplace device "), doubt);
        LineWalk walk = after(READINGS).line("pairs");
        assertTrue(walk.last().contains("\n 1. "), walk.last());
        String codes = walk.last().replaceAll("(?s).*for the\\s+first\\s+`(\\S+)\\s+(\\S+)`.*", "$1 $2");
        walk.line("go device").line(codes);
        var settled = walk.interview().dossier().choices().settled();
        assertEquals(List.of(codes.split(" ")), List.of(settled.get(Side.LEFT).deviceId().orElseThrow(),
                settled.get(Side.RIGHT).deviceId().orElseThrow()));
        String owning = after(READINGS).line("pin 1 2").line("owning").last();
        assertTrue(owning.contains("\n  Exams under US-2020 to year "), owning);
        for (String text : List.of(doubt, walk.printed(), owning)) {
            assertEquals(List.of(), text.lines().filter(line -> TextWidth.of(line) > 80).toList());
        }
    }

    @Test
    void whatIsOpenedWithAnswersSaysAtOnceWhatTheyAllow() {
        LineWalk walk = LineWalk.on(LineConsult.of(Walk.desk(), after(READINGS - 1).interview(), List.of()));
        assertTrue(walk.last().contains("\nWhat this allows so far\nLEFT: "), walk.last());
        assertFalse(LineWalk.consult().last().contains("What this allows"), "nothing is answered");
        LineWalk goingOn = LineWalk.consult();
        goingOn.told(new Effect.Opened(new Effect.Open(Optional.of("j1")), ConsultScreen.of(Walk.desk(), after(READINGS - 1).interview())));
        assertTrue(goingOn.last().contains("\nWhat this allows so far\nLEFT: "), goingOn.last());
    }
}
