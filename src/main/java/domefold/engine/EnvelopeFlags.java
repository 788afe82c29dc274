package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Measure;
import domefold.patient.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Flags from the readings alone: a base that may be constricted (CON-01, CON-02), and an envelope that is tight, or tight
 * and short (LIM-15). Strict as written.
 */
public final class EnvelopeFlags {
    private EnvelopeFlags() {}

    public static List<Note> of(Readings side, Constants constants) {
        List<Note> notes = new ArrayList<>();
        OptionalDouble base = side.value(Measure.BASE_WIDTH);
        OptionalDouble stretched = side.value(Measure.NIPPLE_TO_FOLD_STRETCHED);
        OptionalDouble skin = side.value(Measure.SKIN_STRETCH);
        constricted(base, stretched, notes, constants);
        boolean tight = skin.isPresent() && Exact.below(skin.getAsDouble(), constants.value("LIM-15-STRETCH"));
        boolean isShort = stretched.isPresent() && Exact.below(stretched.getAsDouble(), constants.value("LIM-15-FOLD"));
        if (tight) {
            String words = "the skin stretch " + Figures.cm(skin.getAsDouble()) + " cm is below "
                    + Figures.cm(constants.value("LIM-15-STRETCH")) + " cm";
            notes.add(isShort
                    ? new Note("tight-and-short", "tight and short envelope: " + words + " and the stretched nipple to fold "
                            + Figures.cm(stretched.getAsDouble()) + " cm below "
                            + Figures.cm(constants.value("LIM-15-FOLD")) + " cm")
                    : new Note("tight-envelope", "tight envelope: " + words));
        }
        return notes;
    }

    private static void constricted(OptionalDouble base, OptionalDouble stretched, List<Note> notes,
            Constants constants) {
        List<String> reasons = new ArrayList<>();
        if (base.isPresent() && Exact.below(base.getAsDouble(), constants.value("CON-01"))) {
            reasons.add("base width " + Figures.cm(base.getAsDouble()) + " cm is below "
                    + Figures.cm(constants.value("CON-01")) + " cm");
        }
        if (stretched.isPresent() && Exact.below(stretched.getAsDouble(), constants.value("CON-02"))) {
            reasons.add("stretched nipple to fold " + Figures.cm(stretched.getAsDouble()) + " cm is below "
                    + Figures.cm(constants.value("CON-02")) + " cm");
        }
        if (!reasons.isEmpty()) {
            notes.add(new Note("constricted-base", "the base may be constricted: " + String.join(" and ", reasons)
                    + "; the volume table is not to be applied blindly"));
        }
    }
}
