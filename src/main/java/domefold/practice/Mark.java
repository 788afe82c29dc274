package domefold.practice;

import domefold.outcome.Working;
import domefold.patient.Side;
import java.util.List;
import java.util.Optional;

/**
 * One decision, marked.
 *
 * @param decision what was decided
 * @param side on which side, empty where it is for the whole patient
 * @param code for a warning its code, else empty
 * @param standing inside the limits, defensible, outside, or not marked
 * @param said what the fellow stated, in words
 * @param decidedBy the number or rule that decided it, in a sentence
 * @param readingError what an error of reading would have done; empty where no reading enters
 * @param bothHeld where the evidence disagrees: the other view and its source
 * @param working the engine's working behind the limit
 * @param weight how much it counts; 0 where it is not marked
 * @param credit share of the weight that was earned
 */
public record Mark(
        Decision decision,
        Optional<Side> side,
        Optional<String> code,
        Standing standing,
        String said,
        String decidedBy,
        String readingError,
        Optional<String> bothHeld,
        List<Working> working,
        double weight,
        double credit) {
    public Mark {
        working = List.copyOf(working);
    }

    public double points() {
        return weight * credit;
    }
}
