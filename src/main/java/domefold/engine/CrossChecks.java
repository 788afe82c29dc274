package domefold.engine;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Readings held against each other: contradictions are refused, oddities asked again. Nothing is corrected. */
public final class CrossChecks {
    private static final double CM_PER_M = 100;

    private CrossChecks() {}

    /** Everything the readings of a case say against each other, in a fixed order. */
    public static List<Finding> of(Case of, Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Side side : Side.values()) {
            stretchedAgainstResting(of.side(side).readings(), side).ifPresent(findings::add);
        }
        bodyMass(of.patient(), evidence).ifPresent(findings::add);
        basesAgainstChest(of, evidence.constants()).ifPresent(findings::add);
        sides(of, evidence.constants()).ifPresent(findings::add);
        mixedMethods(of, evidence.constants()).ifPresent(findings::add);
        return findings;
    }

    /** Stretched must not be shorter than resting; equal is allowed (LIM-16). */
    public static Optional<Finding> stretchedAgainstResting(Readings readings, Side side) {
        OptionalDouble rest = readings.value(Measure.NIPPLE_TO_FOLD);
        OptionalDouble stretched = readings.value(Measure.NIPPLE_TO_FOLD_STRETCHED);
        if (rest.isEmpty() || stretched.isEmpty() || !Exact.below(stretched.getAsDouble(), rest.getAsDouble())) {
            return Optional.empty();
        }
        return Optional.of(new Finding(true, Optional.of(side), side.key() + "."
                + Measure.NIPPLE_TO_FOLD_STRETCHED.field(), new Note("stretched-below-resting", side.key()
                + " nipple to fold, stretched, " + Figures.cm(stretched.getAsDouble())
                + " cm is shorter than at rest, " + Figures.cm(rest.getAsDouble())
                + " cm; stretched it is at least as long: were the two exchanged?")));
    }

    /** Body mass index against its gate; height and weight exchanged are named. */
    public static Optional<Finding> bodyMass(Readings patient, Evidence evidence) {
        OptionalDouble height = patient.value(Measure.HEIGHT);
        OptionalDouble weight = patient.value(Measure.WEIGHT);
        if (height.isEmpty() || weight.isEmpty()) {
            return Optional.empty();
        }
        BodyMass gate = BodyMass.of(evidence);
        double index = BodyMass.index(height.getAsDouble(), weight.getAsDouble());
        boolean refuse = !gate.possible().includes(index);
        if (!refuse && gate.usual().includes(index)) {
            return Optional.empty();
        }
        boolean exchanged = gate.usual().includes(BodyMass.index(weight.getAsDouble(), height.getAsDouble()));
        String text = "height " + Figures.of(height.getAsDouble(), 0, 1) + " cm with weight "
                + Figures.of(weight.getAsDouble(), 0, 1) + " kg is a body mass index of " + Figures.of(index, 1, 1)
                + ", outside " + (refuse ? Gate.figure(gate.possible().low()) + " to "
                        + Gate.figure(gate.possible().high())
                        : "the usual " + Gate.figure(gate.usual().low()) + " to " + Gate.figure(gate.usual().high()))
                + (exchanged ? "; were height and weight exchanged?" : "; please look again");
        return Optional.of(new Finding(refuse, Optional.empty(), "patient",
                new Note(exchanged ? "height-weight-exchanged" : refuse ? "bmi-out-of-range" : "bmi-query", text)));
    }

    /** Both bases and the gap must go into the front of the chest. */
    static Optional<Finding> basesAgainstChest(Case of, Constants constants) {
        OptionalDouble chest = of.patient().value(Measure.THORACIC_PERIMETER);
        OptionalDouble gap = of.chest().value(Measure.INTERMAMMARY);
        OptionalDouble left = of.left().readings().value(Measure.BASE_WIDTH);
        OptionalDouble right = of.right().readings().value(Measure.BASE_WIDTH);
        if (chest.isEmpty() || gap.isEmpty() || left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        double needed = Math.min(left.getAsDouble(), right.getAsDouble())
                + Math.max(left.getAsDouble(), right.getAsDouble()) + gap.getAsDouble();
        double front = constants.value("CHECK-CHEST-SHARE") / CM_PER_M * chest.getAsDouble();
        if (!Exact.above(needed, front)) {
            return Optional.empty();
        }
        return Optional.of(new Finding(false, Optional.empty(), "patient." + Measure.THORACIC_PERIMETER.field(),
                new Note("bases-wider-than-chest", "both base widths and the gap make " + Figures.cm(needed)
                        + " cm, more than half of the chest perimeter " + Figures.cm(chest.getAsDouble())
                        + " cm; please look again at the widths, the gap and the perimeter")));
    }

    /** Left and right further apart than the reading errors explain. */
    static Optional<Finding> sides(Case of, Constants constants) {
        List<String> apart = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            Optional<Reading> left = measure.of() == Measure.Of.SIDE ? of.left().readings().get(measure)
                    : Optional.empty();
            Optional<Reading> right = of.right().readings().get(measure);
            if (left.isPresent() && right.isPresent() && sidesApart(measure, left.get(), right.get(), constants)) {
                apart.add(measure.words() + " " + Gate.figure(left.get().value()) + " left, "
                        + Gate.figure(right.get().value()) + " right " + measure.unit());
            }
        }
        return apart.isEmpty() ? Optional.empty() : Optional.of(new Finding(false, Optional.empty(), "left",
                new Note("sides-differ", "left and right differ by more than "
                        + Gate.figure(constants.value("CHECK-SIDES-SDS")) + " error SDs of a difference: "
                        + String.join("; ", apart) + "; please look again")));
    }

    /** True where |left - right| is above CHECK-SIDES-SDS error SDs of a difference. */
    public static boolean sidesApart(Measure measure, Reading left, Reading right, Constants constants) {
        double sdLeft = ReadingError.sd(measure, left, constants);
        double sdRight = ReadingError.sd(measure, right, constants);
        double sd = Math.sqrt(sdLeft * sdLeft + sdRight * sdRight);
        return sd > 0 && Exact.above(Math.abs(left.value() - right.value()), constants.value("CHECK-SIDES-SDS") * sd);
    }

    /** Hand and surface scan in one case. */
    static Optional<Finding> mixedMethods(Case of, Constants constants) {
        boolean hand = false;
        boolean scan = false;
        for (Side side : Side.values()) {
            for (Reading reading : of.side(side).readings().byMeasure().values()) {
                hand |= reading.readBy() == ReadBy.HAND;
                scan |= reading.readBy() == ReadBy.SURFACE_SCAN;
            }
        }
        return hand && scan ? Optional.of(new Finding(false, Optional.empty(), "readBy", mixedNote("", constants)))
                : Optional.empty();
    }

    /** Two readings of one measure, on the same or on both sides: a warning where the methods differ. */
    public static Optional<Note> mixedMethods(Measure measure, Reading one, Reading other, Constants constants) {
        return one.readBy() == other.readBy() ? Optional.empty()
                : Optional.of(mixedNote(measure.words() + " " + Figures.cm(one.value()) + " cm ("
                        + one.readBy().key() + ") and " + Figures.cm(other.value()) + " cm (" + other.readBy().key()
                        + "): ", constants));
    }

    private static Note mixedNote(String lead, Constants constants) {
        return new Note("mixed-reading-methods", lead + "readings by hand and by surface scan are mixed; a scan reads the"
                + " base width " + Figures.cm(constants.value("SCAN-OFFSET-BASE-WIDTH"))
                + " cm wider and nipple to fold " + Figures.cm(-constants.value("SCAN-OFFSET-NIPPLE-TO-FOLD"))
                + " cm shorter than a hand does");
    }
}
