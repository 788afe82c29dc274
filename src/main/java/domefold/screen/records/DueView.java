package domefold.screen.records;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.records.DueList;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Draws a month with a count on each day something falls on, and who is due. */
final class DueView {
    private static final DateTimeFormatter TITLE = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");
    private static final int CELL = 10;
    private static final int CALENDAR_WIDTH = CELL * 7;
    private static final int WIDE = CALENDAR_WIDTH + 74;
    private static final int CASE = 17;
    private static final int HOW = 17;
    private static final int WINDOW = 26;

    private DueView() {}

    static void draw(Canvas canvas, DueScreen screen) {
        canvas.text(1, 0, "Due for imaging", Role.TITLE);
        canvas.textRight(canvas.columns() - 1, 0, TITLE.format(screen.month()), Role.LABEL);
        int weeks = calendar(canvas, 2, screen);
        String counts = counts(screen.due());
        canvas.textWithin(1, 3 + weeks, Math.min(canvas.columns() - 2, CALENDAR_WIDTH), counts, Role.FAINT);
        boolean beside = canvas.columns() >= WIDE;
        int column = beside ? CALENDAR_WIDTH + 3 : 1;
        int top = beside ? 2 : 5 + weeks;
        int width = canvas.columns() - column - 1;
        list(canvas, column, top, width, canvas.rows() - top - 4, screen);
        reason(canvas, column, canvas.rows() - 4, width, screen);
    }

    /** Gives the rows of weeks drawn under the names of the days. */
    private static int calendar(Canvas canvas, int row, DueScreen screen) {
        for (int i = 0; i < DAYS.size(); i++) {
            canvas.text(1 + i * CELL, row, DAYS.get(i), Role.LABEL);
        }
        Map<LocalDate, Integer> counts = countsByDay(screen.due(), screen.month());
        Optional<LocalDate> focus = screen.focus().flatMap(one -> day(one, screen.month()));
        LocalDate first = screen.month().atDay(1);
        int offset = first.getDayOfWeek().getValue() - 1;
        int days = screen.month().lengthOfMonth();
        for (int day = 1; day <= days; day++) {
            LocalDate date = screen.month().atDay(day);
            int cell = offset + day - 1;
            int column = 1 + cell % 7 * CELL;
            int at = row + 1 + cell / 7;
            boolean today = date.equals(screen.records().today());
            int after = canvas.text(column, at, String.format(Locale.ROOT, "%2d", day), today ? Role.QUESTION : Role.FAINT);
            if (counts.containsKey(date)) {
                canvas.text(after + 1, at, counts.get(date) + " due", Role.ANSWER);
            }
            if (focus.isPresent() && focus.get().equals(date)) {
                canvas.paint(column, at, CELL - 2, Role.SELECTED);
            }
        }
        return 1 + (offset + days + 6) / 7;
    }

    private static Map<LocalDate, Integer> countsByDay(List<DueList.Due> due, YearMonth month) {
        Map<LocalDate, Integer> counts = new TreeMap<>();
        due.forEach(one -> day(one, month).ifPresent(day -> counts.merge(day, 1, Integer::sum)));
        return counts;
    }

    /** The day of the month it falls on: the day booked, else the last day, else the first; none where all lie elsewhere. */
    private static Optional<LocalDate> day(DueList.Due one, YearMonth month) {
        List<LocalDate> days = new ArrayList<>();
        one.booked().ifPresent(days::add);
        days.add(one.lastDay());
        days.add(one.firstDay());
        return days.stream().filter(day -> YearMonth.from(day).equals(month)).findFirst();
    }

    private static String counts(List<DueList.Due> due) {
        if (due.isEmpty()) {
            return "Nobody is due this month.";
        }
        Map<DueList.How, Long> by = due.stream().collect(Collectors.groupingBy(DueList.Due::how, TreeMap::new, Collectors.counting()));
        return by.entrySet().stream().map(entry -> entry.getValue() + " " + entry.getKey().words())
                .collect(Collectors.joining(" · "));
    }

    private static void list(Canvas canvas, int column, int row, int width, int height, DueScreen screen) {
        cells(canvas, column, row, width, List.of("case", "how", "from / to", "booked"), Role.LABEL);
        int room = height - 1;
        int from = Math.max(0, Math.min(screen.cursor() - room / 2, screen.due().size() - room));
        for (int i = 0; i < room && from + i < screen.due().size(); i++) {
            DueList.Due one = screen.due().get(from + i);
            cells(canvas, column, row + 1 + i, width, List.of(one.header().id(), one.how().words(), one.firstDay() + " "
                    + canvas.glyphs().dash() + " " + one.lastDay(), one.booked().map(LocalDate::toString).orElse("")),
                    one.how() == DueList.How.OVERDUE ? Role.CAUTION : Role.BODY);
            if (from + i == screen.cursor()) {
                canvas.paint(column, row + 1 + i, width, Role.SELECTED);
                canvas.put(column - 1, row + 1 + i, canvas.glyphs().pointer(), Role.LABEL);
            }
        }
    }

    private static void cells(Canvas canvas, int column, int row, int width, List<String> cells, Role role) {
        int[] widths = {CASE, HOW, WINDOW, width - CASE - HOW - WINDOW};
        int at = column;
        for (int i = 0; i < widths.length; i++) {
            canvas.textWithin(at, row, Math.max(0, widths[i] - 1), cells.get(i), role);
            at += widths[i];
        }
    }

    private static void reason(Canvas canvas, int column, int row, int width, DueScreen screen) {
        if (screen.focus().isEmpty()) {
            return;
        }
        int at = row;
        for (String line : canvas.wrap(screen.focus().get().header().id() + ": " + screen.focus().get().reason(), width)) {
            if (at < canvas.rows() - 1) {
                canvas.text(column, at++, line, Role.FAINT);
            }
        }
    }
}
