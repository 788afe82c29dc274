package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.practice.exercise.Exercise;
import domefold.practice.exercise.Page;
import domefold.practice.exercise.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pages of an exercise before it is marked. */
final class ExerciseView {
    private static final int WIDE = 110;
    private static final int WIDEST_TEXT = 76;
    private static final int WIDEST_LABEL = 24;
    private static final int LEAST_READING_ROWS = 6;

    private ExerciseView() {}

    static void help(Canvas canvas, int row, int height, PracticeScreen screen) {
        List<OverlayView.Line> lines = new ArrayList<>();
        screen.exercise().current().ifPresent(one -> {
            lines.add(new OverlayView.Line(0, one.prompt(), Role.TITLE));
            lines.add(new OverlayView.Line(0, one.expects(), Role.FAINT));
            lines.add(new OverlayView.Line(0, "", Role.BODY));
        });
        screen.exercise().help().forEach(text -> lines.add(new OverlayView.Line(0, text, Role.BODY)));
        if (screen.exercise().page() == Page.MARKING) {
            MarkingView.HELP.forEach(text -> lines.add(new OverlayView.Line(0, text, Role.BODY)));
        }
        PracticeChrome.lines(canvas, 2, row, Math.min(WIDEST_TEXT, canvas.columns() - 4), height, lines, screen.scroll());
    }

    static void draw(Canvas canvas, int row, int height, PracticeScreen screen) {
        switch (screen.exercise().page()) {
            case HISTORY -> history(canvas, row, height, screen);
            case PLAN -> plan(canvas, row, height, screen);
            default -> reading(canvas, row, height, screen);
        }
    }

    private static void history(Canvas canvas, int row, int height, PracticeScreen screen) {
        List<OverlayView.Line> lines = new ArrayList<>();
        lines.add(new OverlayView.Line(0, "Her history", Role.LABEL));
        lines.add(new OverlayView.Line(2, screen.exercise().practice().history(), Role.BODY));
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        lines.add(new OverlayView.Line(0, "Her wish", Role.LABEL));
        lines.add(new OverlayView.Line(2, screen.exercise().practice().wish(), Role.BODY));
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        lines.add(new OverlayView.Line(0, "Take the readings you need, then state your own plan. The limits and the devices open"
                + " once it is handed in.", Role.FAINT));
        List<String> now = canvas.wrap("Enter takes the frame's readings, `ask upper pinch` one, `state` to your plan.", canvas.columns() - 2);
        int after = PracticeChrome.lines(canvas, 1, row, Math.min(WIDEST_TEXT, canvas.columns() - 2), height - 3 - now.size(), lines, screen.scroll());
        asked(canvas, 1, after + 1, canvas.columns() - 2, screen, now);
    }

    private static void reading(Canvas canvas, int row, int height, PracticeScreen screen) {
        Exercise exercise = screen.exercise();
        Page page = exercise.page();
        var readings = exercise.readings(page);
        List<String> now = canvas.wrap("Enter goes on, `ask upper pinch` takes one reading, `state` goes to your plan.", canvas.columns() - 2);
        int at = row;
        if (readings.isEmpty()) {
            canvas.text(1, at, "Nothing is taken here yet: `ask " + page.title().toLowerCase(java.util.Locale.ROOT)
                    + "` takes this page's readings.", Role.FAINT);
            at += 1;
        } else {
            at = ReadingsTable.draw(canvas, 1, row, Math.min(WIDEST_TEXT, canvas.columns() - 2), height - 2 - now.size(), readings, screen.scroll());
        }
        asked(canvas, 1, at + 1, canvas.columns() - 2, screen, now);
    }

    /** What to do now, the line being typed and what was said last. */
    private static void asked(Canvas canvas, int column, int row, int width, PracticeScreen screen, List<String> now) {
        for (int i = 0; i < now.size(); i++) {
            canvas.text(column, row + i, now.get(i), Role.QUESTION);
        }
        screen.entry().draw(canvas, column, row + now.size(), width);
        said(canvas, column, row + now.size() + 1, width, 2, screen);
    }

