package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import domefold.practice.Decision;
import domefold.practice.Progress;
import domefold.practice.Standing;
import domefold.screen.Effect;
import domefold.screen.PracticeScreen;
import domefold.screen.StartScreen;
import domefold.store.CaseFile;
import domefold.store.EvidenceFiles;
import domefold.store.ProgressFile;
import domefold.terminal.TmuxSession;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PractiseCommandTest {
    @TempDir
    Path home;

    private static Progress.Entry entry() {
        return new Progress.Entry(LocalDate.of(2026, 3, 4), 7, 2, List.of(new Progress.Line(Decision.POCKET,
                Optional.of(domefold.patient.Side.LEFT), Optional.empty(), Standing.INSIDE, 2, 1)));
    }

    @Test
    void theTrainingLogIsWrittenAsCsvAndSaysOfEveryLineThatItIsPractice() throws IOException {
        new ProgressFile(home.resolve("practice")).add(entry());
        Path log = home.resolve("log.csv");
        Cli run = Cli.run(home, "practise", "--log", log.toString());
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains("1 case"), run.out());
        assertEquals("kind,session,date,case,level,decision,side,warning,standing,weight,credit\r\n"
                + "practice,1,2026-03-04,7,2,pocket,left,,inside,2,1\r\n", Files.readString(log));
    }

    @Test
    void whatDoesNotGoTogetherIsWrongUsage() throws IOException {
        assertEquals(Exit.WRONG_USAGE, Cli.run(home, "practise", "--log", "x.csv", "--draw", "3").exit());
        assertEquals(Exit.WRONG_USAGE, Cli.run(home, "practise", "--cases", home.toString(), "--level", "2").exit());
        assertEquals(Exit.WORLD_FAILED, Cli.run(home, "practise", "--cases", home.resolve("nowhere").toString(), "--draw", "1",
                "--as", "json").exit());
    }

    @Test
    void withoutATerminalItGoesLineByLine() throws IOException {
        Cli noTerminal = Cli.run(home, "practise", "--draw", "3");
        assertEquals(Exit.DONE, noTerminal.exit());
        assertTrue(noTerminal.out().startsWith("PRACTICE"), noTerminal.out());
    }

    @Test
    void aTutorsOwnFolderGivesCaseAndReferenceMarking() throws IOException {
        Path folder = Files.createDirectory(home.resolve("own"));
        assertEquals(Exit.REFUSED, Cli.run(home, "practise", "--cases", folder.toString(), "--draw", "1", "--as", "json").exit());
        CaseFile.write(folder.resolve("one.json"), domefold.practice.PatientDraw.of(5, 2, EvidenceFiles.shipped()).of());
        Cli run = Cli.run(home, "practise", "--cases", folder.toString(), "--draw", "1", "--as", "json");
        assertEquals(Exit.DONE, run.exit(), run.err());
        JsonNode sheet = new ObjectMapper().readTree(run.out());
        assertTrue(sheet.get("practice").asBoolean());
        assertTrue(sheet.get("marking").size() > 0);
        assertEquals(Exit.WRONG_USAGE, Cli.run(home, "practise", "--cases", folder.toString(), "--draw", "2", "--as", "json").exit());
    }

    @Test
    void aPracticeCaseCannotBecomeARecord() throws IOException {
        Path file = home.resolve("drawn.json");
        CaseFile.write(file, domefold.practice.PatientDraw.of(7, 2, EvidenceFiles.shipped()).of());
        Cli run = Cli.run(home, "consult", file.toString(), "--line");
        assertEquals(Exit.REFUSED, run.exit());
        assertTrue(run.err().contains("nothing of practice is saved as a record, ordered, exported or put in a calendar"), run.err());
        assertEquals(1, run.err().lines().count());
        assertFalse(Files.exists(home.resolve("records")));
    }

    @Test
    void practiceOpensFromTheStartScreenKeepsItsProgressApartAndLeadsBack() throws IOException {
        Domefold root = new Domefold(Cli.console(home, new ByteArrayOutputStream(), new ByteArrayOutputStream(),
                StandardCharsets.UTF_8), FacesHere.of());
        Workbench bench = root.bench(null);
        ConsultSaving saving = new ConsultSaving(bench);
        ConsultDesk desk = new ConsultDesk(bench, saving.offeredCode());
        try (ConsultEffects effects = new ConsultEffects(bench, desk, saving)) {
            Effect.Opened opened = (Effect.Opened) effects.carryOut(new Effect.Visit("practise"));
            assertTrue(opened.screen() instanceof PracticeScreen);
            assertTrue(effects.carryOut(new Effect.Practised(entry())) instanceof Effect.Done);
            PracticeScreen again = (PracticeScreen) ((Effect.Opened) effects.carryOut(new Effect.Visit("practise"))).screen();
            assertEquals(List.of(entry()), again.desk().log().progress().entries());
            Effect.Outcome saved = effects.carryOut(new Effect.Save(desk.begin(Optional.of(
                    domefold.practice.PatientDraw.of(7, 2, bench.evidence()).of())), false, "kb"));
            assertTrue(saved instanceof Effect.Failed failed && failed.text().contains("is the code of a practice case"), saved.toString());
            assertTrue(((Effect.Opened) effects.carryOut(new Effect.Visit("start"))).screen() instanceof StartScreen);
        }
        assertTrue(Files.exists(home.resolve("practice/progress.jsonl")));
        assertFalse(Files.exists(home.resolve("records")));
    }

    @Test
    @Tag("terminal")
    void oneExerciseFromStartToMarkingInARealTerminal() throws IOException {
        try (TmuxSession tmux = TmuxSession.open(100, 30, Map.of("DOMEFOLD_HOME", home.toString()))) {
            tmux.run("domefold.app.Main", "practise", "--level", "2", "--draw", "2");
            tmux.await("Her history");
            tmux.keys("Enter");
            tmux.await("base width");
            line(tmux, "state", "Would you operate now?");
            line(tmux, "yes", "Width ceiling");
            line(tmux, "11.5 same", "LEFT RIGHT in mL");
            line(tmux, "330 same", "submuscular");
            line(tmux, "dual-plane", "LEFT RIGHT: keep or cm");
            line(tmux, "keep same", "saline, gel");
            line(tmux, "gel", "extra-full");
            line(tmux, "full", "a code, or words");
            line(tmux, "smooth 330", "periareolar");
            line(tmux, "inframammary", "Through a funnel?");
            line(tmux, "yes", "Opening");
            line(tmux, "3.5", "issuer's schedule");
            line(tmux, "US-2020", "What would you warn of?");
            line(tmux, "uneven sides", "Your reason");
            line(tmux, "it fits her base", "Everything is stated");
            line(tmux, "commit", "points,");
            line(tmux, "devices", "back to the marking");
            tmux.keys("Escape");
            tmux.await("points,");
            tmux.keys("Escape");
            tmux.await("New consult");
            tmux.keys("Escape");
            tmux.awaitPrompt();
        }
        assertEquals(1, new ProgressFile(home.resolve("practice")).read().progress().entries().size());
    }

    private static void line(TmuxSession tmux, String typed, String shows) throws IOException {
        tmux.type(typed);
        tmux.keys("Enter");
        tmux.await(shows);
    }
}
