package domefold.screen;

import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.canvas.YearLine;
import domefold.plan.Candidate;
import java.util.List;
import java.util.Optional;

/** Exams to the horizon: the count, and a line of years with the densest and the sparsest reading of the schedule. */
final class ExamsCell {
    private ExamsCell() {}

    static Cell of(Candidate candidate, int width) {
        Optional<Candidate.FollowUp> followUp = candidate.followUp();
        if (followUp.isEmpty()) {
            return Cell.text("no schedule chosen: `go imaging schedule`", Role.FAINT, width);
        }
        Candidate.FollowUp f = followUp.get();
        if (f.examsHigh() == 0) {
            return Cell.text("none to year " + f.horizonYears() + " (" + f.schedule() + "). " + f.text(), Role.BODY, width);
        }
        String count = (f.examsLow() == f.examsHigh() ? String.valueOf(f.examsLow()) : f.examsLow() + "–" + f.examsHigh())
                + " to year " + f.horizonYears() + " (" + f.schedule() + ")";
        List<String> words = TextWidth.wrap(count, width);
        return new Cell(words.size() + YearLine.ROWS, canvas -> {
            for (int i = 0; i < words.size(); i++) {
                canvas.textWithin(0, i, canvas.columns(), words.get(i), Role.BODY);
            }
            YearLine.fitting(canvas.columns(), f.horizonYears(), f.horizonYears())
                    .draw(canvas, 0, words.size(), years(f.densestYears()), years(f.sparsestYears()));
        });
    }

    private static double[] years(List<Integer> years) {
        return years.stream().mapToDouble(Integer::doubleValue).toArray();
    }
}
