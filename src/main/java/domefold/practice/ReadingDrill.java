package domefold.practice;

import domefold.evidence.Evidence;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Readings of an invented patient with up to three slips planted. One number is one drill for ever.
 *
 * @param number its number, 1 or more
 * @param shown the readings as the fellow sees them
 * @param sightings what the eye saw, always right
 * @param planted the slips, each at its place; may be none
 */
public record ReadingDrill(int number, Case shown, List<Sighting> sightings, Set<Slipped> planted) {
    private static final int STREAM = 7;
    private static final int MOST_SLIPS = 3;
    private static final int MOST_TRIES = 100_000;
    private static final int MM_PER_CM = 10;
    private static final List<Measure> IN_MM = List.of(Measure.BASE_WIDTH, Measure.STERNAL_NOTCH_TO_NIPPLE,
            Measure.NIPPLE_TO_MIDLINE, Measure.AREOLA);

    public ReadingDrill {
        sightings = List.copyOf(sightings);
        planted = Collections.unmodifiableSet(new LinkedHashSet<>(planted));
    }

    /**
     * The drill of that number.
     *
     * @throws IllegalArgumentException for a number below 1
     */
    public static ReadingDrill of(int number, Evidence evidence) {
        return of(number, PatientDraw.from(evidence), PatientDraw.asShipped(evidence));
    }

    static ReadingDrill of(int number, PatientDraw patients, Evidence evidence) {
        if (number < 1) {
            throw new IllegalArgumentException("drills are numbered from 1, got " + number);
        }
        Dice dice = new Dice(PatientDraw.seed(number, STREAM));
        Set<ReadingSlip> slips = slips(dice);
        for (int i = 0; i < MOST_TRIES; i++) {
            PracticeCase patient = patients.of(1 + dice.below(Integer.MAX_VALUE - 1), PracticeCase.LOWEST_LEVEL);
            if (suits(patient, slips, evidence)) {
                return planted(number, patient, slips, new Scan(evidence.constants()), dice);
            }
        }
        throw new IllegalStateException("no patient for drill " + number);
    }

    private static Set<ReadingSlip> slips(Dice dice) {
        Set<ReadingSlip> slips = EnumSet.noneOf(ReadingSlip.class);
        int wanted = dice.below(MOST_SLIPS + 1);
        while (slips.size() < wanted) {
            slips.add(ReadingSlip.values()[dice.below(ReadingSlip.values().length)]);
        }
        return slips;
    }

    /** True where every slip can be seen: swapped sides need two sightings that the readings would contradict. */
    private static boolean suits(PracticeCase patient, Set<ReadingSlip> slips, Evidence evidence) {
        for (Side side : Side.values()) {
            Readings readings = patient.of().side(side).readings();
            if (readings.value(Measure.NIPPLE_TO_FOLD_STRETCHED).orElseThrow()
                    <= readings.value(Measure.NIPPLE_TO_FOLD).orElseThrow()) {
                return false;
            }
        }
        long telling = patient.sightings().stream().filter(seen -> seen.side().isPresent())
                .filter(seen -> !(slips.contains(ReadingSlip.SCAN_MIXED) && seen.kind() == Kind.NIPPLE_POSITION))
                .filter(seen -> SlipCheck.leftLessRight(patient.of(), seen.kind(), evidence).isPresent()).count();
        return !slips.contains(ReadingSlip.SIDES_SWAPPED) || telling >= 2;
    }

