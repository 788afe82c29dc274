package domefold.practice;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Invented patients by number. One number at one level is one patient for ever; a number alone has a level of its own,
 * {@link #levelOf}.
 *
 * <p>Women are drawn as {@link Population} says until one is possible, asks for augmentation and belongs to the level.
 * Nothing but the number, the level and the shipped evidence enters.
 */
public final class PatientDraw {
    private static final int MOST_TRIES = 100_000;
    private static final double SECOND_TRAP = 0.2;
    /** Those that leave the readings alone, so that they undo no other. */
    private static final List<Trap> SECOND = List.of(Trap.AGE_BELOW_LABEL, Trap.CONTRAINDICATION, Trap.WISH_BEYOND_BASE);
    private final Population population;
    private final Planting planting;
    private final Body body;
    private final Level levels;

    private PatientDraw(Evidence given) {
        Evidence evidence = asShipped(given);
        population = new Population(evidence);
        planting = new Planting(evidence);
        body = new Body(evidence);
        levels = new Level(evidence.constants(), body);
    }

    /** Without the surgeon's own values: they must not turn a number into another patient. */
    static Evidence asShipped(Evidence evidence) {
        return evidence.with(Constants.of(
                evidence.constants().all().stream().map(one -> one.original().orElse(one)).toList()));
    }

    /** For drawing many: reads the tables once. */
    public static PatientDraw from(Evidence evidence) {
        return new PatientDraw(evidence);
    }

    /** The patient of that number at that level. */
    public static PracticeCase of(int number, int level, Evidence evidence) {
        return from(evidence).of(number, level);
    }

    /** The level a number has where none is asked for: 1, 2, 3, 1, 2, 3 and so on. */
    public static int levelOf(int number) {
        return PracticeCase.LOWEST_LEVEL + Math.floorMod(number - 1, PracticeCase.HIGHEST_LEVEL);
    }

    /** The patient of that number at the number's own level. */
    public PracticeCase of(int number) {
        return of(number, levelOf(number));
    }

    /**
     * The patient of that number at that level.
     *
     * @throws IllegalArgumentException for a number below 1 or a level that does not exist
     */
    public PracticeCase of(int number, int level) {
        if (number < 1 || level < PracticeCase.LOWEST_LEVEL || level > PracticeCase.HIGHEST_LEVEL) {
            throw new IllegalArgumentException("practice takes a number from 1 and a level of 1 to 3, got number "
                    + number + " and level " + level);
        }
        Dice dice = new Dice(seed(number, level));
        Set<Trap> traps = level == PracticeCase.HIGHEST_LEVEL ? traps(dice) : Set.of();
        Person person = person(level, traps, dice);
        return new PracticeCase(number, level, person.toCase(PracticeCase.code(number, level)), Story.history(person, dice),
                Story.wish(person, traps, dice), person.sightings(), traps);
    }

    /**
     * A seed without pattern: the finishing steps of MurmurHash3 over {@code 4 number + level}. Numbers in a row would
     * otherwise give streams that overlap.
     */
    static long seed(int number, int level) {
        long z = 4L * number + level;
        z = (z ^ (z >>> 33)) * 0xff51afd7ed558ccdL;
        z = (z ^ (z >>> 33)) * 0xc4ceb9fe1a85ec53L;
        return z ^ (z >>> 33);
    }

    private static Set<Trap> traps(Dice dice) {
        Set<Trap> traps = EnumSet.of(Trap.values()[dice.below(Trap.values().length)]);
        if (dice.chance(SECOND_TRAP)) {
            traps.add(dice.pick(SECOND));
        }
        return traps;
    }

    private Person person(int level, Set<Trap> traps, Dice dice) {
        Predicate<Person> belongs = switch (level) {
            case PracticeCase.LOWEST_LEVEL -> levels::ordinary;
            case 2 -> person -> levels.difficult(person) && !levels.trapped(person) && body.usual(person);
            default -> person -> !levels.trapped(person) && body.usualReadings(person);
        };
        for (int i = 0; i < MOST_TRIES; i++) {
            Person person = next(dice);
            if (!levels.asks(person) || !belongs.test(person)) {
                continue;
            }
            for (Trap trap : traps) {
                person = planting.plant(trap, person, dice);
            }
            if (body.possible(person)) {
                return person;
            }
        }
        throw new IllegalStateException("no possible patient of level " + level + " in " + MOST_TRIES + " draws");
    }

    /** The next possible woman, of any level, whether she would ask or not. */
    Person next(Dice dice) {
        Person person = population.draw(dice);
        for (int i = 0; !body.possible(person); i++) {
            if (i == MOST_TRIES) {
                throw new IllegalStateException("no possible patient in " + MOST_TRIES + " draws");
            }
            person = population.draw(dice);
        }
        return person;
    }
}
