package domefold.engine;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * The dual plane types whose range of stretched areola to fold holds the reading. Ranges overlap; all that fit are
 * shown. Source: Tebbetts 2001 (DUA-01 to DUA-03), from memory.
 */
public final class DualPlaneTypes {
    private DualPlaneTypes() {}

    /**
     * One type that fits.
     *
     * @param type I, II or III
     * @param words when it applies and what is released
     * @param rule the row behind it
     */
    public record Type(String type, String words, Constant rule) {}

    public static List<Type> fitting(double areolaToFoldStretchedCm, Constants constants) {
        List<Type> types = new ArrayList<>();
        add(types, areolaToFoldStretchedCm, "I", "gland above the fold and firm: no release of gland from muscle above"
                + " the fold", "DUA-01", constants);
        add(types, areolaToFoldStretchedCm, "II", "mobile gland: release to the lower areola edge", "DUA-02", constants);
        add(types, areolaToFoldStretchedCm, "III", "glandular ptosis: release to the upper areola edge", "DUA-03",
                constants);
        add(types, areolaToFoldStretchedCm, "III", "constricted lower pole: release to the upper areola edge",
                "DUA-03-SHORT", constants);
        return types;
    }

    private static void add(List<Type> types, double valueCm, String type, String words, String stem,
            Constants constants) {
        boolean inside = !Exact.below(valueCm, constants.value(stem + "-LOW"))
                && !Exact.above(valueCm, constants.value(stem + "-HIGH"));
        if (inside) {
            types.add(new Type(type, words, constants.get(stem + "-LOW")));
        }
    }
}
