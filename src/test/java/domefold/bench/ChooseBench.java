package domefold.bench;

import domefold.advise.Advisor;
import domefold.choose.CriteriaTable;
import domefold.choose.Dominance;
import domefold.choose.Order;
import domefold.choose.OrderDoubt;
import domefold.choose.Pairs;
import domefold.choose.Profiled;
import domefold.choose.Weights;
import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.patient.Wishes;
import domefold.plan.DevicePair;
import domefold.plan.Doubt;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Verdict;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What one changed reading costs: the whole plan of a thousand devices with 1,024 draws, two sides and the pairs, and the
 * order by her weights; its parts; and the arithmetic of stability and pairs in bare loops.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ChooseBench {
    private static final int THOUSAND = 1000;

    private Evidence evidence;
    private Advisor advisor;
    private Case one;
    private Case other;
    private boolean turn;
    private Plan plan;
    private Weights weights;
    private BareLoop bare;
    private BarePairs barePairs;

    @Setup
    public void prepare() {
        evidence = EvidenceFiles.shipped();
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < THOUSAND; i++) {
            double ml = 120 + 680.0 * i / THOUSAND;
            double tau = 0.24 + 0.05 * (i % 5);
            double width = Math.cbrt(4 * ml / (Math.PI * tau * 0.66));
            Fill fill = i % 3 == 0 ? Fill.SALINE : Fill.GEL;
            devices.add(new Device("D" + i, "bench", fill, Surface.SMOOTH, Profile.values()[i % 5], ml,
                    fill == Fill.SALINE ? Optional.of(new Band(ml, ml + 30)) : Optional.empty(), width, width, tau * width));
        }
        Catalogue catalogue = new Catalogue("bench", "", "", "0", true, devices);
        advisor = new Advisor(catalogue, evidence, PlanOptions.DEFAULT);
        one = woman(12.4);
        other = woman(12.6);
        plan = advisor.apply(one);
        weights = Weights.of(one.wishes(), evidence.constants());
        bare = new BareLoop(THOUSAND, 7, PlanOptions.DEFAULT.draws());
        barePairs = new BarePairs(plan);
    }

    private static Case woman(double leftBaseCm) {
        Readings side = Readings.NONE.with(Measure.MEDIAL_PINCH, 1.0).with(Measure.LATERAL_PINCH, 1.8)
                .with(Measure.NIPPLE_TO_FOLD, 6.4).with(Measure.NIPPLE_TO_FOLD_STRETCHED, 7.6)
                .with(Measure.SKIN_STRETCH, 2.6).with(Measure.PARENCHYMAL_FILL, 50).with(Measure.UPPER_PINCH, 2.2)
                .with(Measure.FOLD_PINCH, 0.9).with(Measure.AREOLA, 3.8);
        Breast left = new Breast(side.with(Measure.BASE_WIDTH, leftBaseCm).with(Measure.BREAST_VOLUME, 260), Optional.empty());
        Breast right = new Breast(side.with(Measure.BASE_WIDTH, 12.5).with(Measure.BREAST_VOLUME, 340), Optional.empty());
        return Case.empty("K-1", LocalDate.of(2026, 3, 4)).withPatient(Readings.NONE.with(Measure.AGE, 31))
                .withSide(Side.LEFT, left).withSide(Side.RIGHT, right)
                .withSetting(new Setting(Optional.of("US-2020"), Optional.of(Route.INFRAMAMMARY), Optional.of(false),
                        Optional.of(Pocket.DUAL_PLANE), OptionalInt.of(20), Set.of()))
                .withWishes(new Wishes(Optional.of(Wishes.UpperPole.EVEN), OptionalDouble.of(300),
                        Map.of(Wishes.Matter.SHORT_SCAR, 4, Wishes.Matter.HIDDEN_EDGES, 3)));
    }

    /** Plan, pairs, order and what is dominated, after the left base width changed. */
    @Benchmark
    public Object oneChangedReading() {
        turn = !turn;
        Plan changed = advisor.apply(turn ? one : other);
        List<Profiled> rows = CriteriaTable.of(changed, evidence.constants(), Optional.empty()).stream()
                .filter(row -> row.candidate().left().verdict().and(row.candidate().right().verdict()) != Verdict.OUTSIDE)
                .toList();
        return List.of(changed, Order.of(rows, weights, evidence.constants()),
                Dominance.of(rows, Order.counting(rows, weights)));
    }

    @Benchmark
    public List<DevicePair> pairs() {
        return Pairs.of(plan, evidence.constants());
    }

    @Benchmark
    public Optional<OrderDoubt> doubtOfTheOrder() {
        return OrderDoubt.of(plan, Doubt.of(plan, evidence.constants(), PlanOptions.DEFAULT), weights, evidence.constants());
    }

    /** Stability of every device on both sides in every variant, and the smallest gap of every pair of devices. */
    @Benchmark
    public double bareStabilityAndPairs() {
        return bare.count() + barePairs.smallest();
    }

    /** The search for pairs without the program: fill, verdict and range of each device in arrays. */
    private static final class BarePairs {
        private final boolean[] saline;
        private final boolean[] onLeft;
        private final boolean[] onRight;
        private final double[] low;
        private final double[] high;

        BarePairs(Plan plan) {
            int n = plan.candidates().size();
            saline = new boolean[n];
            onLeft = new boolean[n];
            onRight = new boolean[n];
            low = new double[n];
            high = new double[n];
            for (int i = 0; i < n; i++) {
                Device device = plan.candidates().get(i).device();
                saline[i] = device.fill() == Fill.SALINE;
                onLeft[i] = plan.candidates().get(i).left().verdict() != Verdict.OUTSIDE;
                onRight[i] = plan.candidates().get(i).right().verdict() != Verdict.OUTSIDE;
                low[i] = device.nominalMl();
                high[i] = device.labelFillMl().map(Band::high).orElse(low[i]);
            }
        }

        double smallest() {
            double sum = 0;
            for (int l = 0; l < low.length; l++) {
                double least = Double.MAX_VALUE;
                for (int r = 0; r < low.length; r++) {
                    if (onLeft[l] && onRight[r] && saline[l] == saline[r]) {
                        double from = low[l] - high[r];
                        double to = high[l] - low[r];
                        least = Math.min(least, Math.abs(-80 + Math.max(from, Math.min(to, 80))));
                    }
                }
                sum += least == Double.MAX_VALUE ? 0 : least;
            }
            return sum;
        }
    }
}
