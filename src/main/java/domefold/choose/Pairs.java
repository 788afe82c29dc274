package domefold.choose;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Surface;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.patient.Case;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.DevicePair;
import domefold.plan.FillVerdict;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A device for each side, of one fill and surface, that leave the smallest difference between the sides.
 *
 * <pre>
 *   gap = d + L - R                    d     natural difference, left less right, mL
 *                                      L, R  volumes of the devices, mL; saline to the millilitre inside the label's range
 * </pre>
 *
 * Never outside on either side. In this order: fits before tight; the gap where it may be seen (not below ASY-10); the
 * same width class before another; the gap; the difference of the listed projections; the mean volume's distance from the
 * size wished, else from the middle of the starting volumes. Of all fills that leave the same gap the smallest.
 *
 * <p>A difference that is unknown, not seen or not measured is not chased: the pairs are then of one device at one fill.
 */
public final class Pairs {
    private Pairs() {}

    private record Kind(Fill fill, Surface surface) {
        // Written out: those the compiler leaves to run time cost the first plan more than all its look-ups.
        @Override
        public boolean equals(Object other) {
            return other instanceof Kind kind && kind.fill == fill && kind.surface == surface;
        }

        @Override
        public int hashCode() {
            return fill.hashCode() * 31 + surface.hashCode();
        }
    }

    /** The pairs of a plan. */
    public static List<DevicePair> of(Plan plan, Constants constants) {
        return of(plan.of(), plan.left(), plan.right(), plan.candidates(), constants);
    }

    /**
     * PAIR-KEPT pairs of each fill and surface, and where those fit and still leave what may be seen, the tight pair that
     * leaves less; the whole list in the order above. Empty without both volume bands.
     */
    public static List<DevicePair> of(Case of, SideLimits left, SideLimits right, List<Candidate> candidates,
            Constants constants) {
        return of(of, left, right, candidates, (int) constants.value("PAIR-KEPT"), constants);
    }

    /** The same with another number kept. */
    public static List<DevicePair> of(Case of, SideLimits left, SideLimits right, List<Candidate> candidates, int kept,
            Constants constants) {
        if (left.volumeBandMl().isEmpty() || right.volumeBandMl().isEmpty()) {
            return List.of();
        }
        NaturalDifference difference = NaturalDifference.of(of, constants);
        PairRule rule = new PairRule(difference, aimMl(of, left, right), constants);
        FillVerdict onLeft = new FillVerdict(of.left().readings(), left, constants);
        FillVerdict onRight = new FillVerdict(of.right().readings(), right, constants);
        Map<Kind, Half[]> kinds = halves(candidates, onLeft, onRight);
        List<PairRule.Scored> found = new ArrayList<>();
        for (Half[] halves : kinds.values()) {
            found.addAll(rule.closest(halves, kept));
        }
        found.sort(rule.order());
        PairWords words = new PairWords(difference, constants);
        return Lists.map(found, words::of);
    }

    /** Devices that may lie on at least one side, by kind. */
    private static Map<Kind, Half[]> halves(List<Candidate> candidates, FillVerdict onLeft, FillVerdict onRight) {
        Map<Kind, List<Half>> byKind = new LinkedHashMap<>();
        for (Candidate candidate : candidates) {
            Device device = candidate.device();
            Half half = new Half(device, FillRun.of(device, onLeft.of(device, candidate.side(Side.LEFT))),
                    FillRun.of(device, onRight.of(device, candidate.side(Side.RIGHT))));
            if (half.onLeft().length + half.onRight().length > 0) {
                byKind.computeIfAbsent(new Kind(device.fill(), device.surface()), kind -> new ArrayList<>()).add(half);
            }
        }
        Map<Kind, Half[]> arrays = new LinkedHashMap<>();
        byKind.forEach((kind, halves) -> arrays.put(kind, halves.toArray(new Half[0])));
        return arrays;
    }

    private static double aimMl(Case of, SideLimits left, SideLimits right) {
        return of.wishes().sizeWishMl().orElse((startMl(left) + startMl(right)) / 2);
    }

    private static double startMl(SideLimits limits) {
        OptionalDouble start = limits.startingVolumeMl();
        Band band = limits.volumeBandMl().orElseThrow();
        return start.orElse((band.low() + band.high()) / 2);
    }

    /** A device with the fills at which it may lie on her left and on her right. */
    record Half(Device device, FillRun[] onLeft, FillRun[] onRight) {}

    /** Neighbouring fills of one verdict, ends included; in steps of a millilitre. */
    record FillRun(Verdict verdict, double lowMl, double highMl) {
        static FillRun[] of(Device device, FillVerdict.OfDevice verdicts) {
            double lowMl = device.labelFillMl().map(band -> Math.ceil(band.low())).orElse(device.nominalMl());
            double highMl = device.labelFillMl().map(band -> Math.floor(band.high())).orElse(device.nominalMl());
            List<FillRun> runs = new ArrayList<>();
            double from = lowMl;
            Verdict running = lowMl <= highMl ? verdicts.at(lowMl) : Verdict.OUTSIDE;
            for (double ml = lowMl + 1; ml <= highMl; ml++) {
                Verdict verdict = verdicts.at(ml);
                if (verdict != running) {
                    add(runs, running, from, ml - 1);
                    from = ml;
                    running = verdict;
                }
            }
            add(runs, running, from, highMl);
            return runs.toArray(new FillRun[0]);
        }

        private static void add(List<FillRun> runs, Verdict verdict, double lowMl, double highMl) {
            if (verdict != Verdict.OUTSIDE && lowMl <= highMl) {
                runs.add(new FillRun(verdict, lowMl, highMl));
            }
        }
    }
}
