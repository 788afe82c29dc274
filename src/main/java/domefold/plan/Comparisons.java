package domefold.plan;

import domefold.engine.BreastVolumeFormula;
import domefold.engine.BustGain;
import domefold.engine.CupBand;
import domefold.engine.DualPlaneTypes;
import domefold.engine.ImplantHeightRatio;
import domefold.engine.PtosisDiscriminant;
import domefold.engine.SpanRule;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Figures;
import domefold.outcome.Working;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Published rules that are shown beside the limits and drive none of them; each only where its readings were taken. */
final class Comparisons {
    private Comparisons() {}

    static List<Working> of(Case of, Breast breast, OptionalDouble startingMl, Evidence evidence) {
        Constants constants = evidence.constants();
        Readings readings = breast.readings();
        List<Working> lines = new ArrayList<>();
        both(of.patient().value(Measure.THORACIC_PERIMETER), readings.value(Measure.STERNAL_NOTCH_TO_NIPPLE),
                (chest, notch) -> lines.add(ImplantHeightRatio.working(chest, notch, constants)));
        both(readings.value(Measure.UPPER_SPAN), readings.value(Measure.NIPPLE_TO_FOLD),
                (upper, lower) -> lines.add(SpanRule.working(upper, lower, constants)));
        both(readings.value(Measure.VERTICAL_SURFACE), readings.value(Measure.VERTICAL_BASE),
                (surface, base) -> lines.add(PtosisDiscriminant.working(surface, base, constants)));
        readings.value(Measure.AREOLA_TO_FOLD_STRETCHED).ifPresent(cm -> {
            for (DualPlaneTypes.Type type : DualPlaneTypes.fitting(cm, constants)) {
                lines.add(Working.by(type.rule(), "dual plane type " + type.type(), type.words()
                        + "; areola to fold, stretched, " + Figures.cm(cm) + " cm (ranges overlap)", Double.NaN, ""));
            }
        });
        formulaMl(readings, constants).ifPresent(ml -> lines.add(formula(readings, constants)));
        startingMl.ifPresent(ml -> gains(ml, lines, constants));
        return lines;
    }

    /** Natural volume by the published formula, where its four readings were taken. mL. */
    static OptionalDouble formulaMl(Readings readings, Constants constants) {
        OptionalDouble projection = readings.value(Measure.BREAST_PROJECTION);
        OptionalDouble medial = readings.value(Measure.MEDIAL_RADIUS);
        OptionalDouble lateral = readings.value(Measure.LATERAL_RADIUS);
        OptionalDouble inferior = readings.value(Measure.INFERIOR_RADIUS);
        return projection.isPresent() && medial.isPresent() && lateral.isPresent() && inferior.isPresent()
                ? OptionalDouble.of(BreastVolumeFormula.ml(projection.getAsDouble(), medial.getAsDouble(),
                        lateral.getAsDouble(), inferior.getAsDouble(), constants))
                : OptionalDouble.empty();
    }

    private static Working formula(Readings readings, Constants constants) {
        return BreastVolumeFormula.working(readings.value(Measure.BREAST_PROJECTION).orElseThrow(),
                readings.value(Measure.MEDIAL_RADIUS).orElseThrow(), readings.value(Measure.LATERAL_RADIUS).orElseThrow(),
                readings.value(Measure.INFERIOR_RADIUS).orElseThrow(), constants);
    }

    private static void gains(double ml, List<Working> lines, Constants constants) {
        BustGain.cm(ml, constants).ifPresent(gain -> lines.add(Working.by(constants.get("BUS-01-SLOPE"),
                "bust gain with that volume on both sides", Figures.of(constants.value("BUS-01-SLOPE"), 1, 6) + " x "
                        + Figures.ml(ml) + " + " + Figures.of(constants.value("BUS-01-OFFSET"), 1, 4), gain, "cm")));
        CupBand cups = CupBand.of(ml, constants);
        lines.add(Working.by(constants.get("CUP-04-LOW"), "cup steps", cups.words(), Double.NaN, ""));
    }

    private interface Two {
        void accept(double one, double other);
    }

    private static void both(OptionalDouble one, OptionalDouble other, Two use) {
        if (one.isPresent() && other.isPresent()) {
            use.accept(one.getAsDouble(), other.getAsDouble());
        }
    }
}
