package domefold.shell;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.outcome.Working;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The empty shell behind a row of a device list.
 *
 * <p>A list's width, projection and volume cannot all be those of a liquid bag on a table: one just full always has
 * V / (pi (D/2)^2 h) = (contact width / width)^2. So the row's width and volume are kept and its lying height is a result:
 * just-full volume = DEV-FULL-RATIO x nominal, width at just full = listed width, dome exponent DEV-EXPONENT; P/a is the
 * one root left, then everything is scaled. All three are assumed.
 *
 * @param metric the shell
 * @param stiffnessCm2 K = E t / (rho g) of its rubber under this filling
 * @param working how it was reached, with the assumptions named
 */
public record DeviceShell(Device device, ShellMetric metric, double stiffnessCm2, List<Working> working) {
    private static final double FLATTEST = 0.1;
    private static final double TALLEST = 1.6;

    public DeviceShell {
        working = List.copyOf(working);
    }

    /** Empty where no shell of that exponent has the row's volume for its width. */
    public static Optional<DeviceShell> of(Device device, Constants constants) {
        double exponent = constants.value("DEV-EXPONENT");
        double fullMl = constants.value("DEV-FULL-RATIO") * device.nominalMl();
        double halfWidthCm = 0.5 * Math.sqrt(device.widthCm() * device.heightCm());
        double wanted = Math.log(fullMl / (halfWidthCm * halfWidthCm * halfWidthCm));
        if (bulk(FLATTEST, exponent) >= wanted || bulk(TALLEST, exponent) <= wanted) {
            return Optional.empty();
        }
        double aspect = new BrentSolver(1e-12, 1e-11)
                .solve(100, x -> bulk(x, exponent) - wanted, FLATTEST, TALLEST);
        double scale = halfWidthCm / (unit(aspect, exponent).widest);
        ShellMetric metric = ShellMetric.of(scale, aspect * scale, exponent);
        return Optional.of(new DeviceShell(device, metric, stiffnessCm2(device.fill(), constants), List.of(
                Working.by(constants.get("DEV-FULL-RATIO"), "volume at which the top is just taut",
                        constants.value("DEV-FULL-RATIO") + " x nominal", fullMl, "mL"),
                Working.by(constants.get("DEV-EXPONENT"), "height of the empty shell's dome",
                        "root of volume / (half width)^3 at just full", metric.domeCm(), "cm"))));
    }

    /** Volume in it to what becomes of it, stretch included. */
    public ShellState at(double volumeMl) {
        return ShellSolver.atVolume(metric, volumeMl, stiffnessCm2);
    }

    /** Listed width carried to another volume by the computed change of width; NaN beyond what the shell can hold. */
    public double widthAtCm(double volumeMl) {
        return device.widthCm() + at(volumeMl).widthCm() - at(device.nominalMl()).widthCm();
    }

    /** K = E t / (rho g): E in MPa, t in cm, rho in g/mL; gives cm^2. */
    public static double stiffnessCm2(Fill fill, Constants constants) {
        double density = constants.value(fill == Fill.GEL ? "DEV-GEL-DENSITY" : "DEV-SALINE-DENSITY");
        return 1e5 * constants.value("DEV-SHELL-MODULUS") * constants.value("DEV-SHELL-THICKNESS")
                / (density * constants.value("DEV-GRAVITY"));
    }

    /** V / V_full of a volume in this device by the stated convention, without solving anything. */
    public static double fillRatio(Device device, double volumeMl, Constants constants) {
        return volumeMl / (constants.value("DEV-FULL-RATIO") * device.nominalMl());
    }

    private static double bulk(double aspect, double exponent) {
        BandPath path = unit(aspect, exponent);
        return Math.log(path.volume() / (path.widest * path.widest * path.widest));
    }

    private static BandPath unit(double aspect, double exponent) {
        return ShellMetric.justFull(new DomeCurve(1, aspect, exponent));
    }
}
