package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.outcome.Numbers;
import domefold.plan.SideFit;
import java.util.OptionalDouble;

/** A signed margin: the number, and a bar from zero in the middle, to one scale in every column. */
final class MarginCell {
    private static final double WIDTH_SCALE_CM = 3.0;
    private static final double VOLUME_SCALE_ML = 150;
    private static final int NUMBER_CELLS = 9;

    private MarginCell() {}

    static SideBySide.Cell width(SideFit fit, int width) {
        return cell(fit.widthMarginCm(), WIDTH_SCALE_CM, fit.widthMarginCm().isPresent()
                ? Numbers.marginCm(fit.widthMarginCm().getAsDouble()) : "no ceiling: a pinch is missing");
    }

    static SideBySide.Cell volume(SideFit fit, int width) {
        return cell(fit.volumeMarginMl(), VOLUME_SCALE_ML, fit.volumeMarginMl().isPresent()
                ? Numbers.marginMl(fit.volumeMarginMl().getAsDouble()) : "no band: a reading is missing");
    }

    private static SideBySide.Cell cell(OptionalDouble margin, double scale, String number) {
        return new SideBySide.Cell(1, (canvas, column, row, width) -> {
            Role role = margin.isEmpty() ? Role.FAINT : margin.getAsDouble() < 0 ? Role.TIGHT : Role.BODY;
            canvas.textWithin(column, row, width, number, role);
            int bar = Math.min(17, width - NUMBER_CELLS - 1);
            if (margin.isPresent() && bar >= 7) {
                bar(canvas, column + NUMBER_CELLS + 1, row, bar, margin.getAsDouble() / scale);
            }
        });
    }

    private static void bar(Canvas canvas, int column, int row, int width, double share) {
        int half = width / 2;
        canvas.fill(column, row, width, canvas.glyphs().dot(), Role.FAINT);
        int cells = (int) Math.round(Math.max(-1, Math.min(1, share)) * half);
        for (int i = 1; i <= Math.abs(cells); i++) {
            canvas.put(column + half + (cells < 0 ? -i : i), row, canvas.glyphs().full(), cells < 0 ? Role.TIGHT : Role.DRAWING);
        }
        canvas.put(column + half, row, canvas.glyphs().vertical(), Role.BODY);
    }
}
