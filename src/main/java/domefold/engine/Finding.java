package domefold.engine;

import domefold.outcome.Note;
import domefold.patient.Side;
import java.util.Optional;

/**
 * What one cross-check found.
 *
 * @param refuse true where the readings contradict each other and can't be taken, false where they are asked again
 * @param side the side it is about, empty for the whole patient
 * @param where field path such as {@code left.nippleToFoldStretchedCm}
 * @param note the sentence
 */
public record Finding(boolean refuse, Optional<Side> side, String where, Note note) {}
