package domefold.practice;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.Breast;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.patient.Wishes;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Women as the published tables describe them, before any is picked for a level.
 *
 * <p>Which row is used for what, and why:
 * <ul>
 * <li>height, body mass index, notch to nipple, nipple to nipple, nipple to fold, areola: means of the young cohort
 * without children (Al-Qattan et al. 2019, n = 54), the nearest to women who ask for augmentation. Where it gives no
 * SD: that of the hospital series (nipple to fold), of the Senegalese series (areola), else assumed.
 * <li>base width: the teaching range of augmentation, 11 to 14 cm, read as mean and two SDs either way. The measured
 * 14.3 cm is of women seen for breast disease and is marked as no default.
 * <li>breast volume: the hospital series, whose mean and SD are published with their range; {@link PatientDraw} keeps
 * the smaller ones, who would ask.
 * <li>kinds of asymmetry: PMID 17366695; ptosis per breast: the hospital series.
 * <li>pinches, stretch, gap, fill: no population value is published; assumed.
 * </ul>
 */
final class Population {
    private final Constants constants;
    private final Woman woman;
    private final Sides sides;
    private final Asymmetry asymmetry;
    private final double bothSidesPtotic;
    private final WishDraw wishes;

    Population(Evidence evidence) {
        constants = evidence.constants();
        woman = new Woman(evidence);
        sides = new Sides(evidence);
        asymmetry = new Asymmetry(evidence);
        wishes = new WishDraw(evidence);
        bothSidesPtotic = bothSides(Published.share(evidence, Kind.PTOSIS.ruleId()),
                Published.population(evidence, "ptosis_grade", Published.HOSPITAL, "mean"));
    }

    /**
     * Share of ptotic women who are so on both sides: with w per cent of women and b per cent of breasts ptotic, both
     * sides are in 2 b - w per cent of women.
     */
    static double bothSides(double womenPercent, double breastsPercent) {
        return (2 * breastsPercent - womenPercent) / womenPercent;
    }

    /** The next woman the dice give, possible or not. */
    Person draw(Dice dice) {
        Woman.Build build = woman.build(dice);
        Asymmetry.Kinds kinds = asymmetry.draw(dice);
        Sides.Pair pair = sides.draw(build, kinds, dice);
        double meanVolume = (pair.value(Side.LEFT, Measure.BREAST_VOLUME)
                + pair.value(Side.RIGHT, Measure.BREAST_VOLUME)) / 2;
        Map<Side, Ptosis> ptosis = ptosis(kinds, dice);
        Readings patient = woman.readings(build, meanVolume, dice);
        Person person = new Person(patient, chest(pair, dice), breast(pair, Side.LEFT, ptosis, dice),
                breast(pair, Side.RIGHT, ptosis, dice), woman.health(dice), Wishes.NONE, List.of());
        Person seen = person.with(sightings(person, kinds, dice));
        return seen.with(wishes.draw(seen.mean(Measure.BASE_WIDTH), dice));
    }

    private Readings chest(Sides.Pair pair, Dice dice) {
        double gap = new Spread(constants.value("PRA-GAP-MEAN"), constants.value("PRA-GAP-SD")).logNormal(dice.normal());
        double across = pair.value(Side.LEFT, Measure.NIPPLE_TO_MIDLINE)
                + pair.value(Side.RIGHT, Measure.NIPPLE_TO_MIDLINE);
        return Readings.NONE.with(Measure.INTERMAMMARY, Ticks.tenths(gap))
                .with(Measure.INTER_NIPPLE, Ticks.tenths(across));
    }

    private Breast breast(Sides.Pair pair, Side side, Map<Side, Ptosis> ptosis, Dice dice) {
        Map<Measure, Reading> taken = pair.of(side);
        double stretched = taken.get(Measure.NIPPLE_TO_FOLD_STRETCHED).value();
        taken.put(Measure.AREOLA_TO_FOLD_STRETCHED, Ticks.tenths(stretched - taken.get(Measure.AREOLA).value() / 2));
        Ptosis grade = ptosis.get(side);
        if (grade.compareTo(Ptosis.GRADE_I) >= 0) {
            Droop.read(taken, grade, constants, dice);
        }
        return new Breast(new Readings(taken), Optional.of(grade));
    }

