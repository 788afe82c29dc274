package domefold.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.plan.Candidate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Orders of random rows: devices of the invented list with criteria drawn at random, some of them not told. */
class OrderPropertyTest {
    private static final long SEED = 20261125L;
    private static final List<Candidate> DEVICES = Invented.plan(Invented.of(Invented.SIDE, Invented.SIDE)).candidates();

    private static double within(Criterion criterion, Random random) {
        double low = criterion.low(Invented.CONSTANTS);
        double high = criterion.high(Invented.CONSTANTS);
        return low + (high - low) * (random.nextInt(13) - 1) / 11.0;
    }

    private static List<Profiled> rows(Random random, int count, double told) {
        List<Profiled> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<Criterion, Double> values = new EnumMap<>(Criterion.class);
            for (Criterion criterion : Criterion.values()) {
                if (random.nextDouble() < told) {
                    values.put(criterion, within(criterion, random));
                }
            }
            rows.add(new Profiled(DEVICES.get(i), values));
        }
        return rows;
    }

    private static Weights weights(Random random) {
        Weights weights = new Weights(Map.of());
        for (Criterion criterion : Criterion.values()) {
            weights = weights.with(criterion, random.nextInt(6));
        }
        return weights;
    }

    private static Map<String, Integer> ranks(List<Profiled> rows, Weights weights) {
        Map<String, Integer> ranks = new HashMap<>();
        Order.of(rows, weights, Invented.CONSTANTS).forEach(place -> ranks.put(place.row().id(), place.rank()));
        return ranks;
    }

    @Test
    void aHigherWeightNeverPutsTheDeviceThatIsBetterInItBehindOneThatIsOtherwiseEqual() {
        Random random = new Random(SEED);
        int ahead = 0;
        for (int trial = 0; trial < 400; trial++) {
            List<Profiled> rows = rows(random, 12, 1);
            Criterion raised = Criterion.values()[random.nextInt(Criterion.values().length)];
            Map<Criterion, Double> better = new EnumMap<>(rows.get(0).values());
            double step = (raised.high(Invented.CONSTANTS) - raised.low(Invented.CONSTANTS)) * (0.1 + random.nextDouble());
            better.merge(raised, raised.moreIsBetter() ? step : -step, Double::sum);
            rows.set(1, new Profiled(DEVICES.get(1), better));
            Weights weights = weights(random);
            String at = "seed " + SEED + ", trial " + trial;
            for (double weight = 0; weight <= 5; weight++) {
                Map<String, Integer> ranks = ranks(rows, weights.with(raised, weight));
                int good = ranks.get(rows.get(1).id());
                int plain = ranks.get(rows.get(0).id());
                assertTrue(good <= plain, at + ", weight " + weight);
                assertTrue(weight > 0 || good == plain, at + ": equal in all that counts is a tie");
                ahead += good < plain ? 1 : 0;
            }
        }
        assertTrue(ahead > 500, "never ahead: " + ahead);
    }

    @Test
    void anAddedDeviceLeavesTheOrderOfTheOthers() {
        Random random = new Random(SEED + 1);
        for (int trial = 0; trial < 400; trial++) {
            List<Profiled> rows = rows(random, 15, 0.8);
            Weights weights = weights(random);
            List<Profiled> with = new ArrayList<>(rows);
            with.add(random.nextInt(16), new Profiled(DEVICES.get(20), rows(random, 1, 0.5).get(0).values()));
            Map<String, Integer> before = ranks(rows, weights);
            Map<String, Integer> after = ranks(with, weights);
            for (Profiled one : rows) {
                for (Profiled other : rows) {
                    assertEquals(Integer.signum(before.get(one.id()) - before.get(other.id())),
                            Integer.signum(after.get(one.id()) - after.get(other.id())), "seed " + (SEED + 1) + ", trial " + trial);
                }
            }
        }
    }

    @Test
    void equalDevicesShareAPlaceAndTheNextPlaceIsLeftOut() {
        Random random = new Random(SEED + 2);
        for (int trial = 0; trial < 100; trial++) {
            List<Profiled> rows = rows(random, 6, 1);
            rows.set(3, new Profiled(DEVICES.get(3), rows.get(0).values()));
            rows.set(5, new Profiled(DEVICES.get(5), rows.get(0).values()));
            List<Order.Place> order = Order.of(rows, weights(random), Invented.CONSTANTS);
            Map<String, Integer> ranks = new HashMap<>();
            order.forEach(place -> ranks.put(place.row().id(), place.rank()));
            String at = "seed " + (SEED + 2) + ", trial " + trial;
            assertEquals(ranks.get(rows.get(0).id()), ranks.get(rows.get(3).id()), at);
            assertEquals(ranks.get(rows.get(0).id()), ranks.get(rows.get(5).id()), at);
            for (int i = 0; i < order.size(); i++) {
                double score = order.get(i).score();
                long above = order.stream().filter(place -> place.score() > score + 1e-9).count();
                assertEquals(above + 1, order.get(i).rank(), at);
            }
        }
    }

    @Test
    void whatCannotBeToldCountsAsTheWorseEndAndIsNamed() {
        Map<Criterion, Double> told = new EnumMap<>(Criterion.class);
        told.put(Criterion.SOFTNESS, 1.0);
        told.put(Criterion.SCAR, Criterion.SCAR.high(Invented.CONSTANTS));
        Profiled worst = new Profiled(DEVICES.get(0), told);
        Profiled untold = new Profiled(DEVICES.get(1), Map.of(Criterion.SOFTNESS, 1.0));
        Weights weights = new Weights(Map.of(Criterion.SCAR, 4.0, Criterion.SOFTNESS, 1.0));
        List<Criterion> counting = Order.counting(List.of(worst, untold), weights);
        assertEquals(List.of(Criterion.SCAR, Criterion.SOFTNESS), counting);
        assertEquals(List.of(Criterion.SCAR), Order.unknown(untold, counting));
        assertEquals(Map.of(worst.id(), 1, untold.id(), 1), ranks(List.of(worst, untold), weights));
    }

    /** Dominance by its definition alone, every pair of every set. */
    @Test
    void theDominatedAreThoseThatAreBeatenInAPairByPairSearch() {
        Random random = new Random(SEED + 3);
        int dominated = 0;
        for (int trial = 0; trial < 300; trial++) {
            List<Profiled> rows = rows(random, 2 + random.nextInt(40), trial % 3 == 0 ? 0.9 : 1);
            List<Criterion> counting = Arrays.stream(Criterion.values()).filter(c -> random.nextInt(3) == 0).toList();
            Map<String, Dominance.Dominated> found = Dominance.of(rows, counting);
            for (Profiled row : rows) {
                List<String> by = rows.stream().filter(other -> beats(other, row, counting)).map(Profiled::id).toList();
                String at = "seed " + (SEED + 3) + ", trial " + trial + ", " + row.id();
                assertEquals(!by.isEmpty(), found.containsKey(row.id()), at);
                if (!by.isEmpty()) {
                    Dominance.Dominated dominatedBy = found.get(row.id());
                    assertTrue(by.contains(dominatedBy.by()), at);
                    Profiled other = rows.stream().filter(r -> r.id().equals(dominatedBy.by())).findFirst().orElseThrow();
                    assertEquals(counting.stream().filter(c -> gain(c, other, row) > 0).toList(), dominatedBy.in(), at);
                    dominated++;
                }
            }
        }
        assertTrue(dominated > 300, "hardly anything was dominated: " + dominated);
    }

    private static boolean beats(Profiled one, Profiled other, List<Criterion> counting) {
        return counting.stream().allMatch(c -> one.value(c).isPresent() == other.value(c).isPresent()
                && gain(c, one, other) >= 0) && counting.stream().anyMatch(c -> gain(c, one, other) > 0);
    }

    private static double gain(Criterion criterion, Profiled one, Profiled other) {
        double difference = one.value(criterion).orElse(0) - other.value(criterion).orElse(0);
        return criterion.moreIsBetter() ? difference : -difference;
    }

    @Test
    void theFirstInHerOrderIsNeverDominatedInWhatCountsStrictlyInsideTheRanges() {
        Random random = new Random(SEED + 4);
        for (int trial = 0; trial < 200; trial++) {
            List<Profiled> rows = new ArrayList<>();
            for (Profiled row : rows(random, 20, 1)) {
                Map<Criterion, Double> inside = new EnumMap<>(Criterion.class);
                for (Criterion c : Criterion.values()) {
                    double low = c.low(Invented.CONSTANTS);
                    double high = c.high(Invented.CONSTANTS);
                    inside.put(c, low + (high - low) * random.nextDouble());
                }
                rows.add(new Profiled(row.candidate(), inside));
            }
            Weights weights = weights(random);
            List<Criterion> counting = Order.counting(rows, weights);
            if (counting.isEmpty()) {
                continue;
            }
            Map<String, Dominance.Dominated> dominated = Dominance.of(rows, counting);
            Order.of(rows, weights, Invented.CONSTANTS).stream().filter(place -> place.rank() == 1).forEach(place ->
                    assertTrue(!dominated.containsKey(place.row().id()), "seed " + (SEED + 4)));
        }
    }
}
