package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Glyphs;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import domefold.screen.Frame;
import domefold.screen.Key;
import domefold.screen.Screen;
import domefold.screen.StartScreen;
import domefold.screen.Walk;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One patient's values never stand in another patient's consult or record. */
class OtherPatientTest {
    /** Nobody else has these. */
    private static final List<String> FIRST = List.of("FIRST-A", "47", "181", "93", "none", "round", "455");
    private static final List<String> HERS = List.of("FIRST-A", "47 years", "181", "93", "455");

    @TempDir
    private Path home;

    private static String picture(Screen screen) {
        return Frame.of(screen, 160, 48, Glyphs.UNICODE).picture();
    }

    private static void holdsNothingOfHers(String text) {
        for (String value : HERS) {
            assertFalse(text.matches("(?s).*(?<![\\w.])" + value + "(?![\\w.]).*"), value + " in\n" + text);
        }
    }

    private static Screen typed(ConsultEffects effects, Screen first, List<String> lines) throws IOException {
        Screen screen = first;
        for (String line : lines) {
            for (int c : line.codePoints().toArray()) {
                screen = screen.onKey(Key.character(c)).next();
            }
            Screen.Step step = screen.onKey(Key.of(Key.Kind.ENTER));
            screen = step.next().onOutcome(effects.carryOut(step.effect()));
        }
        return screen;
    }

    @Test
    void openingASecondConsultShowsNothingOfTheFirst() throws IOException {
        Console console = Cli.console(home, new ByteArrayOutputStream(), new ByteArrayOutputStream(), StandardCharsets.UTF_8);
        Workbench bench = new Domefold(console, FacesHere.of()).bench(null);
        ConsultSaving saving = new ConsultSaving(bench);
        ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
        try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
            Effect.Opened opened = (Effect.Opened) effects.carryOut(new Effect.Open(Optional.empty()));
            Screen first = typed(effects, opened.screen(), FIRST);
            assertTrue(picture(first).contains("455 mL"), picture(first));

            Effect.Opened other = (Effect.Opened) effects.carryOut(new Effect.Open(Optional.empty()));
            holdsNothingOfHers(picture(other.screen()));
            Screen second = typed(effects, other.screen(), Walk.ORDINARY);
            holdsNothingOfHers(picture(second));
            holdsNothingOfHers(picture(second.onKey(Key.of(Key.Kind.F3)).next()));
            ConsultScreen consult = (ConsultScreen) second;
            holdsNothingOfHers(String.join("\n", consult.interview().summary()));
        }
        StartScreen start = desk.start();
        assertEquals(2, start.left().size(), "both are offered, each under its own code");
        assertTrue(start.left().stream().anyMatch(left -> left.code().equals("FIRST-A")), start.left().toString());
        Effect.Opened again = (Effect.Opened) new ConsultEffects(bench, desk, saving).carryOut(new Effect.Open(
                start.left().stream().filter(left -> left.code().equals("FIRST-A")).map(StartScreen.Left::journalId).findFirst()));
        assertTrue(picture(again.screen()).contains("FIRST-A"), "the code stands on every screen of hers");
    }

    @Test
    void eachRecordShowsItsOwnCaseOnly() {
        for (String name : List.of("ordinary", "thin-cover")) {
            assertEquals(Exit.DONE, Cli.run(home, "plan", "demo-data/" + name + ".json", "--save").exit());
        }
        String one = Cli.run(home, "records", "show", "DEMO-LAKE-1").out();
        String other = Cli.run(home, "records", "show", "DEMO-LAKE-2").out();
        assertTrue(one.contains("DEMO-LAKE-1") && !one.contains("DEMO-LAKE-2"), one);
        assertTrue(other.contains("DEMO-LAKE-2") && !other.contains("DEMO-LAKE-1"), other);
    }

    @Test
    void nothingIsChosenForHerBeforeSheIsAsked() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3);
        ConsultScreen consult = (ConsultScreen) walk.screen();
        assertEquals(List.of(), consult.interview().dossier().choices().pinned());
        assertEquals(0, consult.interview().dossier().choices().settled().size());
        for (String id : List.of("device", "lowering", "opening", "fill", "discussed", "pocket")) {
            assertEquals(Optional.empty(), consult.interview().question(id)
                    .offered(consult.interview().dossier(), consult.interview().guide()), id);
        }
    }
}
