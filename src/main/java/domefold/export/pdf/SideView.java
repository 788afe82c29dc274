package domefold.export.pdf;

import domefold.device.Device;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The side view of a device as listed, apex forward.
 * <pre>
 *   z(y) = P · (1 - (y/h)²)^(1/n)     y  height above the middle of the base, cm     h  half the listed height, cm
 *   n = k / (1 - k)                   z  distance from the base, cm                  P  listed projection, cm
 *   k = V / (π · w · h · P)           V  nominal volume, mL                          w  half the listed width, cm
 * </pre>
 * Solid geometry: the dome whose volume is the listed one. It is the device, not the breast over it.
 */
final class SideView {
    private static final int STEPS = 120;

    private SideView() {}

    /** Points from the lower rim over the apex to the upper rim, each z and y; empty where no such dome exists. */
    static Optional<List<double[]>> pointsCm(Device device) {
        double half = device.heightCm() / 2;
        double k = device.nominalMl() / (Math.PI * device.widthCm() / 2 * half * device.projectionCm());
        if (!(k > 0 && k < 1)) {
            return Optional.empty();
        }
        double n = k / (1 - k);
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double angle = Math.PI * (i / (double) STEPS - 0.5);
            double y = half * Math.sin(angle);
            points.add(new double[] {device.projectionCm() * Math.pow(Math.abs(Math.cos(angle)), 2 / n), y});
        }
        return Optional.of(points);
    }
}
