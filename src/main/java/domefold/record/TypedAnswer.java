package domefold.record;

import domefold.patient.Side;
import java.util.Optional;

/**
 * One answer as it was typed.
 *
 * @param question the question's id; for a reading, its field name
 * @param side empty where the answer is no side's, or was given for both in one line
 * @param text exactly what was typed
 */
public record TypedAnswer(String question, Optional<Side> side, String text) {}
