package domefold.plan;

import domefold.device.Device;
import domefold.engine.FoldLowering;
import domefold.engine.FoldTarget;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.patient.Readings;
import java.util.Optional;

/**
 * The verdict on a device at another fill than the nominal one. Volume and fold are judged anew; the width stays the listed
 * one, and so do label and route.
 *
 * <p>Beyond the volume rows the fold target stays the one of the listed dome.
 */
public final class FillVerdict {
    private final Optional<Band> band;
    private final SideNumbers numbers;
    private final VerdictRule rule;
    private final FoldTarget rows;
    private final double coverCm;
    private final Constants constants;

    public FillVerdict(Readings readings, SideLimits limits, Constants constants) {
        band = limits.volumeBandMl();
        numbers = new SideNumbers(readings, constants);
        rule = new VerdictRule(constants, WidthSchool.CEILING_AND_WIDENING);
        rows = FoldTarget.of(constants);
        coverCm = FoldLimits.coverCm(numbers, constants);
        this.constants = constants;
    }

    /** Verdicts at fills of one device. */
    public interface OfDevice {
        Verdict at(double fillMl);
    }

    /** The verdict by fill of a device that was held against this side. */
    public OfDevice of(Device device, SideFit fit) {
        Verdict fixed = ReasonCodes.apartFromVolume(fit);
        if (band.isEmpty() || fixed == Verdict.OUTSIDE) {
            return fillMl -> fixed;
        }
        double low = band.get().low();
        double high = band.get().high();
        double stretched = numbers.value[SideNumbers.STRETCHED];
        double beyondRows = beyondRows(device, fit);
        return fillMl -> {
            double target = rows.inRows(fillMl) ? rows.cm(fillMl) : beyondRows;
            double lowering = FoldLowering.cm(target, stretched, constants);
            return fixed.and(VerdictRule.verdict(
                    rule.bits(Double.NaN, fillMl, Double.NaN, Double.NaN, Double.NaN, low, high, lowering)));
        };
    }

    private double beyondRows(Device device, SideFit fit) {
        if (!rows.inRows(device.nominalMl())) {
            return fit.foldTargetCm().orElse(Double.NaN);
        }
        double highest = device.labelFillMl().map(Band::high).orElse(device.nominalMl());
        double lowest = device.labelFillMl().map(Band::low).orElse(device.nominalMl());
        return rows.inRows(highest) && rows.inRows(lowest) ? Double.NaN : DeviceGeometry.of(device, rows).arcCm() + coverCm;
    }
}
