package domefold.shell;

import domefold.outcome.Note;
import domefold.patient.Route;
import java.util.List;

/**
 * The opening a device needs.
 *
 * @param lowCm low end
 * @param typicalCm typical
 * @param highCm high end
 * @param route where
 * @param device {@code hand} or {@code funnel}
 * @param basis which model and rows, with status
 * @param allowed false where the route cannot pass it; the reason is in the notes
 * @param notes route limits and where published bands differ
 */
public record InsertionBand(
        double lowCm, double typicalCm, double highCm, Route route, String device, String basis, boolean allowed,
        List<Note> notes) {
    public InsertionBand {
        notes = List.copyOf(notes);
    }
}
