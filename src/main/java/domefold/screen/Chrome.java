package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.interview.Interview;
import domefold.interview.Room;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** What frames every consult screen: whose consult, which room, the sentence about the device list. */
final class Chrome {
    /** First row of a screen's own drawing. */
    static final int TOP = 3;
    /** Rows below a screen's own drawing: the list sentence and the hints. */
    static final int BOTTOM = 2;

    private static final int APART = 3;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private Chrome() {}

    /** The row of the entry line in rooms that show more than they ask. */
    static int entryRow(Canvas canvas) {
        return canvas.rows() - BOTTOM - 1;
    }

    static void draw(Canvas canvas, Desk desk, Interview interview, Room shown) {
        int at = canvas.text(1, 0, "Domefold", Role.TITLE);
        String code = interview.dossier().patientCase().code();
        at = canvas.text(at + APART, 0, code.isBlank() ? "new consult" : code, Role.LABEL);
        String day = DAY.format(interview.dossier().patientCase().date());
        String aside = desk.practice() ? "PRACTICE: an invented patient" : "supports your judgement, replaces none of it";
        int room = canvas.columns() - 1 - aside.length() - APART;
        if (!desk.practice() || at + APART + day.length() <= room) {
            at = canvas.text(at + APART, 0, day, Role.FAINT);
        }
        if (desk.practice() || at <= room) {
            canvas.textRight(canvas.columns() - 1, 0, aside, desk.practice() ? Role.BANNER : Role.FAINT);
        }
        rooms(canvas, interview, shown);
        canvas.fill(0, 2, canvas.columns(), canvas.glyphs().horizontal(), Role.FAINT);
        canvas.textWithin(1, canvas.rows() - BOTTOM, canvas.columns() - 2, desk.list().sentence(canvas.columns() - 2),
                desk.guide().catalogue().invented() ? Role.BANNER : Role.FAINT);
    }

    private static void rooms(Canvas canvas, Interview interview, Room shown) {
        int gap = canvas.columns() >= 100 ? 3 : canvas.columns() >= 72 ? 1 : 0;
        int at = canvas.columns() >= 62 ? 1 : shown == Room.WHO ? 0 : -1;
        for (Room room : Room.values()) {
            boolean here = room == shown;
            boolean done = room.asks() && interview.openIn(room).isEmpty();
            canvas.text(at, 1, here ? String.valueOf(canvas.glyphs().pointer()) : " ", Role.LABEL);
            boolean whole = at + 1 + room.title().length() <= canvas.columns();
            String title = whole ? room.title() : String.valueOf(canvas.glyphs().ellipsis());
            at = canvas.text(at + 1, 1, title, here ? Role.SELECTED : done ? Role.BODY : Role.FAINT) + gap;
        }
    }
}
