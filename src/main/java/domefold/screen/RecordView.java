package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.interview.Room;
import java.util.ArrayList;
import java.util.List;

/** The summary as it will be saved, and the line that signs it off. */
final class RecordView {
    private RecordView() {}

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        int width = Math.min(canvas.columns() - 2, 100);
        List<OverlayView.Line> lines = Wrapped.of(canvas, page(screen), width);
        int body = height - 2;
        int from = screen.scroll().row(lines.size() - body);
        for (int i = 0; i < body && from + i < lines.size(); i++) {
            canvas.textWithin(1 + lines.get(from + i).indent(), row + i, width, lines.get(from + i).text(), lines.get(from + i).role());
        }
        if (lines.size() > body) {
            canvas.textRight(canvas.columns() - 1, row + height - 1, "rows " + (from + 1) + "–" + (from + body) + " of "
                    + lines.size() + ", PgDn", Role.FAINT);
        }
        canvas.textWithin(1, row + height - 2, canvas.columns() - 2, RecordKeys.prompt(screen), Role.QUESTION);
        RoomViews.entry(canvas, row + height - 1, screen);
    }

    private static List<OverlayView.Line> page(ConsultScreen screen) {
        List<OverlayView.Line> lines = new ArrayList<>(SettledPage.lines(screen.interview()));
        int settled = lines.size();
        for (Room room : Room.values()) {
            if (!screen.interview().openIn(room).isEmpty()) {
                lines.add(new OverlayView.Line(0, "Open in " + room.title() + ": " + String.join(", ",
                        screen.interview().openIn(room).stream().map(q -> q.prompt().split("[:(]")[0].strip()).toList()), Role.CAUTION));
            }
        }
        if (lines.size() > settled) {
            lines.add(settled, new OverlayView.Line(0, "", Role.BODY));
        }
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        lines.add(new OverlayView.Line(0, "Answers", Role.TITLE));
        screen.interview().summary().forEach(text -> lines.add(new OverlayView.Line(2, text, Role.BODY)));
        return lines;
    }
}
