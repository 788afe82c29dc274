package domefold.plan;

import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Side;
import java.util.List;

/**
 * Everything the engine says about one case and one device list.
 *
 * @param of the case it was computed from
 * @param catalogueName name of the device list
 * @param catalogueSha256 digest of the device list
 * @param blocked contraindications; while there is one, no candidate fits
 * @param notes remarks about the whole case
 * @param left what her left side allows
 * @param right what her right side allows
 * @param candidates the devices, in list order
 * @param pairs pairs that leave the smallest difference between the sides
 */
public record Plan(
        Case of,
        String catalogueName,
        String catalogueSha256,
        List<Note> blocked,
        List<Note> notes,
        SideLimits left,
        SideLimits right,
        List<Candidate> candidates,
        List<DevicePair> pairs) {
    public Plan {
        blocked = List.copyOf(blocked);
        notes = List.copyOf(notes);
        candidates = List.copyOf(candidates);
        pairs = List.copyOf(pairs);
    }

    public SideLimits side(Side side) {
        return side == Side.LEFT ? left : right;
    }
}
