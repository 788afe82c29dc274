package domefold.bench;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.followup.course.Ownership;
import domefold.followup.course.Strategy;
import domefold.followup.course.Watch;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.Schedules;
import domefold.followup.shown.Disagreements;
import domefold.followup.shown.RiskTable;
import domefold.followup.survival.Lifetime;
import domefold.followup.survival.Weibull;
import domefold.followup.survival.WeibullMle;
import domefold.outcome.Band;
import domefold.store.EvidenceFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The follow-up pane for four devices (aim: under 20 ms) and a fit of 1000 interval-censored times (under 50 ms). */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FollowUpBench {
    private static final int HORIZON_YEARS = 20;
    private static final int YEAR_SHOWN = 10;
    private static final int TIMES = 1000;

    private final Evidence evidence = EvidenceFiles.shipped();
    private final List<Device> devices = List.of(device(Fill.GEL, Surface.SMOOTH), device(Fill.GEL, Surface.TEXTURED),
            device(Fill.SALINE, Surface.SMOOTH), device(Fill.SALINE, Surface.TEXTURED));
    private final List<Lifetime> times = times();

    private static Device device(Fill fill, Surface surface) {
        return new Device("x", "invented", fill, surface, Profile.FULL, 300,
                fill == Fill.SALINE ? Optional.of(new Band(300, 330)) : Optional.empty(), 11.5, 11.5, 4.2);
    }

    /** Looked at every second year for ten years. */
    private static List<Lifetime> times() {
        SplittableRandom random = new SplittableRandom(1);
        Weibull truth = new Weibull(16, 2.7);
        List<Lifetime> times = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            double lower = 2 * Math.floor(truth.quantile(random.nextDouble()) / 2);
            times.add(lower >= YEAR_SHOWN ? Lifetime.intactAt(YEAR_SHOWN) : new Lifetime(lower, lower + 2));
        }
        return times;
    }

    @Benchmark
    public Object paneForFourDevices() {
        Schedule schedule = Schedules.of(evidence).get("US-2020", "bench");
        Watch watch = Watch.of(evidence.constants(), Strategy.ULTRASOUND_THEN_MRI);
        List<Object> pane = new ArrayList<>();
        for (Device device : devices) {
            pane.add(Ownership.of(device, schedule, HORIZON_YEARS, YEAR_SHOWN, watch, Optional.empty(), evidence));
        }
        pane.add(RiskTable.of(devices, YEAR_SHOWN, evidence));
        pane.add(Disagreements.of(evidence));
        return pane;
    }

    @Benchmark
    public WeibullMle fitOfAThousandIntervalCensoredTimes() {
        return WeibullMle.fit(times);
    }
}
