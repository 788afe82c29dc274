package domefold.screen;

import domefold.outcome.Numbers;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.SideLimits;
import java.util.OptionalDouble;

/** The fold in one sentence. */
public final class FoldWords {
    private FoldWords() {}

    public static String of(SideLimits limits, Case patientCase, Side side) {
        OptionalDouble now = patientCase.side(side).readings().value(Measure.NIPPLE_TO_FOLD_STRETCHED);
        if (limits.foldTargetCm().isEmpty()) {
            return "no target yet";
        }
        String target = "target " + Numbers.cm(limits.foldTargetCm().getAsDouble());
        if (now.isEmpty()) {
            return target + "; the stretched reading is missing";
        }
        double loweringCm = limits.foldLoweringCm().orElse(0);
        return "now " + Numbers.cm(now.getAsDouble()) + " stretched, " + target
                + (loweringCm > 0 ? ", lower by " + Numbers.cm(loweringCm) : ", no lowering");
    }
}
