package domefold.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.interview.Room;
import domefold.interview.Choices;
import domefold.patient.Case;
import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What frames a consult: nothing runs together, no name of a room is cut. */
class ChromeTest {
    private static final String SENTENCE = "supports your judgement, replaces none of it";

    private static ConsultScreen consult(String code, boolean practice) {
        Desk desk = new Desk(Walk.desk().guide(), LocalDate.of(2026, 4, 1), practice);
        return ConsultScreen.of(desk, Interview.begin(desk.guide(), new Dossier(Case.empty(code, desk.today()), Choices.NONE)));
    }

    private static String row(ConsultScreen screen, int columns, int row) {
        return Walk.on(screen).picture(columns, 24).lines().toList().get(row);
    }

    @Test
    void theSentenceStandsApartOrNotAtAll() {
        for (int length = 1; length <= 40; length++) {
            for (int columns = 60; columns <= 120; columns++) {
                String header = row(consult("k".repeat(length), false), columns, 0);
                assertTrue(header.endsWith("   " + SENTENCE) || header.endsWith("   1 April 2026") && columns <= 27 + length + 3 + SENTENCE.length() ||  columns < 28 + length, header);
            }
        }
    }

    @Test
    void practiceIsSaidInEveryWindow() {
        for (int columns = 60; columns <= 120; columns++) {
            String header = row(consult("20260042-9", true), columns, 0);
            assertTrue(header.contains("   PRACTICE: an invented patient"), header);
        }
    }

    @Test
    void noRoomIsCut() {
        for (Room room : Room.values()) {
            for (int columns = 60; columns <= 74; columns++) {
                ConsultScreen at = consult("20260042-9", false);
                String bar = row(at.with(at.interview(), room), columns, 1).strip().replace("▸", " ").strip();
                String[] found = bar.split(" +");
                for (int i = 0; i < found.length; i++) {
                    boolean last = i == found.length - 1;
                    assertTrue(found[i].equals(Room.values()[i].title()) || last && found[i].equals("…"), bar);
                }
                assertEquals(Room.values().length, found.length, bar + " " + Arrays.toString(found));
            }
        }
    }
}
