package domefold.choose;

import domefold.basics.Lists;
import domefold.engine.AsymmetryClass;
import domefold.engine.BreastVolumeFormula;
import domefold.engine.Exact;
import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Status;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the breasts differ by before surgery.
 *
 * <pre>
 *   d = left - right, mL            by BREAST_VOLUME on both sides, else by the volume formula on both, else unknown
 *   s = BVF-ERROR / 100 x sqrt(left^2 + right^2)      error SD of d, by the formula only
 *   chased where |d| is not below ASY-10 and not below PAIR-MEASURED-SDS x s
 * </pre>
 *
 * @param basis where the volumes come from
 * @param leftMl natural volume of her left, with {@code rightMl} or not at all
 * @param sdMl error SD of the difference; empty where no error is known
 * @param chased true where the devices may make up for it
 * @param notes what it rests on and what it is worth
 * @param working line by line
 */
public record NaturalDifference(Basis basis, OptionalDouble leftMl, OptionalDouble rightMl, OptionalDouble sdMl,
        boolean chased, List<Note> notes, List<Working> working) {
    private static final List<Measure> CONE = List.of(Measure.BREAST_PROJECTION, Measure.MEDIAL_RADIUS,
            Measure.LATERAL_RADIUS, Measure.INFERIOR_RADIUS);

    public NaturalDifference {
        notes = List.copyOf(notes);
        working = List.copyOf(working);
    }

    /** Where the volumes come from. */
    public enum Basis {
        ENTERED,
        MEASURED,
        UNKNOWN
    }

    /** Left less right, mL; empty where it is unknown. */
    public OptionalDouble differenceMl() {
        return leftMl.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(Exact.clean(leftMl.getAsDouble() - rightMl.getAsDouble()));
    }

    /** What the difference asks for; empty where it is unknown. */
    public Optional<AsymmetryClass> kind(Constants constants) {
        return leftMl.isEmpty() ? Optional.empty()
                : Optional.of(AsymmetryClass.of(leftMl.getAsDouble(), rightMl.getAsDouble(), constants));
    }

    public static NaturalDifference of(Case of, Constants constants) {
        OptionalDouble left = of.left().readings().value(Measure.BREAST_VOLUME);
        OptionalDouble right = of.right().readings().value(Measure.BREAST_VOLUME);
        boolean cones = cone(of.left()) && cone(of.right());
        List<Measure> used = left.isPresent() && right.isPresent() ? List.of(Measure.BREAST_VOLUME) : CONE;
        if (used == CONE && !cones) {
            return unknown(left.isPresent() == right.isPresent()
                    ? new Note("difference-unknown", "the natural volumes are not known: neither entered on both sides nor"
                            + " measured by projection and the three radii, so what remains between the sides is not known")
                    : new Note("difference-unknown", "the natural volume is entered on one side only; volumes by different"
                            + " methods are never set against each other, so what remains between the sides is not known"));
        }
        if (readBy(of, used).size() > 1) {
            return unknown(new Note("difference-methods-mixed", "hand and surface scan are mixed in the natural volumes;"
                    + " volumes by different methods are never set against each other, so what remains between the sides is"
                    + " not known"));
        }
        return used == CONE ? measured(of, constants) : entered(left.getAsDouble(), right.getAsDouble(), constants);
    }

    private static NaturalDifference unknown(Note why) {
        return new NaturalDifference(Basis.UNKNOWN, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                false, List.of(why), List.of());
    }

    private static NaturalDifference entered(double leftMl, double rightMl, Constants constants) {
        List<Note> notes = new ArrayList<>();
        notes.add(new Note("difference-entered", "natural volumes as entered, " + Figures.ml(leftMl) + " mL left and "
                + Figures.ml(rightMl) + " mL right; their error is not known"));
        boolean chased = chased(leftMl, rightMl, 0, notes, constants);
        return new NaturalDifference(Basis.ENTERED, OptionalDouble.of(leftMl), OptionalDouble.of(rightMl),
                OptionalDouble.empty(), chased, notes, List.of(working(leftMl, rightMl)));
    }

    private static NaturalDifference measured(Case of, Constants constants) {
        double leftMl = formulaMl(of.left().readings(), constants);
        double rightMl = formulaMl(of.right().readings(), constants);
        double sdMl = constants.value("BVF-ERROR") / 100 * Math.hypot(leftMl, rightMl);
        Constant rule = constants.get("BVF-01");
        List<Note> notes = new ArrayList<>();
        notes.add(new Note("difference-measured", "natural volumes by the formula of the four breast readings ("
                + rule.source() + ", " + rule.status().words() + "), " + Figures.of(leftMl, 0, 0) + " mL left and "
                + Figures.of(rightMl, 0, 0) + " mL right; error SD of the difference "
                + Figures.of(sdMl, 0, 0) + " mL (" + constants.get("BVF-ERROR").status().words() + ")"));
        List<Working> working = new ArrayList<>();
        for (Side side : Side.values()) {
            working.add(cone(of.side(side).readings(), constants));
        }
        working.add(working(leftMl, rightMl));
        working.add(Working.by(constants.get("BVF-ERROR"), "error SD of the difference",
                Figures.of(constants.value("BVF-ERROR"), 0, 2) + " % of the root of " + Figures.ml(leftMl) + "^2 + "
                        + Figures.ml(rightMl) + "^2", sdMl, "mL"));
        boolean chased = chased(leftMl, rightMl, sdMl, notes, constants);
        return new NaturalDifference(Basis.MEASURED, OptionalDouble.of(leftMl), OptionalDouble.of(rightMl),
                OptionalDouble.of(sdMl), chased, notes, working);
    }

    /** Whether the devices may make up for it, and why not. */
    private static boolean chased(double leftMl, double rightMl, double sdMl, List<Note> notes, Constants constants) {
        double difference = Math.abs(leftMl - rightMl);
        double measuredFrom = constants.value("PAIR-MEASURED-SDS") * sdMl;
        AsymmetryClass kind = AsymmetryClass.of(leftMl, rightMl, constants);
        String words = Figures.ml(difference) + " mL between the sides";
        if (kind == AsymmetryClass.SAME) {
            notes.add(new Note("difference-not-seen", words + ": below " + Figures.ml(constants.value("ASY-10"))
                    + " mL (" + constants.get("ASY-10").status().words() + ") it is not seen and not chased; "
                    + kind.words()));
            return false;
        }
        if (Exact.below(difference, measuredFrom)) {
            notes.add(new Note("difference-not-measured", words + ": below its own error of "
                    + Figures.of(measuredFrom, 0, 0) + " mL it is not measured and not chased; the same device on both"
                    + " sides unless the eye or another method says otherwise"));
            return false;
        }
        notes.add(new Note("difference-" + (kind == AsymmetryClass.DISCUSS ? "discuss" : "large"),
                words + ": " + kind.words() + " (" + constants.get("ASY-12").status().words() + ")"));
        return true;
    }

    private static Working working(double leftMl, double rightMl) {
        return new Working("natural difference, left less right", Figures.ml(leftMl) + " - " + Figures.ml(rightMl),
                leftMl - rightMl, "mL", "arithmetic", Status.DERIVED);
    }

    private static boolean cone(Breast breast) {
        return Lists.all(CONE, measure -> breast.readings().has(measure));
    }

    private static double formulaMl(Readings readings, Constants constants) {
        double[] cm = cm(readings);
        return BreastVolumeFormula.ml(cm[0], cm[1], cm[2], cm[3], constants);
    }

    private static Working cone(Readings readings, Constants constants) {
        double[] cm = cm(readings);
        return BreastVolumeFormula.working(cm[0], cm[1], cm[2], cm[3], constants);
    }

    private static double[] cm(Readings readings) {
        return Lists.doubles(CONE, measure -> readings.value(measure).orElseThrow());
    }

    private static Set<ReadBy> readBy(Case of, List<Measure> measures) {
        Set<ReadBy> ways = EnumSet.noneOf(ReadBy.class);
        for (Side side : Side.values()) {
            for (Measure measure : measures) {
                ways.add(of.side(side).readings().get(measure).orElseThrow().readBy());
            }
        }
        return ways;
    }
}
