package domefold.practice;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.Breast;
import domefold.patient.HealthQuestion;
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

/** Puts a trap into a drawn woman. How often which, and how deep, is assumed. */
final class Planting {
    private static final List<HealthQuestion> BLOCKS = List.of(HealthQuestion.PREGNANT_OR_NURSING,
            HealthQuestion.ACTIVE_INFECTION, HealthQuestion.UNTREATED_BREAST_DISEASE);
    private static final double MINOR = 0.2;
    private static final double BOTH = 0.5;
    private final Constants constants;
    private final Population.WishDraw wishes;
    private final Scan scan;

    Planting(Evidence evidence) {
        constants = evidence.constants();
        wishes = new Population.WishDraw(evidence);
        scan = new Scan(constants);
    }

    Person plant(Trap trap, Person person, Dice dice) {
        return switch (trap) {
            case AGE_BELOW_LABEL -> young(person, dice);
            case CONTRAINDICATION -> blocked(person, dice);
            case CONSTRICTED_BASE -> constricted(person, dice);
            case PTOSIS_FOR_LIFT -> ptotic(person, dice);
            case WISH_BEYOND_BASE -> beyond(person, dice);
            case MIXED_METHODS -> scanned(person, dice.chance(0.5) ? Side.LEFT : Side.RIGHT);
        };
    }

    private Person young(Person person, Dice dice) {
        int gel = (int) constants.value("LIM-02");
        int adult = (int) constants.value("PRA-AGE-YOUNGEST");
        int age = dice.chance(MINOR) ? adult - 1 : adult + dice.below(gel - adult);
        return person.withPatient(Measure.AGE, Ticks.hand(age));
    }

    private static Person blocked(Person person, Dice dice) {
        Map<HealthQuestion, Boolean> answers = new EnumMap<>(person.history());
        answers.put(dice.pick(BLOCKS), true);
        return person.with(answers);
    }

    /** A narrow base or a short lower pole, a small gland, tight skin; one side or both. */
    private Person constricted(Person person, Dice dice) {
        boolean both = dice.chance(BOTH);
        Side first = dice.chance(0.5) ? Side.LEFT : Side.RIGHT;
        boolean narrow = dice.chance(0.5);
        Person changed = person;
        for (Side side : Side.values()) {
            if (both || side == first) {
                changed = narrow ? narrow(changed, side, dice) : shortened(changed, side, dice);
                changed = changed.with(side, Measure.SKIN_STRETCH, Ticks.tenths(1.2 + 0.7 * dice.uniform()));
            }
        }
        return changed.with(seen(changed, both ? Optional.empty() : Optional.of(first)));
    }

    private Person narrow(Person person, Side side, Dice dice) {
        double width = constants.value("CON-01") - 0.1 - 0.9 * dice.uniform();
        double volume = person.value(side, Measure.BREAST_VOLUME) * 0.7;
        return person.with(side, Measure.BASE_WIDTH, Ticks.tenths(width))
                .with(side, Measure.BREAST_VOLUME, Ticks.whole(volume, 5));
    }

    private Person shortened(Person person, Side side, Dice dice) {
        double stretched = constants.value("CON-02") - 0.1 - 0.7 * dice.uniform();
        Person changed = person.with(side, Measure.NIPPLE_TO_FOLD_STRETCHED, Ticks.tenths(stretched))
                .with(side, Measure.NIPPLE_TO_FOLD, Ticks.tenths(stretched - 0.3 - 0.3 * dice.uniform()));
        double areola = Math.min(person.value(side, Measure.AREOLA), 4.5);
        return changed.with(side, Measure.AREOLA, Ticks.tenths(areola))
                .with(side, Measure.AREOLA_TO_FOLD_STRETCHED, Ticks.tenths(stretched - areola / 2));
    }

    private List<Sighting> seen(Person person, Optional<Side> side) {
        List<Sighting> sightings = new ArrayList<>(person.sightings());
        sightings.removeIf(finding -> finding.kind() != Kind.CHEST_WALL);
        sightings.add(new Sighting(Kind.BASE_CONSTRICTION, side));
        sightings.addAll(Seen.of(person, constants));
        return sightings;
    }

    /** Grade II or III, a long lower pole and a low nipple, on one side or both. */
    private Person ptotic(Person person, Dice dice) {
        boolean both = dice.chance(0.7);
        Side first = dice.chance(0.5) ? Side.LEFT : Side.RIGHT;
        Person changed = person;
        for (Side side : Side.values()) {
            if (both || side == first) {
                changed = drooping(changed, side, dice.chance(0.3) ? Ptosis.GRADE_III : Ptosis.GRADE_II, dice);
            }
        }
        return changed.with(kept(changed));
    }

    private Person drooping(Person person, Side side, Ptosis grade, Dice dice) {
        double rest = 8.2 + 1.4 * dice.uniform();
        double stretched = rest + 0.8 + 0.8 * dice.uniform();
        Map<Measure, Reading> taken = new EnumMap<>(person.side(side).readings().byMeasure());
        taken.put(Measure.STERNAL_NOTCH_TO_NIPPLE, Ticks.tenths(22 + 2.5 * dice.uniform()));
        taken.put(Measure.NIPPLE_TO_FOLD, Ticks.tenths(rest));
        taken.put(Measure.NIPPLE_TO_FOLD_STRETCHED, Ticks.tenths(stretched));
        taken.put(Measure.AREOLA_TO_FOLD_STRETCHED, Ticks.tenths(stretched - taken.get(Measure.AREOLA).value() / 2));
        Droop.read(taken, grade, constants, dice);
        return person.with(side, new Breast(new Readings(taken), Optional.of(grade)));
    }

    private List<Sighting> kept(Person person) {
        List<Sighting> sightings = new ArrayList<>(person.sightings());
        sightings.removeIf(finding -> finding.kind() != Kind.CHEST_WALL && finding.kind() != Kind.BASE_CONSTRICTION);
        sightings.addAll(Seen.of(person, constants));
        return sightings;
    }

    private Person beyond(Person person, Dice dice) {
        double size = wishes.lineMl(person.mean(Measure.BASE_WIDTH)) + constants.value("PRA-WISH-BEYOND")
                + dice.exponential(40);
        Wishes now = person.wishes();
        return person.with(new Wishes(now.upperPole(),
                OptionalDouble.of(Population.WishDraw.rounded(Math.min(800, size))), now.weights()));
    }

    private Person scanned(Person person, Side side) {
        return person.with(side, scan.of(person.side(side)));
    }
}
