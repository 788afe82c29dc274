package domefold.choose;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.DevicePair;
import domefold.plan.FillVerdict;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PairsPropertyTest {
    private static final long SEED = 20261125L;
    private static final int KEPT = 3;

    private static Plan random(Random random, boolean wholeMl) {
        double left = 250 + random.nextInt(150) + (wholeMl ? 0 : random.nextDouble());
        double right = 250 + random.nextInt(150) + (wholeMl ? 0 : random.nextDouble());
        Case of = Invented.of(
                Invented.SIDE.with(Measure.BREAST_VOLUME, left).with(Measure.BASE_WIDTH, 12 + random.nextDouble()),
                Invented.SIDE.with(Measure.BREAST_VOLUME, right).with(Measure.BASE_WIDTH, 12 + random.nextDouble()));
        return Invented.plan(of, Invented.list(Invented.random(random, 25)));
    }

    /** Every device against every device at every fill, nothing skipped: the five numbers of each pair, by kind, in order. */
    private static Map<String, List<double[]>> exhaustive(Plan plan, Verdict from) {
        NaturalDifference difference = NaturalDifference.of(plan.of(), Invented.CONSTANTS);
        FillVerdict onLeft = new FillVerdict(plan.of().left().readings(), plan.left(), Invented.CONSTANTS);
        FillVerdict onRight = new FillVerdict(plan.of().right().readings(), plan.right(), Invented.CONSTANTS);
        double d = difference.chased() ? difference.differenceMl().orElseThrow() : 0;
        Map<String, List<double[]>> found = new HashMap<>();
        for (Candidate left : plan.candidates()) {
            for (Candidate right : plan.candidates()) {
                boolean allowed = difference.chased() || left == right;
                if (!allowed || left.device().fill() != right.device().fill() || left.device().surface() != right.device().surface()) {
                    continue;
                }
                double[] best = null;
                for (double l : fills(left.device())) {
                    for (double r : fills(right.device())) {
                        Verdict verdict = onLeft.of(left.device(), left.left()).at(l)
                                .and(onRight.of(right.device(), right.right()).at(r));
                        if (verdict != Verdict.OUTSIDE && verdict.and(from) == verdict && (difference.chased() || l == r)) {
                            double[] key = key(left.device(), right.device(), verdict, d + l - r);
                            best = best == null || PairRule.compare(key, best) < 0 ? key : best;
                        }
                    }
                }
                if (best != null) {
                    found.computeIfAbsent(left.device().fill() + " " + left.device().surface(), k -> new ArrayList<>()).add(best);
                }
            }
        }
        found.values().forEach(keys -> keys.sort(PairRule::compare));
        return found;
    }

    private static double[] key(Device left, Device right, Verdict verdict, double gap) {
        double size = Math.rint(Math.abs(gap) * 1e9) / 1e9;
        boolean sameClass = Math.abs(left.widthCm() - right.widthCm()) <= 0.5 + 1e-9;
        return new double[] {verdict == Verdict.FITS ? 0 : 1, size < 30 ? 0 : size, sameClass ? 0 : 1, size,
            Math.rint(Math.abs(left.projectionCm() - right.projectionCm()) * 1e9) / 1e9};
    }

    private static List<Double> fills(Device device) {
        List<Double> fills = new ArrayList<>();
        double high = device.labelFillMl().map(band -> band.high()).orElse(device.nominalMl());
        for (double ml = device.nominalMl(); ml <= high; ml++) {
            fills.add(ml);
        }
        return fills;
    }

    private static double[] key(DevicePair pair, Plan plan) {
        NaturalDifference difference = NaturalDifference.of(plan.of(), Invented.CONSTANTS);
        double gap = difference.chased() ? pair.volumeGapMl().orElseThrow() : 0;
        return key(device(plan, pair.leftId()), device(plan, pair.rightId()), pair.verdict(), gap);
    }

    private static Device device(Plan plan, String id) {
        return Difference.find(plan, id).orElseThrow().device();
    }

    @Test
    void noPairLeavesLessThanTheOnesFoundBySearchingThemAll() {
        Random random = new Random(SEED);
        int pairs = 0;
        int tight = 0;
        for (int trial = 0; trial < 20; trial++) {
            Plan plan = random(random, trial % 2 == 0);
            Map<String, List<double[]>> all = exhaustive(plan, Verdict.FITS);
            Map<String, List<double[]>> allTight = exhaustive(plan, Verdict.TIGHT);
            Map<String, List<double[]>> found = new HashMap<>();
            for (DevicePair pair : Pairs.of(plan.of(), plan.left(), plan.right(), plan.candidates(), KEPT, Invented.CONSTANTS)) {
                Device left = device(plan, pair.leftId());
                found.computeIfAbsent(left.fill() + " " + left.surface(), k -> new ArrayList<>()).add(key(pair, plan));
                pairs++;
            }
            String at = "seed " + SEED + ", trial " + trial;
            assertEquals(all.keySet(), found.keySet(), at);
            for (String kind : all.keySet()) {
                List<double[]> expected = all.get(kind).subList(0, Math.min(KEPT, all.get(kind).size()));
                int more = tightThatLeavesLess(allTight.getOrDefault(kind, List.of()), expected);
                assertEquals(expected.size() + more, found.get(kind).size(), at);
                if (more == 1) {
                    assertArrayEquals(allTight.get(kind).get(0), found.get(kind).get(expected.size()), 1e-9, at);
                }
                tight += more;
                for (int i = 0; i < expected.size(); i++) {
                    assertArrayEquals(expected.get(i), found.get(kind).get(i), 1e-9, at + ", " + kind + ", place " + i);
                }
            }
        }
        assertTrue(tight > 0, "no tight pair was worth adding");
        assertTrue(pairs > 60, "only " + pairs + " pairs were compared");
    }

    /** One where the pairs kept all fit, leave at least 30 mL, and a tight pair leaves less of that. */
    private static int tightThatLeavesLess(List<double[]> tight, List<double[]> kept) {
        boolean seen = kept.get(0)[1] > 0 && kept.get(kept.size() - 1)[0] == 0;
        return seen && tight.stream().anyMatch(key -> key[1] < kept.get(0)[1]) ? 1 : 0;
    }

    @Test
    void exchangedSidesGiveExchangedPairs() {
        Random random = new Random(SEED + 1);
        for (int trial = 0; trial < 25; trial++) {
            Plan plan = random(random, trial % 2 == 0);
            Plan mirrored = Invented.plan(plan.of().mirrored(), Invented.list(plan.candidates().stream().map(Candidate::device).toList()));
            List<String> one = plan.pairs().stream().map(p -> p.leftId() + p.leftFillMl() + p.rightId() + p.rightFillMl()
                    + p.volumeGapMl().orElseThrow() + p.verdict()).toList();
            List<String> other = mirrored.pairs().stream().map(p -> p.rightId() + p.rightFillMl() + p.leftId()
                    + p.leftFillMl() + (0 - p.volumeGapMl().orElseThrow()) + p.verdict()).toList();
            assertEquals(one, other, "seed " + (SEED + 1) + ", trial " + trial);
        }
    }

    /** Twins tie in everything but their ids. */
    @Test
    void exchangedSidesGiveExchangedPairsOfTwinsToo() {
        List<Device> twins = new ArrayList<>();
        for (String id : List.of("a", "b", "c", "d")) {
            boolean larger = id.compareTo("c") >= 0;
            twins.add(new Device(id, "invented", Fill.GEL, Surface.SMOOTH, Profile.FULL, larger ? 320 : 280,
                    Optional.empty(), larger ? 11.8 : 11.4, larger ? 11.8 : 11.4, 4.4));
        }
        Case of = Invented.withVolumes(300, 340);
        List<String> one = Invented.plan(of, Invented.list(twins)).pairs().stream().map(p -> p.leftId() + p.rightId()).toList();
        List<String> other = Invented.plan(of.mirrored(), Invented.list(twins)).pairs().stream()
                .map(p -> p.rightId() + p.leftId()).toList();
        assertEquals(List.of("ca", "da", "cb", "db"), one);
        assertEquals(one, other);
    }

    @Test
    void noPairIsOutsideOnASideAndEveryFillIsOnTheLabel() {
        Random random = new Random(SEED + 2);
        for (int trial = 0; trial < 25; trial++) {
            Plan plan = random(random, false);
            for (DevicePair pair : plan.pairs()) {
                String at = "seed " + (SEED + 2) + ", trial " + trial;
                for (Side side : Side.values()) {
                    boolean onLeft = side == Side.LEFT;
                    Candidate candidate = Difference.find(plan, onLeft ? pair.leftId() : pair.rightId()).orElseThrow();
                    double fill = onLeft ? pair.leftFillMl() : pair.rightFillMl();
                    assertTrue(candidate.device().labelFillMl().map(b -> b.includes(fill)).orElse(fill == candidate.device().nominalMl()), at);
                    Verdict verdict = new FillVerdict(plan.of().side(side).readings(), plan.side(side), Invented.CONSTANTS)
                            .of(candidate.device(), candidate.side(side)).at(fill);
                    assertTrue(verdict != Verdict.OUTSIDE, at);
                    if (pair.verdict() == Verdict.FITS) {
                        assertEquals(Verdict.FITS, verdict, at);
                    }
                }
            }
        }
    }

    @Test
    void atItsNominalVolumeADeviceHasTheVerdictOfThePlan() {
        Random random = new Random(SEED + 3);
        int outside = 0;
        for (int trial = 0; trial < 20; trial++) {
            Plan plan = random(random, false);
            for (Candidate candidate : plan.candidates()) {
                for (Side side : Side.values()) {
                    Verdict verdict = new FillVerdict(plan.of().side(side).readings(), plan.side(side), Invented.CONSTANTS)
                            .of(candidate.device(), candidate.side(side)).at(candidate.device().nominalMl());
                    assertEquals(candidate.side(side).verdict(), verdict, "seed " + (SEED + 3) + ", trial " + trial);
                    outside += verdict == Verdict.OUTSIDE ? 1 : 0;
                }
            }
        }
        assertTrue(outside > 50 && outside < 900, "verdicts of one kind only: " + outside);
    }

    @Test
    void aHigherFillIsJudgedAsADeviceOfThatVolumeWouldBe() {
        Plan plan = Invented.plan(Invented.withVolumes(300, 350));
        int judged = 0;
        for (Candidate candidate : plan.candidates().stream().filter(c -> c.device().fill() == Fill.SALINE)
                .sorted(Comparator.comparing(c -> c.device().id())).toList()) {
            Device d = candidate.device();
            double top = d.labelFillMl().orElseThrow().high();
            Device fuller = new Device("fuller", d.line(), d.fill(), d.surface(), d.profile(), top, d.labelFillMl(),
                    d.widthCm(), d.heightCm(), d.projectionCm());
            if (top > 400) {
                continue;
            }
            Verdict asOwnDevice = Invented.plan(plan.of(), Invented.list(List.of(fuller))).candidates().get(0).left().verdict();
            assertEquals(asOwnDevice, new FillVerdict(plan.of().left().readings(), plan.left(), Invented.CONSTANTS)
                    .of(d, candidate.left()).at(top), d.id());
            judged++;
        }
        assertTrue(judged > 10, "only " + judged);
    }
}
