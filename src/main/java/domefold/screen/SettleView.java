package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import java.util.List;

/** What is settled so far, as it could be read aloud. */
final class SettleView {
    private SettleView() {}

    static void draw(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen) {
        List<OverlayView.Line> lines = SettledPage.lines(screen.interview());
        int at = row;
        for (OverlayView.Line line : lines) {
            for (String part : TextWidth.wrap(line.text(), width - line.indent())) {
                if (at < row + height) {
                    canvas.text(column + line.indent(), at++, part, line.role());
                }
            }
        }
        if (at == row) {
            canvas.text(column, row, "Nothing is settled yet.", Role.FAINT);
        }
    }
}
