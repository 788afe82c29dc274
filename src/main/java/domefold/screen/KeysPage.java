package domefold.screen;

import domefold.canvas.Role;
import java.util.ArrayList;
import java.util.List;

/** Every key of a consult, in one table; the F1 page and {@code docs/keys.md} are written from it. */
public final class KeysPage {
    /**
     * One key.
     *
     * @param where the room it works in, "everywhere" for all
     * @param key as a person reads it
     * @param meaning what it does
     */
    public record Row(String where, String key, String meaning) {}

    /** The table. */
    public static final List<Row> ROWS = List.of(
            new Row("everywhere", "Enter", "takes the line typed; on an empty line goes on"),
            new Row("everywhere", "Esc", "clears the line; on an empty line steps back a room; nothing is lost"),
            new Row("everywhere", "?", "on an empty line: how this reading is taken"),
            new Row("everywhere", "F1", "this page"),
            new Row("everywhere", "F2 F3", "the room before, the room after"),
            new Row("everywhere", "F4", "the working behind the limits, with sources"),
            new Row("everywhere", "Ctrl-Z Ctrl-Y", "takes the last answer back, gives it again"),
            new Row("everywhere", "if …", "tries another answer beside the consult: if base width 12.8 13"),
            new Row("everywhere", "doubt", "typed: how sure verdicts and order are, and what a second reading would buy"),
            new Row("everywhere", "pairs", "typed: pairs of devices for two sides that differ"),
            new Row("everywhere", "summary", "typed: every answer so far, those too that have moved out of the window"),
            new Row("everywhere", "PgUp PgDn", "scrolls Limits, Record, what if and every page laid over a room; Up Down by one row"),
            new Row("everywhere", "Tab", "completes a word"),
            new Row("everywhere", "Ctrl-C", "leaves; the consult is offered again at the next start"),
            new Row("everywhere", "Ctrl-L", "draws the window again"),
            new Row("Devices", "Up Down", "moves in the list"),
            new Row("Devices", "Space", "pins the device, up to four, or lets it go"),
            new Row("Devices", "F5", "list beside columns, list alone, columns alone"),
            new Row("Devices", "F6", "sorts by the next criterion"),
            new Row("Devices", "F7", "shows devices that fit, or all"),
            new Row("Devices", "F8", "lays the first pinned outline under the others"),
            new Row("Devices", "+ -", "turns the saline fill by 1 mL; , . by 5 mL; < > by 25 mL"),
            new Row("Devices", "F10", "pairs of devices for two sides that differ"),
            new Row("Devices", "PgUp PgDn", "scrolls the columns"),
            new Row("Devices", "Left Right", "looks at other pinned devices where the window holds two"),
            new Row("Devices", "F9", "what owning the pinned devices asks, for decades; or the one in focus"),
            new Row("What owning it asks", "F5 F6 F7 F8", "changes exam, share attended, schedule, years counted; F10 resets"),
            new Row("What owning it asks", "Tab Shift-Tab", "the next part, the part before; Home the first, End the last row"),
            new Row("What owning it asks", "a typed line", "`mri`, `attend 60`, `year 30`, `schedule US-2020`, `reset`"),
            new Row("What owning it asks", "Esc F9", "back to the devices"),
            new Row("Record", "sign kb, Enter", "signs the consult and saves it; your initials in place of kb"),
            new Row("Record", "d, then Enter", "saves it as a draft"));

    private KeysPage() {}

    static List<OverlayView.Line> lines() {
        List<OverlayView.Line> lines = new ArrayList<>();
        String where = "";
        for (Row row : ROWS) {
            if (!row.where().equals(where)) {
                where = row.where();
                lines.add(new OverlayView.Line(0, where.equals("everywhere") ? "Keys everywhere" : "Keys in " + where, Role.TITLE));
            }
            lines.add(new OverlayView.Line(2, domefold.canvas.TextWidth.padRight(row.key(), 16) + row.meaning(), Role.BODY));
        }
        return lines;
    }
}
