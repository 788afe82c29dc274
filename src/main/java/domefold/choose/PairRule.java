package domefold.choose;

import domefold.basics.Lists;
import domefold.engine.Exact;
import domefold.evidence.Constants;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which of two pairs leaves less between the sides; see {@link Pairs} for the order. */
final class PairRule {
    private static final int SEEN = 1;

    private final boolean chased;
    private final double differenceMl;
    private final boolean leftIsLarger;
    private final double seenFromMl;
    private final double widthClassCm;
    private final double aimMl;

    PairRule(NaturalDifference difference, double aimMl, Constants constants) {
        chased = difference.chased();
        differenceMl = difference.chased() ? difference.differenceMl().orElseThrow() : 0;
        leftIsLarger = differenceMl >= 0;
        seenFromMl = constants.value("ASY-10");
        widthClassCm = constants.value("PAIR-WIDTH-CLASS");
        this.aimMl = aimMl;
    }

    /**
     * Two halves at their fills, with what they are ordered by.
     *
     * @param gapMl natural difference and devices together, left less right; 0 where the difference is not chased
     * @param key the numbers compared, the first first; smaller is earlier
     */
    record Scored(Pairs.Half left, Pairs.Half right, double leftMl, double rightMl, Verdict verdict, double gapMl,
            double[] key) {}

    /** The order of the pairs. The last resort is the id on the larger side, so that exchanged sides give exchanged pairs. */
    Comparator<Scored> order() {
        return (one, other) -> {
            int byKey = compare(one.key(), other.key());
            if (byKey != 0) {
                return byKey;
            }
            int larger = larger(one).compareTo(larger(other));
            return larger != 0 ? larger : smaller(one).compareTo(smaller(other));
        };
    }

    private String larger(Scored pair) {
        return (leftIsLarger ? pair.left() : pair.right()).device().id();
    }

    private String smaller(Scored pair) {
        return (leftIsLarger ? pair.right() : pair.left()).device().id();
    }

    /**
     * The first pairs of one kind in that order; where all of them fit and leave what may be seen, one tight pair more, if
     * one leaves less.
     */
    List<Scored> closest(Pairs.Half[] halves, int kept) {
        List<Scored> closest = closest(halves, kept, Verdict.FITS);
        boolean seen = !closest.isEmpty() && closest.get(0).key()[SEEN] > 0;
        if (chased && seen && closest.get(closest.size() - 1).verdict() == Verdict.FITS) {
            closest.addAll(Lists.where(closest(halves, 1, Verdict.TIGHT), tight -> tight.key()[SEEN] < closest.get(0).key()[SEEN]));
        }
        return closest;
    }

    /** @param from FITS for any verdict, TIGHT for tight pairs only */
    private List<Scored> closest(Pairs.Half[] halves, int kept, Verdict from) {
        Comparator<Scored> order = order();
        List<Scored> closest = new ArrayList<>();
        for (Pairs.Half left : halves) {
            for (Pairs.Half right : halves) {
                if ((chased || left == right) && left.onLeft().length > 0 && right.onRight().length > 0) {
                    best(left, right, closest.size() < kept ? null : closest.get(kept - 1).key(), closest, order,
                            kept, from);
                }
            }
        }
        return closest;
    }

    /** The best fills of two devices, put into its place if that is among the first. */
    private void best(Pairs.Half left, Pairs.Half right, double[] last, List<Scored> closest, Comparator<Scored> order,
            int kept, Verdict from) {
        double[] bestKey = null;
        double bestL = 0;
        double bestR = 0;
        for (Pairs.FillRun l : left.onLeft()) {
            for (Pairs.FillRun r : right.onRight()) {
                double apart = apart(l, r);
                if (!chased && apart != 0 || l.verdict().and(r.verdict()).ordinal() < from.ordinal()) {
                    continue;
                }
                double leftMl = Math.max(l.lowMl(), r.lowMl() + apart);
                double rightMl = leftMl - apart;
                if (last != null && surelyAfter(l, r, apart, last)) {
                    continue;
                }
                double[] key = key(left, right, l.verdict().and(r.verdict()), leftMl, rightMl);
                if (bestKey == null || compare(key, bestKey) < 0) {
                    bestKey = key;
                    bestL = leftMl;
                    bestR = rightMl;
                }
            }
        }
        if (bestKey == null || last != null && compare(bestKey, last) > 0) {
            return;
        }
        Scored pair = new Scored(left, right, bestL, bestR, bestKey[0] == 0 ? Verdict.FITS : Verdict.TIGHT,
                differenceMl + bestL - bestR, bestKey);
        int at = 0;
        while (at < closest.size() && order.compare(closest.get(at), pair) < 0) {
            at++;
        }
        closest.add(at, pair);
        if (closest.size() > kept) {
            closest.remove(kept);
        }
    }

    /** True where the verdict or the seen gap alone puts the fills behind the last pair kept. */
    private boolean surelyAfter(Pairs.FillRun l, Pairs.FillRun r, double apart, double[] last) {
        int verdict = l.verdict().and(r.verdict()).ordinal();
        return verdict > last[0] || verdict == last[0] && seenMl(Exact.clean(Math.abs(differenceMl + apart))) > last[SEEN];
    }

    /** How far apart two fills of these runs are when they leave the least: left less right. */
    private double apart(Pairs.FillRun l, Pairs.FillRun r) {
        double least = l.lowMl() - r.highMl();
        double most = l.highMl() - r.lowMl();
        double wanted = -differenceMl;
        if (wanted <= least) {
            return least;
        }
        if (wanted >= most) {
            return most;
        }
        double below = least + Math.floor(wanted - least);
        double above = Math.min(most, below + 1);
        double toBelow = Exact.clean(wanted - below);
        double toAbove = Exact.clean(above - wanted);
        return toBelow < toAbove || toBelow == toAbove && Math.abs(below) <= Math.abs(above) ? below : above;
    }

    private double[] key(Pairs.Half left, Pairs.Half right, Verdict verdict, double leftMl, double rightMl) {
        double gap = Exact.clean(Math.abs(differenceMl + leftMl - rightMl));
        double widths = Math.abs(left.device().widthCm() - right.device().widthCm());
        return new double[] {verdict.ordinal(), seenMl(gap), Exact.above(widths, widthClassCm) ? 1 : 0, gap,
            Exact.clean(Math.abs(left.device().projectionCm() - right.device().projectionCm())),
            Exact.clean(Math.abs((leftMl + rightMl) / 2 - aimMl))};
    }

    /** A gap below ASY-10 is not seen and counts as none. */
    private double seenMl(double gapMl) {
        return Exact.below(gapMl, seenFromMl) ? 0 : gapMl;
    }

    static int compare(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            int order = Double.compare(one[i], other[i]);
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
