package domefold.plan;

import domefold.engine.ErrorDraws;
import domefold.engine.ReadingError;
import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan under the reading error: the same draws that its shares come from, with what one more take of a reading would
 * change.
 *
 * <pre>
 *   error SD after n takes   s / sqrt(n)       so one more take leaves sqrt(n / (n + 1)) of it
 * </pre>
 *
 * The band keeps its width and moves with the drawn starting volume; label, route and contraindications carry no error.
 */
public final class Doubt {
    private final Map<Side, DoubtSide> sides = new EnumMap<>(Side.class);
    private final Map<Side, double[]> upperPinchCm = new EnumMap<>(Side.class);
    private final int draws;

    private Doubt(int draws) {
        this.draws = draws;
    }

    public static Doubt of(Plan plan, Constants constants, PlanOptions options) {
        int pinch = SideNumbers.VARYING.size();
        ErrorDraws errors = ErrorDraws.of(pinch + 1, options.draws(), options.seed());
        Doubt doubt = new Doubt(options.draws());
        for (Side side : Side.values()) {
            Readings readings = plan.of().side(side).readings();
            doubt.upperPinchCm.put(side, upperPinchCm(readings, errors, pinch, constants));
            plan.side(side).volumeBandMl().ifPresent(band -> doubt.sides.put(side, new DoubtSide(
                    new SideNumbers(readings, constants), band, new VerdictRule(constants, options.widthSchool()), errors,
                    kept(readings), constants)));
        }
        return doubt;
    }

    /** Share of its error SD that each reading keeps after one more take. */
    private static double[] kept(Readings readings) {
        double[] kept = new double[SideNumbers.VARYING.size()];
        for (int k = 0; k < kept.length; k++) {
            int takes = readings.get(SideNumbers.VARYING.get(k)).map(Reading::takes).orElse(1);
            kept[k] = Math.sqrt(takes / (takes + 1.0));
        }
        return kept;
    }

    public int draws() {
        return draws;
    }

    /** True where both sides have a band, so that there is something to draw. */
    public boolean judged() {
        return sides.size() == Side.values().length;
    }

    /** How sure the verdict on that side is; empty where nothing was judged or no reading could change it. */
    public Optional<VerdictDoubt> of(Candidate candidate, Side side) {
        DoubtSide drawn = sides.get(side);
        SideFit fit = candidate.side(side);
        if (drawn == null || ReasonCodes.refused(fit)) {
            return Optional.empty();
        }
        int[] counts = drawn.counts(candidate.device(), fit, 0);
        List<VerdictDoubt.Again> again = new ArrayList<>();
        for (int k = 0; k < SideNumbers.VARYING.size(); k++) {
            if (drawn.numbers().sd[k] > 0) {
                int[] then = drawn.counts(candidate.device(), fit, k + 1);
                again.add(new VerdictDoubt.Again(SideNumbers.VARYING.get(k),
                        1 - then[fit.verdict().ordinal()] / (double) draws));
            }
        }
        return Optional.of(new VerdictDoubt(side, fit.verdict(), counts[0] / (double) draws, counts[1] / (double) draws,
                counts[2] / (double) draws, again));
    }

    /** For each draw, true where the device is outside on neither side. */
    public boolean[] allowed(Candidate candidate) {
        boolean[] allowed = new boolean[draws];
        for (Side side : Side.values()) {
            if (!sides.containsKey(side) || ReasonCodes.refused(candidate.side(side))) {
                return allowed;
            }
        }
        Arrays.fill(allowed, true);
        sides.forEach((side, drawn) -> drawn.strikeOutside(candidate.device(), candidate.side(side), allowed));
        return allowed;
    }

    /** The width ceiling of that side in each draw, cm; not to be changed. */
    public double[] ceilingCm(Side side) {
        return sides.get(side).drawn().ceilingCm[0];
    }

    /** The upper pinch of that side in each draw, cm; NaN where it was not taken. Not to be changed. */
    public double[] upperPinchCm(Side side) {
        return upperPinchCm.get(side);
    }

    private static double[] upperPinchCm(Readings readings, ErrorDraws errors, int dimension, Constants constants) {
        Optional<Reading> reading = readings.get(Measure.UPPER_PINCH);
        double value = reading.map(Reading::value).orElse(Double.NaN);
        double sd = reading.map(taken -> ReadingError.sd(Measure.UPPER_PINCH, taken, constants)).orElse(0.0);
        double[] cm = new double[errors.size()];
        for (int i = 0; i < cm.length; i++) {
            cm[i] = Math.max(0, value + sd * errors.z(dimension, i));
        }
        return cm;
    }
}
