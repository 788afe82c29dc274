package domefold.plan;

import domefold.basics.Lists;
import domefold.engine.DimensionMinusCapacity;
import domefold.engine.DomeArc;
import domefold.engine.Exact;
import domefold.engine.FoldLowering;
import domefold.engine.FoldTarget;
import domefold.engine.ShapeBounds;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.outcome.Working;
import domefold.patient.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fold target and lowering of one side for its starting volume, and the three methods side by side.
 *
 * <p>Without a device there is no dome; the arc and the sum are then shown for a half-ellipsoid as wide as the base that
 * holds the starting volume, because the published volumes pair with devices about as wide as the base. Outside the
 * volume rows there is no target: the end row is a bound, and the lowering is the least (or most) that bound allows.
 */
record FoldLimits(
        OptionalDouble targetCm,
        OptionalDouble loweringCm,
        List<SideLimits.FoldMethod> methods,
        List<Note> notes,
        List<String> incomplete,
        List<Working> working) {
    static final FoldLimits NONE = new FoldLimits(OptionalDouble.empty(), OptionalDouble.empty(), List.of(), List.of(),
            List.of(), List.of());
    static final String ROWS = "volume rows";
    static final String ARC = "dome arc";
    static final String SUM = "dimension minus capacity";

    static FoldLimits of(SideNumbers side, OptionalDouble startingMl, Constants constants) {
        List<String> incomplete = side.has(SideNumbers.STRETCHED) ? List.of()
                : List.of(Measure.NIPPLE_TO_FOLD_STRETCHED.field());
        if (startingMl.isEmpty()) {
            return new FoldLimits(OptionalDouble.empty(), OptionalDouble.empty(), List.of(), List.of(), incomplete,
                    List.of());
        }
        double ml = startingMl.getAsDouble();
        FoldTarget rows = FoldTarget.of(constants);
        List<Note> notes = new ArrayList<>();
        List<Working> working = new ArrayList<>();
        working.add(rows.working(ml));
        double target = rows.cm(ml);
        OptionalDouble lowering = OptionalDouble.empty();
        if (side.has(SideNumbers.STRETCHED)) {
            double stretched = side.value[SideNumbers.STRETCHED];
            lowering = OptionalDouble.of(Exact.clean(FoldLowering.cm(target, stretched, constants)));
            working.add(FoldLowering.working(target, stretched, constants));
            FoldLowering.remark(lowering.getAsDouble(), constants).ifPresent(notes::add);
        }
        if (!rows.inRows(ml)) {
            notes.add(outside(rows, ml, target, lowering));
        }
        List<SideLimits.FoldMethod> methods = methods(side, rows, ml, working, constants);
        disagreement(methods, constants).ifPresent(notes::add);
        return new FoldLimits(rows.inRows(ml) ? OptionalDouble.of(Exact.clean(target)) : OptionalDouble.empty(), lowering, methods,
                notes, incomplete, working);
    }

    private static Note outside(FoldTarget rows, double ml, double bound, OptionalDouble lowering) {
        boolean above = ml > rows.rows().highest();
        String least = lowering.isPresent() ? ", and a lowering of " + Figures.cm(lowering.getAsDouble()) + " cm the "
                + (above ? "least" : "most") : "";
        return new Note("fold-outside-rows", Figures.ml(ml) + " mL is outside the fold rows, "
                + Figures.ml(rows.rows().lowest()) + " to " + Figures.ml(rows.rows().highest()) + " mL: "
                + Figures.cm(bound) + " cm is only " + (above ? "a lower" : "an upper") + " bound" + least
                + "; for a device the arc of its dome is used");
    }

    private static List<SideLimits.FoldMethod> methods(SideNumbers side, FoldTarget rows, double ml,
            List<Working> working, Constants constants) {
        double width = side.value[SideNumbers.BASE];
        double projection = ml / ShapeBounds.halfEllipsoidMl(width, 1);
        double arc = DomeArc.cm(width, projection, ml) + coverCm(side, constants);
        String dome = "for a half-ellipsoid " + Figures.cm(width) + " x " + Figures.cm(projection) + " cm";
        working.add(Working.by(constants.get("FLD-ARC-COVER"), "fold target by dome arc", dome + ": arc "
                + Figures.cm(arc - coverCm(side, constants)) + " + cover " + Figures.cm(coverCm(side, constants)), arc,
                "cm"));
        working.add(DimensionMinusCapacity.working(width, projection, constants));
        boolean inside = rows.inRows(ml);
        return List.of(
                new SideLimits.FoldMethod(ROWS, rows.cm(ml), inside, inside
                        ? rows.rows().isRow(ml) ? "table row" : "on the line between rows, which the published method"
                                + " does not define"
                        : "outside the rows; the end row is only a bound"),
                new SideLimits.FoldMethod(ARC, arc, false, dome + (side.has(SideNumbers.FOLD_PINCH)
                        ? "" : ", without cover: fold pinch not taken")),
                new SideLimits.FoldMethod(SUM, DimensionMinusCapacity.dimensionCm(width, projection, constants), false,
                        dome + "; its definition is from memory: for comparison only"));
    }

    /** One layer of skin and fat at the fold; 0 where the pinch was not taken. */
    static double coverCm(SideNumbers side, Constants constants) {
        return side.has(SideNumbers.FOLD_PINCH)
                ? constants.value("FLD-ARC-COVER") * side.value[SideNumbers.FOLD_PINCH] : 0;
    }

    private static Optional<Note> disagreement(List<SideLimits.FoldMethod> methods, Constants constants) {
        double least = Lists.least(methods, SideLimits.FoldMethod::targetCm);
        double most = Lists.most(methods, SideLimits.FoldMethod::targetCm);
        if (!Exact.above(most - least, constants.value("FLD-DISAGREE"))) {
            return Optional.empty();
        }
        List<String> words = new ArrayList<>();
        for (SideLimits.FoldMethod method : methods) {
            words.add(method.name() + " " + Numbers.cm(method.targetCm()));
        }
        return Optional.of(new Note("fold-methods-disagree", "the fold methods differ by " + Numbers.cm(most - least)
                + ": " + String.join(", ", words) + "; they are not averaged"));
    }
}
