package domefold.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SideViewTest {
    @Test
    void theOutlineSpansTheListedHeightAndProjection() {
        List<double[]> points = SideView.pointsCm(round(290, 11.0, 4.1)).orElseThrow();
        assertEquals(-5.5, points.get(0)[1], 1e-9);
        assertEquals(5.5, points.get(points.size() - 1)[1], 1e-9);
        assertEquals(4.1, points.stream().mapToDouble(point -> point[0]).max().orElseThrow(), 1e-9);
        assertEquals(0, points.get(0)[0], 1e-9);
    }

    /** Turned about its axis, the outline encloses the listed volume: Pappus over the polygon, 120 steps, within 0.5 %. */
    @Test
    void theOutlineTurnedAboutItsAxisHoldsTheListedVolume() {
        for (double nominalMl : new double[] {200, 250, 290}) {
            List<double[]> points = SideView.pointsCm(round(nominalMl, 11.0, 4.1)).orElseThrow();
            double volumeMl = 0;
            for (int i = points.size() / 2; i + 1 < points.size(); i++) {
                double[] inner = points.get(i);
                double[] outer = points.get(i + 1);
                volumeMl += Math.PI * (outer[1] * outer[1] - inner[1] * inner[1]) * (inner[0] + outer[0]) / 2;
            }
            assertEquals(nominalMl, volumeMl, 0.005 * nominalMl);
        }
    }

    @Test
    void dimensionsThatNoDomeHasAreNotDrawn() {
        assertTrue(SideView.pointsCm(round(800, 11.0, 4.1)).isEmpty());
    }

    private static Device round(double nominalMl, double widthCm, double projectionCm) {
        return new Device("X", "line", Fill.GEL, Surface.SMOOTH, Profile.FULL, nominalMl, Optional.empty(), widthCm, widthCm,
                projectionCm);
    }
}
