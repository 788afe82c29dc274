package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.interview.Room;
import domefold.patient.Case;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The asking rooms in the shortest windows: every question, a refused answer at each, the line being typed in sight. */
class ShortWindowTest {
    private static final String REFUSED = "abc";

    private static List<String> answers() {
        List<String> answers = new ArrayList<>(Walk.ORDINARY);
        answers.addAll(List.of("dual-plane", "gel-hpm-330 same", "target same", "typical", "all but 3"));
        return answers;
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"60, 18", "80, 18", "80, 19", "109, 18", "110, 18", "60, 24"})
    void everyQuestionAndEveryRefusalIsDrawnWithItsEntry(int columns, int rows) {
        Walk walk = Walk.consult();
        int refusals = 0;
        for (String answer : answers()) {
            ConsultScreen screen = (ConsultScreen) walk.screen();
            if (screen.shown().asks()) {
                entryInSight(screen, columns, rows);
                Screen.Step refused = screen.withEntry(EntryLine.of(REFUSED)).onKey(Key.of(Key.Kind.ENTER));
                ConsultScreen after = (ConsultScreen) refused.next();
                refusals += after.entry().isEmpty() ? 0 : 1;
                entryInSight(after, columns, rows);
            }
            if (!((ConsultScreen) walk.line(answer).screen()).shown().asks()) {
                walk.key(Key.Kind.F3).key(Key.Kind.F3);
            }
        }
        assertTrue(refusals > 25, refusals + " refusals");
    }

    private static void entryInSight(ConsultScreen screen, int columns, int rows) {
        Canvas canvas = Frame.of(screen, columns, rows, Glyphs.UNICODE);
        String where = screen.interview().current().map(q -> q.id()).orElse("none") + "\n" + canvas.picture();
        String row = canvas.picture().lines().toList().get(Math.max(0, canvas.cursorRow()));
        assertTrue(canvas.cursorRow() >= Chrome.TOP && row.startsWith((" > " + screen.entry().text()).stripTrailing()), where);
        assertEquals(3 + screen.entry().cursor(), canvas.cursorColumn(), where);
        screen.interview().current().ifPresent(q -> assertTrue(canvas.picture().contains(
                begin(q.prompt())), where));
        screen.said().stream().findFirst().ifPresent(said -> assertTrue(canvas.picture().contains(begin(said)), where));
    }

    /** The beginning of a text, as far as a narrow window shows it on one row. */
    private static String begin(String text) {
        return text.substring(0, Math.min(20, text.length()));
    }

    @Test
    void theHealthQuestionStandsInAnEightyColumnWindow() {
        Walk walk = Walk.consult().lines(Walk.ORDINARY.subList(0, 4));
        assertTrue(walk.picture(80, 18).contains("\n >"), walk.picture(80, 18));
        assertTrue(walk.picture(80, 19).contains("\n >"), walk.picture(80, 19));
    }

    @Test
    void aCaseReadFromAFileIsAskedOnInAShortWindow() throws IOException {
        Desk desk = Walk.desk();
        Case read = CaseFile.read(Path.of("demo-data/ordinary.json"), CaseRules.FORM_ONLY);
        for (Room room : Room.values()) {
            ConsultScreen screen = ConsultScreen.of(desk, Interview.begin(desk.guide(), new Dossier(read, Choices.NONE)));
            if (room.asks()) {
                ConsultScreen there = screen.with(screen.interview().goTo(room), room).withEntry(EntryLine.of(REFUSED));
                for (int columns : new int[] {60, 80, 109}) {
                    entryInSight((ConsultScreen) there.onKey(Key.of(Key.Kind.ENTER)).next(), columns, 18);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}x{1}")
    @CsvSource({"60, 18", "60, 20", "60, 21", "60, 24", "62, 24", "66, 22", "70, 24", "80, 24"})
    void noLimitLosesItsUnit(int columns, int rows) {
        for (int answered = 20; answered < Walk.ORDINARY.size(); answered++) {
            String picture = Walk.consult().lines(Walk.ORDINARY.subList(0, answered)).picture(columns, rows);
            picture.lines().filter(line -> line.matches(" (LEFT  |RIGHT) +(ceiling|fold|about|\\d).*"))
                    .forEach(line -> assertTrue(!line.contains("…"), line));
        }
    }

    @Test
    void theSecondLineHoldsWhatTheFirstHasNoRoomFor() {
        ConsultScreen screen = (ConsultScreen) Walk.consult().lines(Walk.ORDINARY.subList(0, 28)).screen();
        assertTrue(Walk.on(screen).picture(60, 24).contains("mL (270–378)  fold 8.0 cm\n"), Walk.on(screen).picture(60, 24));
        Canvas tall = new Canvas(56, 11, Glyphs.UNICODE);
        AllowsView.draw(tall, 0, 0, 56, 11, screen);
        assertTrue(tall.picture().contains("mL (270–378)\n      fold 8.0 cm  subglandular\n"), tall.picture());
        Canvas low = new Canvas(56, 3, Glyphs.UNICODE);
        AllowsView.draw(low, 0, 0, 56, 3, screen);
        assertTrue(low.picture().lines().allMatch(line -> line.matches("LEFT .*\\)|RIGHT .*\\)|fit both sides: .*")), low.picture());
    }
}
