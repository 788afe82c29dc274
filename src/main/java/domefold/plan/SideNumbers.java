package domefold.plan;

import domefold.engine.ReadingError;
import domefold.engine.StartingVolume;
import domefold.engine.VolumeAdjustments;
import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Readings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The readings of one side that carry error into a verdict, as bare numbers; NaN where one was not taken. */
final class SideNumbers {
    static final int BASE = 0;
    static final int MEDIAL = 1;
    static final int LATERAL = 2;
    static final int STRETCHED = 3;
    static final int SKIN = 4;
    static final int FILL = 5;
    static final int FOLD_PINCH = 6;

    /** In the order of the error draws. */
    static final List<Measure> VARYING = List.of(Measure.BASE_WIDTH, Measure.MEDIAL_PINCH, Measure.LATERAL_PINCH,
            Measure.NIPPLE_TO_FOLD_STRETCHED, Measure.SKIN_STRETCH, Measure.PARENCHYMAL_FILL, Measure.FOLD_PINCH);
    private static final List<Measure> ADJUSTING = List.of(Measure.SKIN_STRETCH, Measure.NIPPLE_TO_FOLD_STRETCHED,
            Measure.PARENCHYMAL_FILL);

    final double[] value = new double[VARYING.size()];
    final double[] sd = new double[VARYING.size()];
    final StartingVolume start;
    final VolumeAdjustments adjustments;
    final Constants constants;
    final double pinchShare;
    private final List<Measure> missing = new ArrayList<>();
    private final List<Measure> taken = new ArrayList<>();

    SideNumbers(Readings readings, Constants constants) {
        this.constants = constants;
        start = StartingVolume.of(constants);
        adjustments = VolumeAdjustments.of(constants);
        pinchShare = constants.value("WID-02");
        for (int k = 0; k < value.length; k++) {
            Measure measure = VARYING.get(k);
            Optional<Reading> reading = readings.get(measure);
            value[k] = reading.map(Reading::value).orElse(Double.NaN);
            sd[k] = reading.map(read -> ReadingError.sd(measure, read, constants)).orElse(0.0);
        }
        for (Measure measure : ADJUSTING) {
            (has(VARYING.indexOf(measure)) ? taken : missing).add(measure);
        }
    }

    boolean has(int k) {
        return !Double.isNaN(value[k]);
    }

    boolean hasPinches() {
        return has(MEDIAL) && has(LATERAL);
    }

    /** Width ceiling: from both pinches, else the narrower end of the rule of thumb. */
    double ceilingCm(double baseCm, double medialCm, double lateralCm) {
        return hasPinches() ? baseCm - pinchShare * (medialCm + lateralCm) : baseCm - constants.value("WID-03-HIGH");
    }

    double ceilingCm() {
        return ceilingCm(value[BASE], value[MEDIAL], value[LATERAL]);
    }

    /** Table value or estimate, plus the effects of the readings that were taken. */
    double volumeMl(double baseCm, double skinCm, double stretchedCm, double fillPercent) {
        double ml = start.ml(baseCm);
        if (has(SKIN)) {
            ml += adjustments.skinStretchMl(skinCm);
        }
        if (has(STRETCHED)) {
            ml += adjustments.stretchedFoldMl(stretchedCm);
        }
        if (has(FILL)) {
            ml += adjustments.fillMl(fillPercent);
        }
        return ml;
    }

    double volumeMl() {
        return volumeMl(value[BASE], value[SKIN], value[STRETCHED], value[FILL]);
    }

    /** The adjusting readings that were not taken, in the order of the rules. */
    List<Measure> missingAdjustments() {
        return Collections.unmodifiableList(missing);
    }

    /** The adjusting readings that were taken, in the order of the rules. */
    List<Measure> takenAdjustments() {
        return Collections.unmodifiableList(taken);
    }
}
