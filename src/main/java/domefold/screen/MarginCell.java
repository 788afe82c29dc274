package domefold.screen;

import domefold.canvas.MarginBar;
import domefold.canvas.Role;
import domefold.outcome.Numbers;
import domefold.plan.SideFit;
import java.util.OptionalDouble;

/** A signed margin: the number, and a bar from zero in the middle, to one scale in every column. */
final class MarginCell {
    private static final double REACH_CM = 3.0;
    private static final double REACH_ML = 150;
    private static final int NUMBER_CELLS = 9;
    private static final int WIDEST_BAR = 17;
    private static final int NARROWEST_BAR = 7;

    private MarginCell() {}

    /** @param wider how much wider than listed the device is at the fill in hand, cm; NaN where it can't be held */
    static Cell width(SideFit fit, double wider) {
        if (fit.widthMarginCm().isEmpty() || Double.isNaN(wider)) {
            return cell(OptionalDouble.empty(), REACH_CM, fit.widthMarginCm().isEmpty() ? "no ceiling: a pinch is missing" : "–");
        }
        double margin = fit.widthMarginCm().getAsDouble() - wider;
        return cell(OptionalDouble.of(margin), REACH_CM, Numbers.marginCm(margin));
    }

    static Cell volume(SideFit fit) {
        return cell(fit.volumeMarginMl(), REACH_ML, fit.volumeMarginMl().isPresent()
                ? Numbers.marginMl(fit.volumeMarginMl().getAsDouble()) : "no band: a reading is missing");
    }

    private static Cell cell(OptionalDouble margin, double reach, String number) {
        return new Cell(1, canvas -> {
            Role role = margin.isEmpty() ? Role.FAINT : margin.getAsDouble() < 0 ? Role.TIGHT : Role.DRAWING;
            canvas.textWithin(0, 0, canvas.columns(), number, role == Role.DRAWING ? Role.BODY : role);
            int bar = Math.min(WIDEST_BAR, canvas.columns() - NUMBER_CELLS - 1);
            if (margin.isPresent() && bar >= NARROWEST_BAR) {
                MarginBar.draw(canvas, NUMBER_CELLS + 1, 0, bar, margin.getAsDouble(), reach, role);
            }
        });
    }
}
