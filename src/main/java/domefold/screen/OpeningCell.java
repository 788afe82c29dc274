package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import domefold.plan.Candidate;
import java.util.List;

/** The opening a device needs: a line to scale with its band, and what it rests on. */
final class OpeningCell {
    private static final double LONGEST_CM = 7;
    private static final int CELLS_FOR_LONGEST = 28;

    private OpeningCell() {}

    static SideBySide.Cell of(Candidate candidate, int width) {
        if (candidate.incision().isEmpty()) {
            return SideBySide.Cell.text("nothing is published for it", Role.FAINT, width);
        }
        Candidate.Incision incision = candidate.incision().get();
        String words = Numbers.cm(new Band(incision.lowCm(), incision.highCm())) + " " + incision.route().key()
                + ", " + incision.device();
        List<String> basis = TextWidth.wrap(incision.basis(), width);
        return new SideBySide.Cell(2 + basis.size(), (canvas, column, row, w) -> {
            canvas.textWithin(column, row, w, words, Role.BODY);
            line(canvas, column, row + 1, w, incision);
            for (int i = 0; i < basis.size(); i++) {
                canvas.textWithin(column, row + 2 + i, w, basis.get(i), Role.FAINT);
            }
        });
    }

    private static void line(Canvas canvas, int column, int row, int width, Candidate.Incision incision) {
        double perCm = Math.min(width, CELLS_FOR_LONGEST) / LONGEST_CM;
        int low = (int) Math.round(incision.lowCm() * perCm);
        int high = (int) Math.round(Math.min(LONGEST_CM, incision.highCm()) * perCm);
        canvas.fill(column, row, low, canvas.glyphs().horizontal(), Role.DRAWING);
        canvas.fill(column + low, row, Math.max(0, high - low), canvas.glyphs().shade(), Role.DRAWING_OTHER);
        canvas.put(column, row, canvas.glyphs().teeLeft(), Role.DRAWING);
        canvas.put(column + Math.max(low, high), row, canvas.glyphs().teeRight(), Role.DRAWING);
    }
}
