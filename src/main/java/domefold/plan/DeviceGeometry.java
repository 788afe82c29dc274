package domefold.plan;

import domefold.device.Device;
import domefold.engine.DomeArc;
import domefold.engine.FoldTarget;

/**
 * What a verdict needs of a device, computed once for both sides.
 *
 * @param rowsTargetCm fold target by volume rows; NaN outside them
 * @param arcCm apex to lower edge of its dome; NaN where its volume goes into no dome of its size
 */
record DeviceGeometry(Device device, double rowsTargetCm, double arcCm) {
    static DeviceGeometry of(Device device, FoldTarget rows) {
        return new DeviceGeometry(device, rows.inRows(device.nominalMl()) ? rows.cm(device.nominalMl()) : Double.NaN,
                DomeArc.cm(device.heightCm(), device.projectionCm(), volumeAsRound(device)));
    }

    /** A device that is not round has the meridian of a round one of its height: same form factor. */
    private static double volumeAsRound(Device device) {
        return device.nominalMl() * device.heightCm() / device.widthCm();
    }

    boolean inRows() {
        return !Double.isNaN(rowsTargetCm);
    }

    /** The target that drives: volume rows inside their range, else the arc with that cover. NaN if neither. */
    double targetCm(double coverCm) {
        return inRows() ? rowsTargetCm : arcCm + coverCm;
    }
}
