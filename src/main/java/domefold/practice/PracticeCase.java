package domefold.practice;

import domefold.patient.Case;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * An invented patient. The same number at the same level is the same patient for ever.
 *
 * @param number her number, 1 or more
 * @param level 1 ordinary; 2 asymmetric, thinly covered or tight; 3 with a trap
 * @param of the consult as the engine takes it
 * @param history her history in plain words
 * @param wish her wish in plain words
 * @param sightings what the eye sees before the tape is out
 * @param traps what the case hides; empty below level 3
 */
public record PracticeCase(
        int number, int level, Case of, String history, String wish, List<Sighting> sightings, Set<Trap> traps) {
    /** Stands wherever a practice case is shown. */
    public static final String BANNER = "PRACTICE - this patient is invented; nothing here is a clinical record";

    public static final int LOWEST_LEVEL = 1;
    public static final int HIGHEST_LEVEL = 3;

    public PracticeCase {
        if (number < 1) {
            throw new IllegalArgumentException("practice cases are numbered from 1, got " + number);
        }
        if (level < LOWEST_LEVEL || level > HIGHEST_LEVEL) {
            throw new IllegalArgumentException("practice has levels 1 to 3, got " + level);
        }
        sightings = List.copyOf(sightings);
        Set<Trap> inOrder = EnumSet.noneOf(Trap.class);
        inOrder.addAll(traps);
        traps = Collections.unmodifiableSet(inOrder);
    }

    /** The code her case carries wherever it is written, for example {@code P2-000007}. */
    static String code(int number, int level) {
        return String.format(Locale.ROOT, "P%d-%06d", level, number);
    }

    /** True for the code of a practice case. */
    public static boolean isCode(String code) {
        return code.strip().toUpperCase(Locale.ROOT).matches("P[1-3]-\\d{6,}");
    }

    /** The same patient with left and right exchanged. */
    public PracticeCase mirrored() {
        List<Sighting> exchanged = sightings.stream().map(Sighting::mirrored).toList();
        return new PracticeCase(number, level, of.mirrored(), history, wish, exchanged, traps);
    }
}
