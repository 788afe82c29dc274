package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Role;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.interview.Room;
import domefold.screen.ConsultScreen;
import domefold.screen.Desk;
import domefold.screen.DevicesState;
import domefold.screen.Effect;
import domefold.screen.Key;
import domefold.screen.Overlay;
import domefold.screen.Scrolled;
import domefold.screen.Walk;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.EvidenceFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The consult that the README walks through, replayed from its own words: what it says to type is what is typed here. */
class ReadmeWalkTest {
    private static final Pattern STEP = Pattern.compile("(?m)^([1-9])\\. (.*(?:\\n {3}.*)*)$");
    private static final Pattern TYPED = Pattern.compile("`([^`]+)`");

    private static List<String> steps() throws IOException {
        String text = Files.readString(Path.of("README.md"));
        String walk = text.substring(text.indexOf("**A consult to walk through**"));
        return STEP.matcher(walk.substring(0, walk.indexOf("\n\nWithout a face"))).results().map(step -> step.group(2)).toList();
    }

    private static List<String> typed(String step) {
        return TYPED.matcher(step).results().map(found -> found.group(1)).toList();
    }

    private static ConsultScreen at(Walk walk) {
        return (ConsultScreen) walk.screen();
    }

    private static void taken(Walk walk, String line) {
        walk.line(line);
        assertTrue(at(walk).entry().isEmpty(), () -> "'" + line + "' is left standing:\n" + walk.picture(80, 24));
        assertFalse(at(walk).saidRole() == Role.REFUSED && !at(walk).said().isEmpty(), () -> "'" + line + "' is refused:\n"
                + walk.picture(80, 24));
    }

    @Test
    void everyStepLeadsWhereItSays() throws IOException {
        List<String> steps = steps();
        assertEquals(6, steps.size(), steps.toString());
        String start = typed(steps.get(0)).get(0);
        assertTrue(start.startsWith("scripts/run consult "), start);
        Desk desk = Walk.desk();
        Walk walk = Walk.on(ConsultScreen.of(desk, Interview.begin(desk.guide(), new Dossier(CaseFile.read(
                Path.of(start.substring("scripts/run consult ".length())), CaseRules.of(EvidenceFiles.shipped(), any -> {})),
                Choices.NONE))));

        walk.key(Key.Kind.F3);
        assertEquals(Room.LIMITS, at(walk).shown());
        walk.key(Key.Kind.F4);
        assertEquals(Overlay.Kind.WORKING, at(walk).overlay().kind());
        walk.key(Key.Kind.ESCAPE);
        assertEquals(Room.LIMITS, at(walk).shown());

        walk.key(Key.Kind.ENTER);
        assertEquals(Room.DEVICES, at(walk).shown());
        walk.key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.character(' ')).key(Key.Kind.DOWN).key(Key.character(' '));
        assertEquals(3, at(walk).interview().dossier().choices().pinned().size());
        DevicesState listed = at(walk).devices();
        walk.key(Key.Kind.F5);
        assertNotEquals(listed.view(), at(walk).devices().view());
        walk.key(Key.Kind.PAGE_DOWN);
        assertNotEquals(Scrolled.START, at(walk).devices().columnScroll());
        typed(steps.get(2)).forEach(sign -> {
            var before = at(walk).devices().fillsMl();
            walk.key(Key.character(sign.charAt(0)));
            assertNotEquals(before, at(walk).devices().fillsMl(), sign);
        });

        List<String> tried = typed(steps.get(3));
        taken(walk, tried.get(0));
        assertTrue(at(walk).whatIf().isPresent(), tried.get(0));
        taken(walk, tried.get(1));
        assertTrue(at(walk).whatIf().isEmpty(), tried.get(1));

        walk.key(Key.Kind.F3);
        assertEquals(Room.SETTLE, at(walk).shown());
        for (String answer : typed(steps.get(4))) {
                taken(walk, answer);
        }
        assertEquals(Room.RECORD, at(walk).shown(), () -> walk.picture(80, 24));

        taken(walk, typed(steps.get(5)).get(0));
        assertTrue(walk.effects().get(walk.effects().size() - 1) instanceof Effect.Save, walk.effects().toString());
    }
}
