package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.outcome.Numbers;
import java.util.List;

/** What is settled so far, as it could be read aloud. */
final class SettleView {
    private SettleView() {}

    static void draw(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen) {
        boolean aboutTopics = screen.interview().current().map(question -> question.id().equals("discussed")).orElse(false);
        List<OverlayView.Line> lines = Wrapped.of(canvas, aboutTopics ? SettledPage.topicsFirst(screen.interview())
                : SettledPage.lines(screen.interview()), width);
        boolean cut = lines.size() > height;
        int shown = cut ? height - 1 : lines.size();
        for (int i = 0; i < shown; i++) {
            canvas.text(column + lines.get(i).indent(), row + i, lines.get(i).text(), lines.get(i).role());
        }
        if (cut) {
            canvas.textWithin(column, row + shown, width, Numbers.count(lines.size() - shown, "more row", "more rows")
                    + " in Record, F3", Role.FAINT);
        }
    }
}
