package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.Scale;
import domefold.canvas.TextWidth;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import domefold.plan.Candidate;
import java.util.ArrayList;
import java.util.List;

/** The opening a device needs: a line to scale with its band, and what it rests on. */
final class OpeningCell {
    private static final double LONGEST_CM = 7;
    private static final int CELLS_FOR_LONGEST = 28;

    private OpeningCell() {}

    static Cell of(Candidate candidate, int width) {
        if (candidate.incision().isEmpty()) {
            return Cell.text("nothing is published for it by this route", Role.FAINT, width);
        }
        Candidate.Incision incision = candidate.incision().get();
        String typical = incision.typicalCm().isPresent() ? Numbers.cm(incision.typicalCm().getAsDouble()) + ", " : "";
        List<String> words = new ArrayList<>(TextWidth.wrap(typical + "band " + Numbers.cm(new Band(incision.lowCm(), incision.highCm())), width));
        words.addAll(TextWidth.wrap(incision.route().key() + ", " + (incision.device().equals("hand") ? "by hand" : incision.device()), width));
        int plain = words.size();
        words.addAll(TextWidth.wrap(incision.basis(), width));
        return new Cell(1 + words.size(), canvas -> {
            line(canvas, incision);
            for (int i = 0; i < words.size(); i++) {
                canvas.textWithin(0, 1 + i, canvas.columns(), words.get(i), i < plain ? Role.BODY : Role.FAINT);
            }
        });
    }

    private static void line(Canvas canvas, Candidate.Incision incision) {
        Scale scale = new Scale(0, LONGEST_CM, Math.min(canvas.columns(), CELLS_FOR_LONGEST));
        int low = scale.cellWithin(incision.lowCm());
        int high = scale.cellWithin(incision.highCm());
        canvas.fill(0, 0, low, canvas.glyphs().horizontal(), Role.DRAWING);
        canvas.fill(low, 0, Math.max(0, high - low), canvas.glyphs().shade(), Role.DRAWING_OTHER);
        canvas.put(0, 0, canvas.glyphs().teeLeft(), Role.DRAWING);
        canvas.put(Math.max(low, high), 0, canvas.glyphs().teeRight(), Role.DRAWING);
    }
}
