package domefold.engine;

import domefold.device.Fill;
import domefold.evidence.Constant;
import domefold.evidence.Constants;

/**
 * The age from which a fill is labelled for cosmetic augmentation (LIM-01 saline, LIM-02 gel; US labelling, editable).
 * At exactly that age it is allowed.
 */
public final class LabelAge {
    private LabelAge() {}

    public static Constant rule(Fill fill, Constants constants) {
        return constants.get(fill == Fill.SALINE ? "LIM-01" : "LIM-02");
    }

    public static boolean below(double ageYears, Fill fill, Constants constants) {
        return Exact.below(ageYears, rule(fill, constants).value());
    }
}
