package domefold.bench;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import domefold.practice.FellowPlan;
import domefold.practice.Marker;
import domefold.practice.PatientDraw;
import domefold.practice.PracticeCase;
import domefold.practice.SidePlan;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Ten thousand practice cases drawn, and drawn and marked, on all cores (aim: under 10 s on two). A fellow names a device
 * for each side; the engine's plan is of those two, with its 1,024 error draws.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class PracticeBench {
    private static final int CASES = 10_000;
    private final Evidence evidence = EvidenceFiles.shipped();
    private final Catalogue list = CatalogueFile.invented();
    private final PatientDraw patients = PatientDraw.from(evidence);
    private final Marker marker = new Marker(evidence);

    @Benchmark
    public double tenThousandDrawn() {
        return IntStream.rangeClosed(1, CASES).parallel().mapToObj(patients::of).mapToInt(PracticeCase::level).sum();
    }

    @Benchmark
    public double tenThousandDrawnAndMarked() {
        return IntStream.rangeClosed(1, CASES).parallel().mapToDouble(number -> {
            PracticeCase practice = patients.of(number);
            FellowPlan fellow = fellow(number);
            List<Device> named = Stream.of(fellow.left(), fellow.right()).map(side -> side.deviceId().orElseThrow())
                    .distinct().map(id -> list.find(id).orElseThrow()).toList();
            Plan plan = Planner.plan(fellow.settingOn(practice.of()), new Catalogue(list.name(), list.date(), list.note(),
                    list.sha256(), list.invented(), named), evidence, PlanOptions.DEFAULT);
            return marker.mark(practice, fellow, plan, list).percent();
        }).sum();
    }

    private FellowPlan fellow(int number) {
        return new FellowPlan(false, side(7 * number), side(11 * number), Optional.of(Route.INFRAMAMMARY), true,
                OptionalDouble.of(4), Optional.of("US-2020"), Set.of("muscle-cover", "lift-to-discuss"), "bench");
    }

    private SidePlan side(int index) {
        Device device = list.devices().get(index % list.devices().size());
        return new SidePlan(OptionalDouble.of(11), OptionalDouble.of(300), Optional.of(Pocket.DUAL_PLANE),
                OptionalDouble.of(0.5), Optional.of(device.id()), Optional.of(device.fill()),
                device.fill() == Fill.SALINE ? OptionalDouble.of(device.nominalMl()) : OptionalDouble.empty(),
                Optional.of(device.profile()));
    }
}
