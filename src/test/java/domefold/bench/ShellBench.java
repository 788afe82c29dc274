package domefold.bench;

import domefold.shell.ShellMetric;
import domefold.shell.ShellSolver;
import domefold.shell.ShellState;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long one shell takes, and how long the adaptive integrator of Commons Math takes for the ten descents that one
 * Newton solution needs, at the error of the solver's fine path.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 4, time = 1)
public class ShellBench {
    private static final int DESCENTS = 10;

    @Param({"0.85", "1.0", "1.08"})
    public double fill;

    private final ShellMetric metric = ShellMetric.of(6.2297, 3.1625, 1.5);

    /** One solution, rigid. */
    @Benchmark
    public ShellState rigid() {
        return ShellSolver.atFill(metric, fill);
    }

    /** One solution with stretch. */
    @Benchmark
    public ShellState stretching() {
        return ShellSolver.atFill(metric, fill, 765);
    }

    /** Setting a shell up: arc table, just-full state, capacity. */
    @Benchmark
    public ShellMetric setUp() {
        return ShellMetric.of(6.2297, 3.1625, 1.5);
    }

    /** The same descents by DormandPrince853 at 1e-8, about the error of the fine path. */
    @Benchmark
    public double adaptive() {
        double sum = 0;
        for (int i = 0; i < DESCENTS; i++) {
            double[] y = {5.2, 1.4, 5.6};
            new DormandPrince853Integrator(1e-6, 1, 1e-9, 1e-8)
                    .integrate(new Band(14 + 0.01 * i * fill), 0.9, y, Math.PI, y);
            sum += y[0];
        }
        return sum;
    }

    private record Band(double tension) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 3;
        }

        @Override
        public void computeDerivatives(double psi, double[] y, double[] dy) {
            double k = tension / (y[1] * y[0]);
            dy[0] = k * Math.cos(psi);
            dy[1] = k * Math.sin(psi);
            dy[2] = k;
        }
    }
}
