package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.practice.exercise.Taken;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Readings, LEFT and RIGHT side by side; a star marks what a surface scan read. */
final class ReadingsTable {
    private static final int SIDE = 10;
    private static final int WIDEST_NAME = 30;

    private ReadingsTable() {}

    /** Returns the row after the last. */
    static int draw(Canvas canvas, int column, int row, int width, int height, List<Taken> readings, Scrolled scroll) {
        int name = Math.min(WIDEST_NAME, width - 2 * SIDE - 6);
        canvas.text(column + name, row, TextWidth.padLeft("LEFT", SIDE) + TextWidth.padLeft("RIGHT", SIDE), Role.LABEL);
        boolean scanned = readings.stream().anyMatch(ReadingsTable::scanned);
        int room = height - 1 - (scanned ? 1 : 0);
        int from = scroll.row(readings.size() - room);
        int more = readings.size() - room - from;
        if (readings.size() > room) {
            canvas.textWithin(column, row, name, more > 0 ? "PgDn: " + more + " more" : "PgUp: " + from + " more", Role.FAINT);
        }
        int at = row + 1;
        for (Taken one : readings.subList(from, Math.min(readings.size(), from + room))) {
            canvas.textWithin(column, at, name, one.name(), Role.LABEL);
            if (one.right().isPresent()) {
                canvas.text(column + name, at, figure(one.left()) + figure(one.right().get()), Role.BODY);
            } else {
                canvas.text(column + name + SIDE / 2, at, figure(one.left()), Role.BODY);
            }
            canvas.text(column + name + 2 * SIDE + 1, at++, one.unit(), Role.FAINT);
        }
        if (scanned) {
            canvas.text(column, at++, "* read by surface scan, the others by hand", Role.FAINT);
        }
        return at;
    }

    /** The figure with its last digit in one column, a star behind it. */
    private static String figure(Taken.Value value) {
        return TextWidth.padLeft(value.figure() + (value.scanned() ? "*" : " "), SIDE);
    }

    private static boolean scanned(Taken one) {
        return one.left().scanned() || one.right().map(Taken.Value::scanned).orElse(false);
    }

    /** Two readings a row, LEFT / RIGHT; those of the whole patient come last. */
    static void compact(Canvas canvas, int column, int row, int width, int height, List<Taken> taken, Scrolled scroll) {
        List<Taken> readings = Stream.concat(taken.stream().filter(one -> one.right().isPresent()),
                taken.stream().filter(one -> one.right().isEmpty())).toList();
        if (readings.isEmpty()) {
            canvas.text(column, row, "No reading is taken yet: `ask base width`, or F2 and Enter.", Role.FAINT);
            return;
        }
        int each = width / 2;
        int lines = (readings.size() + 1) / 2;
        int room = height - 1;
        int from = scroll.row(lines - room);
        String star = readings.stream().anyMatch(ReadingsTable::scanned) ? ", * by scan" : "";
        canvas.text(column, row, "Readings, LEFT / RIGHT, cm unless said" + star, Role.FAINT);
        if (lines > room) {
            canvas.textRight(column + width, row, "PgDn: " + Math.max(0, lines - room - from) + " more", Role.FAINT);
        }
        for (int i = 0; i < Math.min(room, lines - from); i++) {
            for (int half = 0; half < 2; half++) {
                int index = from + i + half * lines;
                if (index < readings.size()) {
                    pair(canvas, column + half * each, row + 1 + i, each - 1, readings.get(index));
                }
            }
        }
    }

    private static void pair(Canvas canvas, int column, int row, int width, Taken one) {
        Optional<String> right = one.right().map(Taken.Value::starred);
        String values = one.left().starred() + right.map(text -> " / " + text).orElse("") + (one.unit().equals("cm") || one.unit().isEmpty() ? "" : " " + one.unit());
        canvas.textWithin(column, row, width - TextWidth.of(values) - 1, one.name(), Role.LABEL);
        canvas.textRight(column + width, row, values, Role.BODY);
    }
}
