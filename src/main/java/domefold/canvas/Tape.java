package domefold.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A tape that hangs down: zero at the top, a scale on its left, marks with their names on its right.
 *
 * @param scale one cell a row
 * @param step distance of the printed numbers
 */
public record Tape(Scale scale, int step, List<Mark> marks) {
    private static final int SCALE_WIDTH = 3;

    /** One place on the tape. */
    public record Mark(double at, String label, Role role) {}

    public Tape {
        marks = List.copyOf(marks);
    }

    /** Draws the tape within that many columns; names of marks that meet are moved down to a free row or joined. */
    public void draw(Canvas canvas, int column, int row, int width) {
        Glyphs glyphs = canvas.glyphs();
        for (int i = 0; i < scale.cells(); i++) {
            canvas.put(column + SCALE_WIDTH, row + i, glyphs.vertical(), Role.FAINT);
        }
        for (int value = (int) Math.ceil(scale.from()); step > 0 && value <= scale.to(); value++) {
            if (value % step == 0 && scale.shows(value)) {
                canvas.textRight(column + SCALE_WIDTH - 1, row + scale.cell(value), Integer.toString(value), Role.FAINT);
                canvas.put(column + SCALE_WIDTH, row + scale.cell(value), glyphs.teeLeft(), Role.FAINT);
            }
        }
        drawMarks(canvas, column + SCALE_WIDTH, row, width - SCALE_WIDTH);
    }

    private void drawMarks(Canvas canvas, int column, int row, int width) {
        List<Mark> downwards = new ArrayList<>(marks);
        downwards.removeIf(mark -> !Double.isFinite(mark.at()));
        downwards.sort(Comparator.comparingDouble(Mark::at));
        int free = 0;
        for (Mark mark : downwards) {
            int cell = scale.cellWithin(mark.at());
            int labelRow = Math.max(cell, free);
            canvas.fill(column, row + cell, 2, canvas.glyphs().horizontal(), mark.role());
            canvas.put(column, row + cell, canvas.glyphs().teeLeft(), mark.role());
            if (labelRow < scale.cells()) {
                canvas.textWithin(column + 3, row + labelRow, width - 3, mark.label(), mark.role());
                free = labelRow + 1;
            }
        }
    }
}
