package domefold.practice;

import domefold.patient.Side;
import java.util.Locale;
import java.util.Optional;

/**
 * What the eye sees before the tape is out.
 *
 * @param kind of what kind
 * @param side the lower, fuller, wider or affected side; empty means both
 */
public record Sighting(Kind kind, Optional<Side> side) {
    public Sighting mirrored() {
        return new Sighting(kind, side.map(Side::other));
    }

    /** A sentence for a person. */
    public String text() {
        String where = side.map(one -> "The " + one.name().toUpperCase(Locale.ROOT)).orElse("On both sides the");
        return switch (kind) {
            case NIPPLE_POSITION -> where + " nipple lies lower or further from the midline.";
            case VOLUME -> where + " breast is the fuller one.";
            case FOLD_POSITION -> where + " fold lies lower.";
            case BASE_CONSTRICTION -> where + " base is constricted.";
            case PTOSIS -> where + " breast is ptotic.";
            case AREOLA -> where + " areola is the wider one.";
            case CHEST_WALL -> where + " chest wall is sunken or flared.";
        };
    }
}
