package domefold.plan;

import domefold.device.Device;
import domefold.engine.ErrorDraws;
import domefold.engine.FoldTarget;
import domefold.evidence.Constants;
import domefold.outcome.Band;

/** One side under the reading error, device by device in a plain pass over the draws. */
final class DoubtSide {
    private final SideNumbers numbers;
    private final DrawnSide drawn;
    private final VerdictRule rule;
    private final FoldTarget rows;
    private final double lowOffsetMl;
    private final double highOffsetMl;
    private final double coverShare;

    /** @param kept the share of each reading's error SD that variant k + 1 keeps */
    DoubtSide(SideNumbers numbers, Band band, VerdictRule rule, ErrorDraws errors, double[] kept, Constants constants) {
        this.numbers = numbers;
        this.rule = rule;
        drawn = new DrawnSide(numbers, rule, errors, kept);
        rows = FoldTarget.of(constants);
        lowOffsetMl = band.low() - numbers.volumeMl();
        highOffsetMl = band.high() - numbers.volumeMl();
        coverShare = numbers.has(SideNumbers.FOLD_PINCH) ? constants.value("FLD-ARC-COVER") : 0;
    }

    SideNumbers numbers() {
        return numbers;
    }

    DrawnSide drawn() {
        return drawn;
    }

    /** How often it fits, is tight and is outside. */
    int[] counts(Device device, SideFit fit, int variant) {
        int[] counts = new int[Verdict.values().length];
        boolean notJudged = ReasonCodes.notJudged(fit);
        Draw draw = new Draw(device, fit, variant);
        for (int i = 0; i < drawn.draws; i++) {
            Verdict verdict = VerdictRule.verdict(draw.bits(i));
            counts[(notJudged ? verdict.and(Verdict.TIGHT) : verdict).ordinal()]++;
        }
        return counts;
    }

    /** Takes out the draws in which the device is outside. */
    void strikeOutside(Device device, SideFit fit, boolean[] allowed) {
        Draw draw = new Draw(device, fit, 0);
        for (int i = 0; i < allowed.length; i++) {
            allowed[i] = allowed[i] && (draw.bits(i) & VerdictRule.OUTSIDE) == 0;
        }
    }

    /** The rule for one device, draw by draw. */
    private final class Draw {
        private final int v;
        private final double widthCm;
        private final double volumeMl;
        private final double targetCm;
        private final double cover;

        Draw(Device device, SideFit fit, int variant) {
            v = variant;
            widthCm = device.widthCm();
            volumeMl = device.nominalMl();
            boolean inRows = rows.inRows(volumeMl);
            cover = inRows ? 0 : coverShare;
            double plannedCover = cover == 0 ? 0 : cover * numbers.value[SideNumbers.FOLD_PINCH];
            targetCm = fit.foldTargetCm().orElse(Double.NaN) - plannedCover;
        }

        int bits(int i) {
            double start = drawn.volumeMl[v][i];
            double covered = cover == 0 ? 0 : cover * drawn.foldPinchCm[v][i];
            return rule.bits(widthCm, volumeMl, drawn.baseCm[v][i], drawn.ceilingCm[v][i], drawn.limitCm[v][i],
                    start + lowOffsetMl, start + highOffsetMl, targetCm + covered - drawn.stretchedCm[v][i]);
        }
    }
}