    private static ReadingDrill planted(int number, PracticeCase patient, Set<ReadingSlip> slips, Scan scan, Dice dice) {
        Case shown = patient.of();
        Set<Slipped> planted = new LinkedHashSet<>();
        for (ReadingSlip slip : slips) {
            Side side = dice.chance(0.5) ? Side.LEFT : Side.RIGHT;
            Measure inMm = slips.contains(ReadingSlip.SIDES_SWAPPED) ? Measure.BASE_WIDTH : dice.pick(IN_MM);
            shown = switch (slip) {
                case SIDES_SWAPPED -> swapped(shown);
                case MILLIMETRES -> changed(shown, side, inMm, read(shown, side, inMm).value() * MM_PER_CM);
                case HEIGHT_WEIGHT_EXCHANGED -> exchanged(shown);
                case STRETCHED_SHORTER -> shortened(shown, side);
                case SCAN_MIXED -> shown.withSide(side, scan.of(shown.side(side)));
            };
            planted.add(switch (slip) {
                case SIDES_SWAPPED, HEIGHT_WEIGHT_EXCHANGED -> Slipped.whole(slip);
                case MILLIMETRES -> Slipped.in(side, inMm, slip);
                case STRETCHED_SHORTER, SCAN_MIXED -> Slipped.on(side, slip);
            });
        }
        return new ReadingDrill(number, shown, patient.sightings(), planted);
    }

    /** The readings change sides; what the eye graded stays. */
    private static Case swapped(Case of) {
        return of.withSide(Side.LEFT, new Breast(of.right().readings(), of.left().ptosis()))
                .withSide(Side.RIGHT, new Breast(of.left().readings(), of.right().ptosis()));
    }

    private static Case exchanged(Case of) {
        double height = of.patient().value(Measure.HEIGHT).orElseThrow();
        double weight = of.patient().value(Measure.WEIGHT).orElseThrow();
        return of.withPatient(of.patient().with(Measure.HEIGHT, Ticks.hand(weight))
                .with(Measure.WEIGHT, Ticks.hand(height)));
    }

    private static Case shortened(Case of, Side side) {
        double rest = read(of, side, Measure.NIPPLE_TO_FOLD).value();
        double stretched = read(of, side, Measure.NIPPLE_TO_FOLD_STRETCHED).value();
        return changed(changed(of, side, Measure.NIPPLE_TO_FOLD, stretched), side,
                Measure.NIPPLE_TO_FOLD_STRETCHED, rest);
    }

    private static Reading read(Case of, Side side, Measure measure) {
        return of.side(side).readings().get(measure).orElseThrow();
    }

    private static Case changed(Case of, Side side, Measure measure, double value) {
        Breast breast = of.side(side);
        double onGrid = Ticks.tenths(value).value();
        Reading reading = new Reading(onGrid, Ticks.typed(onGrid), read(of, side, measure).readBy(), 1);
        return of.withSide(side, new Breast(breast.readings().with(measure, reading), breast.ptosis()));
    }

    /**
     * The fellow's answer held against what was planted.
     *
     * @param found slips she named at their place
     * @param missed slips she did not name, each with its explanation
     * @param unfounded what she named that was not planted
     */
    public record Answered(Set<Slipped> found, List<String> missed, Set<Slipped> unfounded) {
        public Answered {
            found = Collections.unmodifiableSet(new LinkedHashSet<>(found));
            missed = List.copyOf(missed);
            unfounded = Collections.unmodifiableSet(new LinkedHashSet<>(unfounded));
        }

        public boolean allRight() {
            return missed.isEmpty() && unfounded.isEmpty();
        }
    }

    /** Checks the slips the fellow names, each at its place. */
    public Answered check(Set<Slipped> named, Evidence evidence) {
        Map<Slipped, String> why = SlipCheck.find(shown, sightings, evidence);
        Set<Slipped> found = new LinkedHashSet<>();
        List<String> missed = new ArrayList<>();
        for (Slipped slip : planted) {
            if (named.contains(slip)) {
                found.add(slip);
            } else {
                missed.add(slip.text() + ": " + why.getOrDefault(slip, "no check finds it"));
            }
        }
        Set<Slipped> unfounded = new LinkedHashSet<>(named);
        unfounded.removeAll(planted);
        return new Answered(found, missed, unfounded);
    }
}
