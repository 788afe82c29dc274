package domefold.report;

import domefold.device.Fill;
import domefold.followup.schedule.ScheduleAnswer;
import domefold.outcome.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Exam dates of a schedule, to read. */
public final class ScheduleText {
    private static final int[] WIDTHS = {6, 12, 12};

    private ScheduleText() {}

    public static String of(ScheduleAnswer answer, Fill fill, LocalDate from, int years) {
        Page page = new Page();
        page.line("Schedule " + answer.id() + ", " + fill.key() + ", operation " + from + ", "
                + Numbers.count(years, "year", "years") + " ahead");
        page.blank().paragraph(0, answer.text());
        if (!answer.densest().isEmpty() || !answer.sparsest().isEmpty()) {
            page.blank().row(WIDTHS, List.of("exam", "earliest", "latest"));
            for (int i = 0; i < Math.max(answer.densest().size(), answer.sparsest().size()); i++) {
                List<String> cells = new ArrayList<>(List.of(String.valueOf(i + 1)));
                cells.add(i < answer.densest().size() ? answer.densest().get(i).toString() : Numbers.NONE);
                cells.add(i < answer.sparsest().size() ? answer.sparsest().get(i).toString() : Numbers.NONE);
                page.row(WIDTHS, cells);
            }
        }
        page.blank().paragraph(0, answer.symptom());
        page.paragraph(0, answer.dateRule());
        page.blank().paragraph(0, "Source: " + answer.source() + " (" + answer.status().words() + ").");
        return page.paragraph(0, Statements.SUPPORTS).text();
    }
}
