package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Working;
import domefold.patient.Measure;

/**
 * What the envelope adds to or takes from the starting volume, mL. Steps, strict as written.
 *
 * <pre>
 *   skin stretch               &lt; 2: ADJ-01   2 to 3: ADJ-02   &gt; 3: ADJ-03   &gt; 4: ADJ-04 (instead, not besides)
 *   stretched nipple to fold   &gt; 9.5: ADJ-05
 *   parenchymal fill           &lt; 20: ADJ-06   &gt; 80: ADJ-07
 * </pre>
 *
 * The limits named here are the shipped ones; the constants decide. Source: Tebbetts and Adams 2005 (ADJ rows). A
 * missing reading has no effect of its own: it has a {@link #reach}, and the result is incomplete (ADJ-10).
 */
public final class VolumeAdjustments {
    private final Constants constants;
    private final double tightLimitCm;
    private final double looseLimitCm;
    private final double veryLooseLimitCm;
    private final double longLimitCm;
    private final double emptyLimitPercent;
    private final double fullLimitPercent;
    private final double tightMl;
    private final double ordinaryMl;
    private final double looseMl;
    private final double veryLooseMl;
    private final double longMl;
    private final double emptyMl;
    private final double fullMl;

    private VolumeAdjustments(Constants constants) {
        this.constants = constants;
        tightLimitCm = constants.value("ADJ-01-LIMIT");
        looseLimitCm = constants.value("ADJ-03-LIMIT");
        veryLooseLimitCm = constants.value("ADJ-04-LIMIT");
        longLimitCm = constants.value("ADJ-05-LIMIT");
        emptyLimitPercent = constants.value("ADJ-06-LIMIT");
        fullLimitPercent = constants.value("ADJ-07-LIMIT");
        tightMl = constants.value("ADJ-01");
        ordinaryMl = constants.value("ADJ-02");
        looseMl = constants.value("ADJ-03");
        veryLooseMl = constants.value("ADJ-04");
        longMl = constants.value("ADJ-05");
        emptyMl = constants.value("ADJ-06");
        fullMl = constants.value("ADJ-07");
    }

    public static VolumeAdjustments of(Constants constants) {
        return new VolumeAdjustments(constants);
    }

    public double skinStretchMl(double skinStretchCm) {
        if (Exact.below(skinStretchCm, tightLimitCm)) {
            return tightMl;
        }
        if (Exact.above(skinStretchCm, veryLooseLimitCm)) {
            return veryLooseMl;
        }
        return Exact.above(skinStretchCm, looseLimitCm) ? looseMl : ordinaryMl;
    }

    public double stretchedFoldMl(double nippleToFoldStretchedCm) {
        return Exact.above(nippleToFoldStretchedCm, longLimitCm) ? longMl : 0;
    }

    public double fillMl(double parenchymalFillPercent) {
        if (Exact.below(parenchymalFillPercent, emptyLimitPercent)) {
            return emptyMl;
        }
        return Exact.above(parenchymalFillPercent, fullLimitPercent) ? fullMl : 0;
    }

    /** Effect of one of the three readings, mL. */
    public double ml(Measure measure, double value) {
        return switch (measure) {
            case SKIN_STRETCH -> skinStretchMl(value);
            case NIPPLE_TO_FOLD_STRETCHED -> stretchedFoldMl(value);
            case PARENCHYMAL_FILL -> fillMl(value);
            default -> throw new IllegalArgumentException(measure + " adjusts no volume");
        };
    }

    /** The least and the greatest effect the reading could have had, mL: what stands in for one that was not taken. */
    public Band reach(Measure measure) {
        return switch (measure) {
            case SKIN_STRETCH -> new Band(Math.min(Math.min(tightMl, ordinaryMl), Math.min(looseMl, veryLooseMl)),
                    Math.max(Math.max(tightMl, ordinaryMl), Math.max(looseMl, veryLooseMl)));
            case NIPPLE_TO_FOLD_STRETCHED -> new Band(Math.min(0, longMl), Math.max(0, longMl));
            case PARENCHYMAL_FILL -> new Band(Math.min(0, Math.min(emptyMl, fullMl)),
                    Math.max(0, Math.max(emptyMl, fullMl)));
            default -> throw new IllegalArgumentException(measure + " adjusts no volume");
        };
    }

    /** The thresholds of a reading, ascending, in its own unit. */
    public double[] thresholds(Measure measure) {
        return switch (measure) {
            case SKIN_STRETCH -> new double[] {tightLimitCm, looseLimitCm, veryLooseLimitCm};
            case NIPPLE_TO_FOLD_STRETCHED -> new double[] {longLimitCm};
            case PARENCHYMAL_FILL -> new double[] {emptyLimitPercent, fullLimitPercent};
            default -> throw new IllegalArgumentException(measure + " adjusts no volume");
        };
    }

    /** The line of working for one reading. */
    public Working working(Measure measure, double value) {
        String id = switch (measure) {
            case SKIN_STRETCH -> Exact.below(value, tightLimitCm) ? "ADJ-01"
                    : Exact.above(value, veryLooseLimitCm) ? "ADJ-04"
                    : Exact.above(value, looseLimitCm) ? "ADJ-03" : "ADJ-02";
            case NIPPLE_TO_FOLD_STRETCHED -> "ADJ-05";
            case PARENCHYMAL_FILL -> Exact.below(value, emptyLimitPercent) ? "ADJ-06" : "ADJ-07";
            default -> throw new IllegalArgumentException(measure + " adjusts no volume");
        };
        double ml = ml(measure, value);
        return Working.by(constants.get(id), "adjustment for " + measure.words(), measure.words() + " "
                + Gate.figure(value) + " " + measure.unit() + ": " + (ml > 0 ? "+" : "") + Figures.ml(ml), ml, "mL");
    }
}
