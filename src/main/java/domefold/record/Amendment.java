package domefold.record;

import java.time.Instant;
import java.util.List;

/**
 * What a later version says about the one before.
 *
 * @param supersedesVersion the version it takes the place of
 * @param supersedesSha256 digest of that version's exact bytes
 * @param reason why, in the author's words
 * @param author who amended
 * @param at when
 * @param changes field by field
 */
public record Amendment(
        int supersedesVersion,
        String supersedesSha256,
        String reason,
        String author,
        Instant at,
        List<FieldChange> changes) {

    public Amendment {
        changes = List.copyOf(changes);
    }

    /**
     * One field that differs.
     *
     * @param field its path in the file, for example {@code left.fillMl}
     * @param before its former text, empty where it was absent
     * @param after its text now, empty where it is gone
     */
    public record FieldChange(String field, String before, String after) {}
}
