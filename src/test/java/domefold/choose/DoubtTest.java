package domefold.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.engine.StartingVolume;
import domefold.engine.VolumeAdjustments;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.ReadBy;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Doubt;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Verdict;
import domefold.plan.VerdictDoubt;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DoubtTest {
    private static final Constants C = Invented.CONSTANTS;
    private static final Case ORDINARY = Invented.of(Invented.SIDE, Invented.SIDE.with(Measure.BASE_WIDTH, 12.1));
    private static final Plan PLAN = Invented.plan(ORDINARY);
    private static final Doubt DOUBT = Doubt.of(PLAN, C, PlanOptions.DEFAULT);

    @Test
    void itsSharesAreThoseOfThePlan() {
        int seen = 0;
        for (Candidate candidate : PLAN.candidates()) {
            for (Side side : Side.values()) {
                VerdictDoubt doubt = DOUBT.of(candidate, side).orElseThrow();
                assertEquals(candidate.side(side).fitShare().orElseThrow(), doubt.fits(), 1e-12, candidate.device().id());
                assertEquals(candidate.side(side).stability().orElseThrow(), doubt.fits() + doubt.tight(), 1e-12);
                assertEquals(1, doubt.fits() + doubt.tight() + doubt.outside(), 1e-12);
                seen += doubt.changes() > 0.2 ? 1 : 0;
            }
        }
        assertTrue(seen > 10, "no verdict is in doubt: " + seen);
    }

    /**
     * The same shares by plain random errors and the rule of the verdict written out once more. Both are off by their own
     * error; four standard errors of the random one and half a percent for the even one are allowed.
     */
    @Test
    void stabilityIsThatOfPlainMonteCarloWithinItsError() {
        int draws = 20_000;
        List<Candidate> some = PLAN.candidates().stream().filter(c -> Math.abs(c.left().fitShare().orElseThrow() - 0.5) < 0.45)
                .limit(8).toList();
        assertEquals(8, some.size());
        for (Measure again : new Measure[] {null, Measure.BASE_WIDTH, Measure.SKIN_STRETCH, Measure.NIPPLE_TO_FOLD_STRETCHED}) {
            for (Candidate candidate : some) {
                double[] shares = monteCarlo(candidate, again, draws, 1234567L);
                VerdictDoubt doubt = DOUBT.of(candidate, Side.LEFT).orElseThrow();
                String at = candidate.device().id() + ", again " + again;
                if (again == null) {
                    near(shares[0], doubt.fits(), draws, at);
                    near(shares[1], doubt.tight(), draws, at);
                } else {
                    double changes = doubt.again().stream().filter(a -> a.measure() == again).findFirst().orElseThrow().changes();
                    near(1 - shares[doubt.verdict().ordinal()], changes, draws, at);
                }
            }
        }
    }

    private static void near(double random, double even, int draws, String at) {
        assertEquals(random, even, 4 * Math.sqrt(random * (1 - random) / draws) + 0.005, at);
    }

    private static double[] monteCarlo(Candidate candidate, Measure again, int draws, long seed) {
        Random random = new Random(seed);
        Readings r = ORDINARY.left().readings();
        StartingVolume start = StartingVolume.of(C);
        VolumeAdjustments adjust = VolumeAdjustments.of(C);
        Band band = PLAN.left().volumeBandMl().orElseThrow();
        double planned = PLAN.left().startingVolumeMl().orElseThrow();
        double[] shares = new double[3];
        double w = candidate.device().widthCm();
        double v = candidate.device().nominalMl();
        boolean rows = v >= 200 && v <= 400;
        double target = candidate.left().foldTargetCm().orElseThrow()
                - (rows ? 0 : 0.5 * r.value(Measure.FOLD_PINCH).orElseThrow());
        for (int i = 0; i < draws; i++) {
            Map<Measure, Double> x = new EnumMap<>(Measure.class);
            for (Measure measure : List.of(Measure.BASE_WIDTH, Measure.MEDIAL_PINCH, Measure.LATERAL_PINCH,
                    Measure.NIPPLE_TO_FOLD_STRETCHED, Measure.SKIN_STRETCH, Measure.PARENCHYMAL_FILL, Measure.FOLD_PINCH)) {
                double sd = C.value("SD-" + measure.name().replace('_', '-')) * (measure == again ? Math.sqrt(0.5) : 1);
                double value = Math.max(0, r.value(measure).orElseThrow() + sd * random.nextGaussian());
                x.put(measure, measure == Measure.PARENCHYMAL_FILL ? Math.min(100, value) : value);
            }
            double base = x.get(Measure.BASE_WIDTH);
            double ceiling = base - 0.5 * (x.get(Measure.MEDIAL_PINCH) + x.get(Measure.LATERAL_PINCH));
            double moved = start.ml(base) + adjust.skinStretchMl(x.get(Measure.SKIN_STRETCH))
                    + adjust.stretchedFoldMl(x.get(Measure.NIPPLE_TO_FOLD_STRETCHED))
                    + adjust.fillMl(x.get(Measure.PARENCHYMAL_FILL)) - planned;
            double lowering = target + (rows ? 0 : 0.5 * x.get(Measure.FOLD_PINCH)) - x.get(Measure.NIPPLE_TO_FOLD_STRETCHED);
            double over = Math.max(v - band.high() - moved, band.low() + moved - v);
            boolean outside = w > base || over > 60 || lowering > 2;
            boolean tight = w > ceiling + 1 || w < ceiling - 1 || over > 0 || lowering > 1.5;
            shares[outside ? 2 : tight ? 1 : 0] += 1.0 / draws;
        }
        return shares;
    }

    @Test
    void theReadingWorthTakingAgainIsTheOneThatBuysMost() {
        boolean found = false;
        for (Candidate candidate : PLAN.candidates()) {
            VerdictDoubt doubt = DOUBT.of(candidate, Side.LEFT).orElseThrow();
            if (doubt.worthwhile().isPresent()) {
                VerdictDoubt.Again best = doubt.worthwhile().get();
                doubt.again().forEach(take -> assertTrue(doubt.bought(take) <= doubt.bought(best)));
                assertTrue(doubt.text().contains(best.measure().words() + " read once more"), doubt.text());
                found = true;
            }
        }
        assertTrue(found);
    }

    @Test
    void aReadingTakenTwiceAlreadyBuysLessTheThirdTime() {
        Readings twice = Invented.SIDE.with(Measure.BASE_WIDTH, new Reading(12.5, "12.5", ReadBy.HAND, 2));
        Plan plan = Invented.plan(Invented.of(twice, twice));
        Doubt doubt = Doubt.of(plan, C, PlanOptions.DEFAULT);
        double once = 0;
        double again = 0;
        for (int i = 0; i < plan.candidates().size(); i++) {
            once += bought(DOUBT.of(PLAN.candidates().get(i), Side.LEFT).orElseThrow());
            again += bought(doubt.of(plan.candidates().get(i), Side.LEFT).orElseThrow());
        }
        assertTrue(once > again && again > 0, once + " and " + again);
    }

    private static double bought(VerdictDoubt doubt) {
        return doubt.bought(doubt.again().stream().filter(a -> a.measure() == Measure.BASE_WIDTH).findFirst().orElseThrow());
    }

    @Test
    void whatNoReadingCanChangeIsNotInDoubt() {
        Map<HealthQuestion, Boolean> history = new EnumMap<>(HealthQuestion.class);
        for (HealthQuestion question : HealthQuestion.values()) {
            history.put(question, true);
        }
        Plan blocked = Invented.plan(ORDINARY.withHistory(history));
        Doubt doubt = Doubt.of(blocked, C, PlanOptions.DEFAULT);
        for (Candidate candidate : blocked.candidates()) {
            assertEquals(Verdict.OUTSIDE, candidate.left().verdict());
            assertTrue(doubt.of(candidate, Side.LEFT).isEmpty());
        }
        assertTrue(OrderDoubt.of(blocked, doubt, Weights.of(ORDINARY.wishes(), C), C).isEmpty());
        assertFalse(Doubt.of(Invented.plan(ORDINARY.withSide(Side.LEFT, domefold.patient.Breast.UNSEEN)), C,
                PlanOptions.DEFAULT).judged());
    }

    /** The order of each draw made anew by the plain order, from rows whose margin and ripple are those of the draw. */
    @Test
    void theDrawnOrderIsTheOrderMadeAnewInEachDraw() {
        PlanOptions few = new PlanOptions(PlanOptions.DEFAULT.widthSchool(), 64, PlanOptions.DEFAULT.seed());
        Plan plan = new domefold.advise.Advisor(Invented.LADDER, Invented.SHIPPED, few).apply(ORDINARY);
        Doubt doubt = Doubt.of(plan, C, few);
        Weights weights = Weights.of(ORDINARY.wishes(), C).with(Criterion.EDGES, 4);
        OrderDoubt order = OrderDoubt.of(plan, doubt, weights, C).orElseThrow();
        Map<String, Double> first = new HashMap<>();
        Map<String, List<Integer>> ranks = new HashMap<>();
        List<Profiled> rows = CriteriaTable.of(plan, C, java.util.Optional.empty());
        for (int i = 0; i < few.draws(); i++) {
            List<Profiled> drawn = new ArrayList<>();
            for (Profiled row : rows) {
                if (doubt.allowed(row.candidate())[i]) {
                    drawn.add(drawn(row, doubt, i));
                }
            }
            for (Order.Place place : Order.of(drawn, weights, C)) {
                ranks.computeIfAbsent(place.row().id(), id -> new ArrayList<>()).add(place.rank());
                if (place.rank() == 1) {
                    first.merge(place.row().id(), 1.0 / few.draws(), Double::sum);
                }
            }
        }
        for (OrderDoubt.Standing standing : order.standings()) {
            assertEquals(first.getOrDefault(standing.id(), 0.0), standing.first(), 1e-12, standing.id());
            List<Integer> sorted = ranks.getOrDefault(standing.id(), List.of()).stream().sorted().toList();
            assertEquals(1 - sorted.size() / 64.0, standing.outside(), 1e-12, standing.id());
            if (!sorted.isEmpty()) {
                assertEquals((double) sorted.get((int) Math.round(0.05 * (sorted.size() - 1))), standing.ranks().low());
                assertEquals((double) sorted.get((int) Math.round(0.95 * (sorted.size() - 1))), standing.ranks().high());
            }
        }
        assertTrue(order.firstStaysFirst() < 1 && order.firstStaysFirst() > 0, order.text());
        assertTrue(order.text().contains(order.standings().get(0).id()), order.text());
    }

    private static Profiled drawn(Profiled row, Doubt doubt, int i) {
        Map<Criterion, Double> values = new EnumMap<>(row.values());
        double ceiling = Math.min(doubt.ceilingCm(Side.LEFT)[i], doubt.ceilingCm(Side.RIGHT)[i]);
        values.put(Criterion.TISSUE_MARGIN, ceiling - row.candidate().device().widthCm());
        OptionalDouble edges = row.value(Criterion.EDGES);
        double pinch = Math.min(doubt.upperPinchCm(Side.LEFT)[i], doubt.upperPinchCm(Side.RIGHT)[i]);
        edges.ifPresent(now -> values.put(Criterion.EDGES, now * Math.exp(0.5 * (2.6 - pinch) / 1.0)));
        return new Profiled(row.candidate(), values);
    }
}
