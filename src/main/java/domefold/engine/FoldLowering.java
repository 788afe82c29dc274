package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Working;
import java.util.Optional;

/**
 * How far the fold goes down.
 *
 * <pre>
 *   L = max(LOW-01, T - N)      L  lowering, cm     T  target, cm     N  stretched nipple to fold, cm
 * </pre>
 *
 * Source: LOW-01, from a copy of the article that contradicts itself; this is the reading intended. Up to LOW-02 it is
 * within reading error; above LOW-03 a double contour is warned of.
 */
public final class FoldLowering {
    private FoldLowering() {}

    public static double cm(double targetCm, double stretchedCm, Constants constants) {
        return Math.max(constants.value("LOW-01"), targetCm - stretchedCm);
    }

    /** What is to be said of it: {@code fold-within-reading-error}, {@code double-contour}, or nothing. */
    public static Optional<Note> remark(double loweringCm, Constants constants) {
        double error = constants.value("LOW-02");
        double warn = constants.value("LOW-03");
        if (Exact.above(loweringCm, 0) && !Exact.above(loweringCm, error)) {
            return Optional.of(new Note("fold-within-reading-error", "a fold lowering of " + Figures.cm(loweringCm)
                    + " cm is within the reading error of " + Figures.cm(error) + " cm"));
        }
        if (Exact.above(loweringCm, warn)) {
            return Optional.of(new Note("double-contour", "a fold lowering of " + Figures.cm(loweringCm)
                    + " cm is above " + Figures.cm(warn) + " cm: warn of a double contour; with a sharp tight fold"
                    + " less is already risky"));
        }
        return Optional.empty();
    }

    public static Working working(double targetCm, double stretchedCm, Constants constants) {
        return Working.by(constants.get("LOW-01"), "fold lowering", "max(" + Gate.figure(constants.value("LOW-01"))
                + ", " + Figures.cm(targetCm) + " - " + Figures.cm(stretchedCm) + ")",
                cm(targetCm, stretchedCm, constants), "cm");
    }
}
