package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.interview.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which view belongs to which room, and which hints. */
final class RoomViews {
    private static final int WIDE = 110;
    /** Rows the conversation has in a short window before what stands below it gets more than its fewest. */
    private static final int ROWS_TO_ASK = 9;
    private static final int MOST_SETTLED_ROWS = 9;
    /** Cells kept for the count of rows where it is drawn after the entry line. */
    private static final int COUNT = 26;

    private RoomViews() {}

    static Optional<Room> named(String title) {
        for (Room room : Room.values()) {
            if (room.title().equals(title)) {
                return Optional.of(room);
            }
        }
        return Optional.empty();
    }

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        switch (screen.shown()) {
            case LIMITS -> LimitsView.draw(canvas, row, height, screen);
            case DEVICES -> DevicesView.draw(canvas, row, height, screen);
            case RECORD -> RecordView.draw(canvas, row, height, screen);
            default -> asking(canvas, row, height, screen);
        }
    }

    private static void asking(Canvas canvas, int row, int height, ConsultScreen screen) {
        ConsultScreen previewed = Preview.of(screen);
        boolean settling = screen.shown() == Room.SETTLE;
        if (canvas.columns() >= WIDE) {
            int left = Math.max(50, canvas.columns() * 2 / 5);
            ConversationView.draw(canvas, 1, row, left - 3, height, screen.interview(), screen.entry(), screen.said(), screen.saidRole());
            for (int i = 0; i < height; i++) {
                canvas.put(left, row + i, canvas.glyphs().vertical(), Role.FAINT);
            }
            beside(canvas, left + 2, row, canvas.columns() - left - 3, height, previewed, settling);
            asTyped(canvas, row, screen, previewed);
        } else {
            int wanted = settling ? Math.min(height / 2, MOST_SETTLED_ROWS) : AllowsView.COMPACT_ROWS;
            int below = Math.min(wanted, Math.max(AllowsView.FEWEST_ROWS, height - 1 - ROWS_TO_ASK));
            int above = height - below - 1;
            ConversationView.draw(canvas, 1, row, canvas.columns() - 2, above, screen.interview(), screen.entry(), screen.said(), screen.saidRole());
            canvas.fill(1, row + above, canvas.columns() - 2, canvas.glyphs().horizontal(), Role.FAINT);
            beside(canvas, 1, row + above + 1, canvas.columns() - 2, below, previewed, settling);
            asTyped(canvas, row + above, screen, previewed);
        }
    }

    /** Says that the rulers show a reading that is typed and not yet taken. */
    private static void asTyped(Canvas canvas, int row, ConsultScreen screen, ConsultScreen previewed) {
        if (previewed != screen) {
            canvas.textRight(canvas.columns() - 1, row, " with " + screen.entry().text().strip() + " as typed", Role.FAINT);
        }
    }

    private static void beside(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen, boolean settling) {
        if (screen.shown() == Room.SIDES && screen.interview().plan().isPresent()) {
            SidesView.draw(canvas, column, row, width, height, screen);
        } else if (settling) {
            SettleView.draw(canvas, column, row, width, height, screen);
        } else {
            AllowsView.draw(canvas, column, row, width, height, screen);
        }
    }

    /** The entry line of a room that shows more than it asks, before the count of rows, with what was said last beside it. */
    static void entry(Canvas canvas, int row, ConsultScreen screen) {
        int edge = screen.whatIf().isPresent() ? canvas.columns() - COUNT : blankFrom(canvas, row);
        screen.entry().draw(canvas, 1, row, edge - 2);
        said(canvas, row, edge, screen);
    }

    /** The first cell of what already stands at the right of a row, or the row's end. */
    private static int blankFrom(Canvas canvas, int row) {
        int column = 1;
        while (column < canvas.columns() && canvas.codePointAt(column, row) == ' ') {
            column++;
        }
        return column;
    }

    /** Beside the entry line where there is room for it, else on the rows above. */
    private static void said(Canvas canvas, int row, int edge, ConsultScreen screen) {
        if (screen.said().isEmpty()) {
            return;
        }
        String text = String.join(" ", screen.said());
        int after = 3 + canvas.width(screen.entry().text()) + (screen.entry().isEmpty() ? 1 : 3);
        int end = screen.whatIf().isPresent() ? edge : canvas.columns();
        if (canvas.width(text) <= end - after - 1) {
            canvas.fill(after, row, canvas.columns() - after, ' ', Role.BODY);
            canvas.text(after, row, text, screen.saidRole());
            return;
        }
        List<String> lines = canvas.wrap(text, canvas.columns() - 2);
        for (int i = 0; i < lines.size(); i++) {
            int above = row - lines.size() + i;
            canvas.fill(0, above, canvas.columns(), ' ', Role.BODY);
            canvas.text(1, above, lines.get(i), screen.saidRole());
        }
    }

    static List<Screen.Hint> hints(ConsultScreen screen) {
        if (screen.whatIf().isPresent()) {
            return WhatIfKeys.hints();
        }
        List<Screen.Hint> hints = new ArrayList<>();
        // A line that was refused is kept for mending; who would rather begin again has to see how.
        Screen.Hint escape = new Screen.Hint("Esc", screen.entry().isEmpty() ? "back" : "clears");
        switch (screen.shown()) {
            case LIMITS -> hints.add(new Screen.Hint("Enter", "to the devices"));
            case DEVICES -> {
                hints.add(new Screen.Hint("Space", "pins"));
                hints.add(new Screen.Hint("F5", "view"));
                hints.add(new Screen.Hint("F6", "sort"));
                hints.add(new Screen.Hint("F7", screen.devices().fittingOnly() ? "all" : "fitting"));
                hints.add(new Screen.Hint("F9", "owning"));
                hints.add(new Screen.Hint("Enter", "settle"));
                hints.add(new Screen.Hint("PgDn", "scrolls"));
                hints.add(new Screen.Hint("F10", "pairs"));
            }
            case RECORD -> {
                if (!screen.signed()) {
                    hints.add(new Screen.Hint("sign kb Enter", "signs"));
                    hints.add(new Screen.Hint("d Enter", "saves a draft"));
                }
                hints.add(new Screen.Hint("Up Down", "scroll"));
            }
            default -> {
                hints.add(new Screen.Hint("Enter", "takes it"));
                hints.add(screen.entry().isEmpty() ? new Screen.Hint("?", "how") : escape);
            }
        }
        hints.add(new Screen.Hint("F2 F3", "rooms"));
        hints.add(new Screen.Hint("F4", "why"));
        hints.add(new Screen.Hint("Ctrl-Z", "undo"));
        hints.add(new Screen.Hint("F1", "keys"));
        if (!hints.contains(escape)) {
            hints.add(escape);
        }
        hints.add(new Screen.Hint("Ctrl-C", "leaves"));
        return hints;
    }
}