    private Map<Side, Ptosis> ptosis(Asymmetry.Kinds kinds, Dice dice) {
        boolean both = dice.chance(bothSidesPtotic);
        Side first = dice.chance(0.5) ? Side.LEFT : Side.RIGHT;
        Map<Side, Ptosis> grades = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            double grade = dice.uniform() * 100;
            boolean ptotic = kinds.has(Kind.PTOSIS) && (both || side == first);
            grades.put(side, ptotic ? grade(grade) : other(grade));
        }
        return grades;
    }

    private Ptosis grade(double percent) {
        double third = constants.value("PRA-PTOSIS-GRADE-3");
        if (percent < third) {
            return Ptosis.GRADE_III;
        }
        return percent < third + constants.value("PRA-PTOSIS-GRADE-2") ? Ptosis.GRADE_II : Ptosis.GRADE_I;
    }

    private Ptosis other(double percent) {
        return percent < constants.value("PRA-PTOSIS-GLANDULAR") ? Ptosis.GLANDULAR : Ptosis.NONE;
    }

    /** Constriction and the chest wall have no reading: they are seen. The other kinds follow from the readings. */
    private List<Sighting> sightings(Person person, Asymmetry.Kinds kinds, Dice dice) {
        List<Sighting> seen = new ArrayList<>();
        Side side = dice.chance(0.5) ? Side.LEFT : Side.RIGHT;
        boolean bothConstricted = dice.chance(constants.value("PRA-CONSTRICTED-BOTH") / 100);
        if (kinds.has(Kind.BASE_CONSTRICTION)) {
            seen.add(new Sighting(Kind.BASE_CONSTRICTION, bothConstricted ? Optional.empty() : Optional.of(side)));
        }
        Side wall = dice.chance(0.5) ? Side.LEFT : Side.RIGHT;
        if (kinds.has(Kind.CHEST_WALL)) {
            seen.add(new Sighting(Kind.CHEST_WALL, Optional.of(wall)));
        }
        seen.addAll(Seen.of(person, constants));
        return seen;
    }

    /** The wish: a look, a size about the line of the starting volumes (VOL-10.5 to VOL-15), and weights. */
    static final class WishDraw {
        private static final double LINE_FROM_CM = 10.5;
        private static final double LINE_TO_CM = 15;
        private static final int SIZE_STEP_ML = 10;
        private static final double SMALLEST_ML = 120;
        private final double fromMl;
        private final double toMl;
        private final double sdMl;

        WishDraw(Evidence evidence) {
            fromMl = evidence.constants().value("VOL-10.5");
            toMl = evidence.constants().value("VOL-15");
            sdMl = evidence.constants().value("PRA-WISH-SD");
        }

        double lineMl(double baseWidthCm) {
            return fromMl + (toMl - fromMl) * (baseWidthCm - LINE_FROM_CM) / (LINE_TO_CM - LINE_FROM_CM);
        }

        static double rounded(double ml) {
            return Math.round(ml / SIZE_STEP_ML) * (double) SIZE_STEP_ML;
        }

        Wishes draw(double baseWidthCm, Dice dice) {
            Wishes.UpperPole look = dice.pick(List.of(Wishes.UpperPole.values()));
            double size = Math.max(SMALLEST_ML, lineMl(baseWidthCm) + sdMl * dice.normal());
            Map<Wishes.Matter, Integer> weights = new EnumMap<>(Wishes.Matter.class);
            for (Wishes.Matter matter : Wishes.Matter.values()) {
                weights.put(matter, dice.below(Wishes.HIGHEST_WEIGHT + 1));
            }
            return new Wishes(Optional.of(look), OptionalDouble.of(rounded(size)), weights);
        }
    }
}