    private static void said(Canvas canvas, int column, int row, int width, int rows, PracticeScreen screen) {
        List<String> lines = screen.said().stream().flatMap(text -> TextWidth.wrap(text, width).stream()).toList();
        for (int i = 0; i < Math.min(rows, lines.size()); i++) {
            canvas.textWithin(column, row + i, width, lines.get(i), screen.saidRole());
        }
    }

    private static void plan(Canvas canvas, int row, int height, PracticeScreen screen) {
        var readings = screen.exercise().readings();
        if (canvas.columns() >= WIDE) {
            int left = Math.max(60, canvas.columns() * 9 / 20);
            statements(canvas, 1, row, left - 3, height, screen);
            for (int i = 0; i < height; i++) {
                canvas.put(left, row + i, canvas.glyphs().vertical(), Role.FAINT);
            }
            if (!readings.isEmpty()) {
                ReadingsTable.draw(canvas, left + 2, row, Math.min(WIDEST_TEXT, canvas.columns() - left - 3), height, readings, screen.scroll());
            }
            return;
        }
        int below = Math.min(height / 2, Math.max(LEAST_READING_ROWS, (readings.size() + 1) / 2 + 1));
        int above = height - below - 1;
        statements(canvas, 1, row, canvas.columns() - 2, above, screen);
        canvas.fill(1, row + above, canvas.columns() - 2, canvas.glyphs().horizontal(), Role.FAINT);
        ReadingsTable.compact(canvas, 1, row + above + 1, canvas.columns() - 2, below, readings, screen.scroll());
    }

    /** One line of what was stated; the label stands on the first of several. */
    private record Past(String label, String text) {}

    private static List<Past> past(Exercise exercise, int width) {
        List<Past> past = new ArrayList<>();
        exercise.answers().forEach((label, answer) -> {
            List<String> parts = TextWidth.wrap(answer.replace("   RIGHT", TextWidth.of(answer) > width ? "\nRIGHT" : "   RIGHT"), width);
            for (int i = 0; i < parts.size(); i++) {
                past.add(new Past(i == 0 ? label : "", parts.get(i)));
            }
        });
        return past;
    }

    private static void statements(Canvas canvas, int column, int row, int width, int height, PracticeScreen screen) {
        Exercise exercise = screen.exercise();
        List<String> said = screen.said().stream().flatMap(text -> TextWidth.wrap(text, width).stream()).toList();
        int saidRows = Math.min(said.size(), 3);
        Optional<Statement> current = exercise.current();
        List<String> expected = canvas.wrap(current.map(one -> one.expects() + (one.required() ? "" : ", or skip"))
                .orElse("`go fold` changes a statement, `back` the last one"), width);
        int asked = 2 + expected.size();
        int room = height - asked - saidRows;
        int label = Math.min(WIDEST_LABEL, width * 2 / 5);
        List<Past> past = past(exercise, width - label - 1);
        int from = Math.max(0, past.size() - Math.max(0, room - 1));
        int at = row;
        for (Past one : past.subList(from, past.size())) {
            canvas.textWithin(column, at, label, one.label(), Role.LABEL);
            canvas.textWithin(column + label + 1, at++, width - label - 1, one.text(),
                    one.text().equals(Exercise.SKIPPED) ? Role.FAINT : Role.ANSWER);
        }
        at += past.isEmpty() ? 0 : 1;
        canvas.textWithin(column, at, width, current.map(Statement::prompt)
                .orElse("Everything is stated: `commit` hands the plan in."), Role.QUESTION);
        for (int i = 0; i < expected.size(); i++) {
            canvas.text(column, at + 1 + i, expected.get(i), Role.FAINT);
        }
        screen.entry().draw(canvas, column, at + 1 + expected.size(), width);
        for (int i = 0; i < saidRows; i++) {
            canvas.textWithin(column, at + asked + i, width, said.get(i), screen.saidRole());
        }
    }
}
