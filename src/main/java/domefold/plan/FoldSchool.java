package domefold.plan;

import domefold.device.Device;
import domefold.engine.FoldTarget;
import domefold.evidence.Constants;
import domefold.patient.Measure;
import domefold.patient.Readings;
import java.util.OptionalDouble;

/** Two published ways to a fold target for one device; a third school leaves the fold where it is. */
public enum FoldSchool {
    /** Nipple to new fold by the device's volume, inside the table's rows. */
    ROWS("rows"),
    /** The device's meridian from apex to lower edge, plus the cover at the fold. */
    ARC("arc");

    private final String word;

    FoldSchool(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The target, cm; empty outside the rows, or where the fold pinch or a dome of that size is missing. */
    public OptionalDouble targetCm(Device device, Readings side, Constants constants) {
        DeviceGeometry geometry = DeviceGeometry.of(device, FoldTarget.of(constants));
        OptionalDouble pinchCm = side.value(Measure.FOLD_PINCH);
        double targetCm = this == ROWS ? geometry.rowsTargetCm()
                : geometry.arcCm() + (pinchCm.isPresent() ? constants.value("FLD-ARC-COVER") * pinchCm.getAsDouble() : Double.NaN);
        return Double.isNaN(targetCm) ? OptionalDouble.empty() : OptionalDouble.of(targetCm);
    }
}
