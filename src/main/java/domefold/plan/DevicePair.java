package domefold.plan;

import domefold.outcome.Note;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A device for each side.
 *
 * @param leftId device for her left
 * @param rightId device for her right
 * @param leftFillMl volume on her left
 * @param rightFillMl volume on her right
 * @param volumeGapMl what remains between the sides, left less right; empty where the natural volumes are unknown
 * @param projectionGapCm projection of the left device less that of the right, as listed
 * @param verdict the stricter of both sides' verdicts at these volumes
 * @param notes what remains, what differs, what to be careful about; each with a stable code
 */
public record DevicePair(String leftId, String rightId, double leftFillMl, double rightFillMl, OptionalDouble volumeGapMl,
        double projectionGapCm, Verdict verdict, List<Note> notes) {
    public DevicePair {
        notes = List.copyOf(notes);
    }

    /** The notes as one text. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (Note note : notes) {
            text.append(text.length() == 0 ? "" : "; ").append(note.text());
        }
        return text.toString();
    }
}
