package domefold.practice;

import domefold.engine.CrossChecks;
import domefold.engine.Exact;
import domefold.engine.Gate;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.outcome.Figures;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds slips by the engine's own gates and cross-checks, and swapped sides by what the eye saw: sides count as swapped
 * where at least two sightings say the opposite of the readings and none agrees with them.
 */
public final class SlipCheck {
    private static final double MM_PER_CM = 10;
    private static final int SIGHTINGS_AGAINST = 2;

    private SlipCheck() {}

    /** Every slip found, with a sentence that explains it. */
    public static Map<Slipped, String> find(Case of, List<Sighting> seen, Evidence evidence) {
        Map<Slipped, String> found = new LinkedHashMap<>();
        heightAndWeight(of.patient(), evidence)
                .ifPresent(text -> found.put(Slipped.whole(ReadingSlip.HEIGHT_WEIGHT_EXCHANGED), text));
        for (Side side : Side.values()) {
            millimetres(of, side, evidence, found);
            CrossChecks.stretchedAgainstResting(of.side(side).readings(), side).ifPresent(
                    one -> found.put(Slipped.on(side, ReadingSlip.STRETCHED_SHORTER), one.note().text()));
        }
        scan(of).ifPresent(side -> found.put(Slipped.on(side, ReadingSlip.SCAN_MIXED), CrossChecks.of(of, evidence)
                .stream().map(one -> one.note()).filter(note -> note.code().equals(ReadingSlip.SCAN_MIXED.code()))
                .findFirst().orElseThrow().text()));
        swapped(of, seen, evidence).ifPresent(text -> found.put(Slipped.whole(ReadingSlip.SIDES_SWAPPED), text));
        return found;
    }

    /** Height and weight exchanged: the body mass index is refused, and usual the other way round. */
    public static Optional<String> heightAndWeight(Readings patient, Evidence evidence) {
        return CrossChecks.bodyMass(patient, evidence).map(found -> found.note())
                .filter(note -> note.code().equals(ReadingSlip.HEIGHT_WEIGHT_EXCHANGED.code())).map(note -> note.text());
    }

    private static void millimetres(Case of, Side side, Evidence evidence, Map<Slipped, String> found) {
        of.side(side).readings().byMeasure().forEach((measure, reading) -> {
            if (measure.unit().equals("cm")) {
                Gate gate = Gate.of(measure, evidence);
                double asCm = reading.value() / MM_PER_CM;
                if (Exact.above(reading.value(), gate.possible().high()) && gate.possible().includes(asCm)) {
                    found.put(Slipped.in(side, measure, ReadingSlip.MILLIMETRES), side.name() + " " + measure.words()
                            + " " + Figures.of(reading.value(), 0, 1) + " cm is above "
                            + Figures.of(gate.possible().high(), 0, 1) + " cm; as mm it is " + Figures.cm(asCm) + " cm ("
                            + (gate.status() == Status.PROPOSAL ? "" : gate.source() + ", ") + gate.status().words() + ")");
                }
            }
        });
    }

    /** The side that was scanned where the other was read by hand. */
    private static Optional<Side> scan(Case of) {
        boolean left = scanned(of.left().readings());
        boolean right = scanned(of.right().readings());
        return left == right ? Optional.empty() : Optional.of(left ? Side.LEFT : Side.RIGHT);
    }

    private static boolean scanned(Readings side) {
        return side.byMeasure().values().stream().anyMatch(reading -> reading.readBy() == ReadBy.SURFACE_SCAN);
    }

    private static Optional<String> swapped(Case of, List<Sighting> seen, Evidence evidence) {
        int against = 0;
        StringBuilder said = new StringBuilder();
        for (Sighting sighting : seen) {
            OptionalDouble apart = sighting.side().isPresent() ? leftLessRight(of, sighting.kind(), evidence)
                    : OptionalDouble.empty();
            if (apart.isEmpty() || apart.getAsDouble() == 0) {
                continue;
            }
            if (apart.getAsDouble() > 0 == (sighting.side().get() == Side.LEFT)) {
                return Optional.empty();
            }
            against++;
            said.append(said.length() == 0 ? "" : ". ").append(sighting.text()).append(" The readings say the ")
                    .append(sighting.side().get().other().name());
        }
        return against < SIGHTINGS_AGAINST ? Optional.empty() : Optional.of(said + " (comparison of what was seen with"
                + " what was read; common practice, no source)");
    }

    /** The reading behind a sighting, empty where it has none or one that cannot be trusted. */
    static OptionalDouble leftLessRight(Case of, Kind kind, Evidence evidence) {
        return switch (kind) {
            case VOLUME -> apart(of, Measure.BREAST_VOLUME, evidence);
            case AREOLA -> apart(of, Measure.AREOLA, evidence);
            case NIPPLE_POSITION -> nipple(of, evidence);
            default -> OptionalDouble.empty();
        };
    }

    /** The level where that is what the eye sees, else the distance from the midline. */
    private static OptionalDouble nipple(Case of, Evidence evidence) {
        OptionalDouble level = apart(of, Measure.STERNAL_NOTCH_TO_NIPPLE, evidence);
        boolean seen = level.isPresent()
                && !Exact.below(Math.abs(level.getAsDouble()), evidence.constants().value("PRA-SEEN-CM"));
        return level.isEmpty() || seen ? level : apart(of, Measure.NIPPLE_TO_MIDLINE, evidence);
    }

    private static OptionalDouble apart(Case of, Measure measure, Evidence evidence) {
        Optional<Reading> left = of.left().readings().get(measure);
        Optional<Reading> right = of.right().readings().get(measure);
        Gate gate = Gate.of(measure, evidence);
        if (left.isEmpty() || right.isEmpty() || left.get().readBy() != right.get().readBy()
                || !gate.possible().includes(left.get().value()) || !gate.possible().includes(right.get().value())) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(left.get().value() - right.get().value());
    }
}
