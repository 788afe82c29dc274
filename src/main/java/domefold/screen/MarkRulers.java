package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.device.Device;
import domefold.outcome.Band;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import domefold.practice.Mark;
import domefold.practice.SidePlan;
import domefold.practice.exercise.Exercise;
import java.util.Optional;
import java.util.OptionalDouble;

/** Her choice and the limits on the same ruler. */
final class MarkRulers {
    private static final SideRuler FOLD_CM = new SideRuler(0, 4);
    private static final int LABEL = 7;

    private MarkRulers() {}

    /** Draws the rulers of that mark, none where it has none; returns the row after them. */
    static int draw(Canvas canvas, int column, int row, int width, Exercise exercise, Mark mark) {
        if (mark.side().isEmpty()) {
            return row;
        }
        Side side = mark.side().get();
        SideLimits limits = exercise.plan().orElseThrow().side(side);
        SidePlan hers = exercise.stated().side(side);
        Optional<Device> device = hers.deviceId().flatMap(exercise.guide().catalogue()::find);
        Ruler ruler = new Ruler(canvas, column, row, width, side, exercise, limits, MarkingView.roleOf(mark.standing()));
        return switch (mark.decision()) {
            case WIDTH_CEILING -> ruler.width(row, hers.ceilingCm(), true);
            case VOLUME -> ruler.volume(row, hers.volumeMl(), true);
            case FOLD -> ruler.fold(due(exercise, side, hers), hers.foldLoweringCm());
            case DEVICE -> device.isEmpty() ? row : ruler.volume(ruler.width(row, OptionalDouble.of(device.get().widthCm()), false),
                    OptionalDouble.of(hers.fillMl().orElse(device.get().nominalMl())), false);
            default -> row;
        };
    }

    /** The lowering for her device, else for the starting volume. */
    private static OptionalDouble due(Exercise exercise, Side side, SidePlan hers) {
        Plan plan = exercise.plan().orElseThrow();
        return hers.deviceId().flatMap(id -> plan.candidates().stream().filter(one -> one.device().id().equals(id)).findFirst())
                .map(one -> one.side(side).foldLoweringCm()).filter(OptionalDouble::isPresent)
                .orElse(plan.side(side).foldLoweringCm());
    }

    /** Where rulers of one mark are drawn. */
    private record Ruler(Canvas canvas, int column, int top, int width, Side side, Exercise exercise, SideLimits limits, Role hers) {
        int width(int row, OptionalDouble hersCm, boolean legend) {
            SideRuler ruler = SideRuler.WIDTH_CM;
            begin(row, "width", ruler);
            double baseCm = exercise.practice().of().side(side).readings().value(Measure.BASE_WIDTH).orElse(ruler.from());
            ruler.span(canvas, from(), row, cells(), ruler.from(), baseCm, Role.DRAWING);
            ruler.band(canvas, from(), row, cells(), around(limits.widthCeilingCm(), limits.widthCeilingSdCm()), Role.DRAWING_OTHER);
            ruler.mark(canvas, from(), row, cells(), limits.widthCeilingCm(), canvas.glyphs().full(), Role.DRAWING_OTHER);
            ruler.mark(canvas, from(), row, cells(), hersCm, canvas.glyphs().marker(), hers);
            ruler.scale(canvas, from(), row + 1, cells(), 2, "cm");
            return end(row + 2, legend ? span() + " base width   " + canvas.glyphs().full() + " ceiling, " + canvas.glyphs().shade()
                    + " its error   " + canvas.glyphs().marker() + " yours" : "");
        }

        int volume(int row, OptionalDouble hersMl, boolean legend) {
            SideRuler ruler = SideRuler.VOLUME_ML;
            begin(row, "volume", ruler);
            ruler.band(canvas, from(), row, cells(), limits.volumeBandMl(), Role.DRAWING_OTHER);
            ruler.mark(canvas, from(), row, cells(), limits.startingVolumeMl(), canvas.glyphs().full(), Role.DRAWING_OTHER);
            ruler.mark(canvas, from(), row, cells(), hersMl, canvas.glyphs().marker(), hers);
            ruler.scale(canvas, from(), row + 1, cells(), 100, "mL");
            return end(row + 2, (legend ? "" : span() + " base width   ") + canvas.glyphs().full()
                    + (legend ? " starting volume, " : " limit, ") + canvas.glyphs().shade() + (legend ? " its band   " : " its error   ")
                    + canvas.glyphs().marker() + " yours");
        }

        int fold(OptionalDouble dueCm, OptionalDouble hersCm) {
            double near = exercise.guide().evidence().constants().value("LOW-02");
            begin(top, "lower", FOLD_CM);
            FOLD_CM.band(canvas, from(), top, cells(), around(dueCm, OptionalDouble.of(near)), Role.DRAWING_OTHER);
            FOLD_CM.mark(canvas, from(), top, cells(), dueCm, canvas.glyphs().full(), Role.DRAWING_OTHER);
            FOLD_CM.mark(canvas, from(), top, cells(), hersCm, canvas.glyphs().marker(), hers);
            FOLD_CM.scale(canvas, from(), top + 1, cells(), 1, "cm");
            return end(top + 2, canvas.glyphs().full() + " due   " + canvas.glyphs().shade() + " within the error of the reading   "
                    + canvas.glyphs().marker() + " yours");
        }

        private void begin(int row, String name, SideRuler ruler) {
            canvas.text(column, row, row == top ? side.toString() : "", Role.LABEL);
            canvas.text(column, row + 1, name, Role.FAINT);
            ruler.ground(canvas, from(), row, cells());
        }

        private int end(int row, String legend) {
            canvas.textWithin(from(), row, cells(), legend, Role.FAINT);
            return legend.isEmpty() ? row : row + 1;
        }

        private String span() {
            return "" + canvas.glyphs().teeLeft() + canvas.glyphs().teeRight();
        }

        private int from() {
            return column + LABEL;
        }

        private int cells() {
            return width - LABEL;
        }

        private static Optional<Band> around(OptionalDouble value, OptionalDouble sd) {
            return value.isPresent() && sd.isPresent() ? Optional.of(new Band(value.getAsDouble() - sd.getAsDouble(),
                    value.getAsDouble() + sd.getAsDouble())) : Optional.empty();
        }
    }
}
