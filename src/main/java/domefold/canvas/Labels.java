package domefold.canvas;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts labels under or over their places on one row without letting them touch; the last given give way first. */
final class Labels {
    private static final int GAP = 2;

    private Labels() {}

    /** A label and the cell it belongs to. */
    record Label(int cell, String text, Role role) {}

    /** Draws what fits of the labels between {@code column} and {@code column + width}. */
    static void draw(Canvas canvas, int column, int row, int width, List<Label> labels) {
        List<Label> kept = new ArrayList<>(labels);
        kept.removeIf(label -> label.text().isEmpty());
        while (!kept.isEmpty() && taken(canvas, kept) > width) {
            kept.remove(kept.size() - 1);
        }
        kept.sort(Comparator.comparingInt(Label::cell));
        int[] starts = starts(canvas, kept, width);
        for (int i = 0; i < kept.size(); i++) {
            canvas.text(column + starts[i], row, kept.get(i).text(), kept.get(i).role());
        }
    }

    private static int taken(Canvas canvas, List<Label> labels) {
        return labels.stream().mapToInt(label -> canvas.width(label.text()) + GAP).sum() - GAP;
    }

    /** Centred where there is room, pushed right by a neighbour, then left by the edge. */
    private static int[] starts(Canvas canvas, List<Label> labels, int width) {
        int[] starts = new int[labels.size()];
        int free = 0;
        for (int i = 0; i < starts.length; i++) {
            int wide = canvas.width(labels.get(i).text());
            starts[i] = Math.max(free, labels.get(i).cell() - wide / 2);
            free = starts[i] + wide + GAP;
        }
        int edge = width;
        for (int i = starts.length - 1; i >= 0; i--) {
            starts[i] = Math.min(starts[i], edge - canvas.width(labels.get(i).text()));
            edge = starts[i] - GAP;
        }
        return starts;
    }
}
