package domefold.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.TextWidth;
import domefold.practice.PatientDraw;
import domefold.practice.PracticeCase;
import domefold.practice.exercise.Logbook;
import domefold.screen.Desk;
import domefold.screen.Effect;
import domefold.screen.PracticeDesk;
import domefold.screen.Walk;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class LinePracticeTest {
    private static final List<String> PLAN = List.of("yes", "10.5 same", "250 same", "dual-plane", "keep 0.5", "gel", "full",
            "smooth 240 / smooth 270", "inframammary", "yes", "3.5", "US-2020", "uneven sides, second reading", "so that it fits her base");

    private LinePractice.Turn turn = begin(List.of()).open();

    private static PracticeDesk desk(List<PracticeCase> own) {
        Desk consult = Walk.desk();
        return new PracticeDesk(new Desk(consult.guide(), consult.today(), true), Logbook.EMPTY, own);
    }

    private static LinePractice begin(List<PracticeCase> own) {
        return own.isEmpty() ? LinePractice.of(desk(own), OptionalInt.of(2), OptionalInt.of(2))
                : LinePractice.of(desk(own), OptionalInt.empty(), OptionalInt.empty());
    }

    private String say(String... lines) {
        for (String line : lines) {
            turn = turn.next().say(line);
            assertEquals(List.of(), turn.text().lines().filter(one -> TextWidth.of(one) > 80).toList(), line);
        }
        return turn.text();
    }

    private void marked() {
        List<String> lines = new ArrayList<>(List.of("", "", "", "", ""));
        lines.addAll(PLAN);
        lines.add("commit");
        say(lines.toArray(String[]::new));
    }

    @Test
    void whatWasTakenAndStatedIsToldAtAnyTime() {
        assertTrue(say("summary").startsWith("No reading is taken yet.\nNothing is stated yet.\nEnter takes the readings of Frame,"), turn.text());
        assertTrue(say("ask base width", "state", "yes", "summary").startsWith("Taken, 1 of "), turn.text());
        assertTrue(turn.text().contains("\n  base width: LEFT "), turn.text());
        assertTrue(turn.text().contains("\nYour plan:\n  Would you operate now? yes\nWidth ceiling"), turn.text());
        marked();
        assertTrue(say("summary").contains("\n  Width ceiling: 10.5 cm on both sides\n"), turn.text());
    }

    @Test
    void whatIsAskedNowIsTrueOnEveryPage() {
        assertTrue(say("").endsWith("Enter takes the readings of Cover, `state` goes to your plan.\n"), turn.text());
        assertTrue(say("back").endsWith("Enter turns to Frame, `state` goes to your plan.\n"), turn.text());
        assertTrue(turn.text().startsWith("History. "), turn.text());
        assertTrue(say("state", "back").startsWith("Sides: no reading taken; `ask sides` takes them.\nEnter goes to your plan."), turn.text());
        assertTrue(say("ask sides").startsWith("Taken: the readings of Sides."), turn.text());
        marked();
        assertTrue(turn.text().endsWith("`next` draws another case, `quit` leaves; ? tells what else can be looked at.\n"), turn.text());
        assertTrue(say("12").endsWith("`next` draws another case, `quit` leaves; ? tells what else can be looked at.\n"), turn.text());
    }

    @Test
    void theEnginesPlanOpensOnceTheOwnIsHandedIn() {
        for (String word : List.of("limits", "devices", "why", "compare")) {
            assertTrue(say(word).startsWith("The limits, the devices and the working open once your plan is handed in"), turn.text());
        }
        marked();
        assertTrue(say("limits").startsWith("What the tissues allow\n"), turn.text());
        assertTrue(say("why ceiling").startsWith("LEFT: the working\n"), turn.text());
        assertTrue(say("compare").startsWith("Pinned: 1 "), turn.text());
        assertTrue(say("devices").contains("\n 1. "), turn.text());
        assertFalse(turn.text().contains("`pin"), turn.text());
        assertTrue(say("sort width", "devices more").contains("\n 21. ") || turn.text().contains("\n21. "), turn.text());
        assertTrue(say("?").contains("`why fold`"), turn.text());
        assertTrue(say("sign").startsWith("Practice: nothing of it is saved"), turn.text());
    }

    @Test
    void progressIsToldInWords() {
        assertTrue(say("progress").startsWith("No case is marked yet"), turn.text());
        marked();
        assertTrue(say("progress").startsWith("Over 1 marked case, of 100 each:\n  "), turn.text());
        assertTrue(turn.text().contains("\n  2026-03-04, case 2, level 2: "), turn.text());
    }

    @Test
    void aDrillIsAnsweredBesideTheCaseAndKept() {
        assertTrue(say("", "drill").startsWith("Reading drill 1. Which of these readings are wrong?\n"), turn.text());
        assertTrue(turn.text().contains("\n  base width: LEFT "), turn.text());
        assertTrue(say("?").contains("\n  none: nothing is wrong\n"), turn.text());
        assertTrue(say("nonsense").startsWith("'nonsense' names no slip"), turn.text());
        say("none");
        assertTrue(turn.effect() instanceof Effect.Drilled drilled && drilled.drill().number() == 1, turn.text());
        assertTrue(say("").startsWith("Reading drill 2."), turn.text());
        assertTrue(say("back").endsWith("Enter takes the readings of Cover, `state` goes to your plan.\n"), turn.text());
        assertTrue(say("progress").contains("\nReading drills: 1, all right in "), turn.text());
    }

    @Test
    void aPlanIsNotLostToTheNextCaseUnasked() {
        say("state", "yes");
        assertTrue(say("next").startsWith("Your plan is not handed in and would be lost"), turn.text());
        assertTrue(turn.next().left().contains("nothing of it is kept"));
        marked();
        assertEquals("Left.\n", turn.next().left());
    }

    @Test
    void aTutorsOwnCasesFollowEachOther() {
        List<PracticeCase> own = List.of(PatientDraw.of(5, 1, Walk.desk().guide().evidence()), PatientDraw.of(6, 1, Walk.desk().guide().evidence()));
        turn = begin(own).open();
        assertTrue(turn.text().contains("Case 5, level 1."), turn.text());
        assertTrue(say("next").contains("Case 6, level 1."), turn.text());
        assertFalse(say("next").contains("Case 5, level 1."), turn.text());
    }

    @Test
    void linesThatCannotBeReadAreLeftOut() {
        assertTrue(say("x".repeat(1001)).startsWith("That line is longer than 1000 characters"));
        assertTrue(say("\u0001").startsWith("That line holds characters"));
    }

    @Test
    void completionKnowsThePage() {
        assertEquals(new Completion(4, List.of("base width")), turn.next().completion("ask BAS"));
        assertEquals(List.of("base width"), turn.next().completion("bas").words());
        assertTrue(turn.next().completion("").words().containsAll(List.of("state", "ask", "drill", "summary")));
        say("state", "yes", "10.5 same", "250 same");
        assertEquals(List.of("dual-plane"), turn.next().completion("dua").words());
        assertTrue(turn.next().completion("go ").words().contains("your plan"));
        marked();
        assertTrue(turn.next().completion("").words().containsAll(List.of("limits", "why", "next")));
        assertFalse(turn.next().completion("").words().contains("state"));
    }
}
