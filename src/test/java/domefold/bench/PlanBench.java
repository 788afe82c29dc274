package domefold.bench;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** One whole plan with 1,024 error draws: the shipped list, a thousand devices, and the same arithmetic bare. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBench {
    private static final int THOUSAND = 1000;

    private Evidence evidence;
    private Catalogue shipped;
    private Catalogue thousand;
    private Case ordinary;
    private BareLoop bareShipped;
    private BareLoop bareThousand;

    @Setup
    public void prepare() {
        evidence = EvidenceFiles.shipped();
        shipped = CatalogueFile.invented();
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < THOUSAND; i++) {
            double ml = 120 + 680.0 * i / THOUSAND;
            double tau = 0.24 + 0.07 * (i % 5);
            double width = Math.cbrt(4 * ml / (Math.PI * tau * 0.66));
            devices.add(new Device("D" + i, "bench", Fill.GEL, Surface.SMOOTH, Profile.values()[i % 5], ml,
                    Optional.empty(), width, width, tau * width));
        }
        thousand = new Catalogue("bench", "", "", "0", true, devices);
        Readings side = Readings.NONE.with(Measure.BASE_WIDTH, 12.4).with(Measure.MEDIAL_PINCH, 1.0)
                .with(Measure.LATERAL_PINCH, 1.8).with(Measure.NIPPLE_TO_FOLD, 6.4)
                .with(Measure.NIPPLE_TO_FOLD_STRETCHED, 7.6).with(Measure.SKIN_STRETCH, 2.6)
                .with(Measure.PARENCHYMAL_FILL, 50).with(Measure.UPPER_PINCH, 2.2).with(Measure.FOLD_PINCH, 0.9);
        Breast breast = new Breast(side, Optional.empty());
        ordinary = Case.empty("K-1", LocalDate.of(2026, 3, 4))
                .withPatient(Readings.NONE.with(Measure.AGE, 31)).withSide(Side.LEFT, breast)
                .withSide(Side.RIGHT, breast);
        bareShipped = new BareLoop(shipped.devices().size(), 7, PlanOptions.DEFAULT.draws());
        bareThousand = new BareLoop(THOUSAND, 7, PlanOptions.DEFAULT.draws());
    }

    @Benchmark
    public Plan planOfTheShippedList() {
        return Planner.plan(ordinary, shipped, evidence, PlanOptions.DEFAULT);
    }

    @Benchmark
    public Plan planOfAThousandDevices() {
        return Planner.plan(ordinary, thousand, evidence, PlanOptions.DEFAULT);
    }

    @Benchmark
    public long bareLoopOfTheShippedList() {
        return bareShipped.count();
    }

    @Benchmark
    public long bareLoopOfAThousandDevices() {
        return bareThousand.count();
    }
}
