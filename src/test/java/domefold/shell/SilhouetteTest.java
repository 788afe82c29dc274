package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Outlines hold what they claim: ends, extent, area. */
class SilhouetteTest {
    private static final Device DEVICE = Rows.saline(0.345, 300);
    private static final DeviceShell SHELL = DeviceShell.of(DEVICE, Rows.CONSTANTS).orElseThrow();

    @Test
    void theLyingOutlineHoldsItsLiquid() {
        for (double volume : new double[] {260, 300, 320, 345}) {
            Silhouette side = Silhouette.lying(SHELL, volume);
            ShellState state = SHELL.at(volume);
            assertEquals(state.contactWidthCm(), side.baseCm(), 1e-9);
            assertEquals(state.heightCm(), side.projectionCm(), 1e-9);
            assertEquals(state.widthCm() / 2, side.points().stream().mapToDouble(Silhouette.Point::xCm).max().orElseThrow(), 1e-6);
            assertEquals(state.heightCm(), side.points().stream().mapToDouble(Silhouette.Point::yCm).max().orElseThrow(), 1e-9);
            assertEquals(volume, turned(side.points()), 0.004 * volume);
            assertEquals(state.kind() == ShellState.Kind.SLACK, !Double.isNaN(side.waterlineCm()));
        }
    }

    /** Volume of the right half turned about the axis: frustums between the points. */
    private static double turned(List<Silhouette.Point> points) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            Silhouette.Point from = points.get(i - 1);
            Silhouette.Point to = points.get(i);
            if (from.xCm() >= 0) {
                sum += Math.PI / 3 * (from.yCm() - to.yCm())
                        * (from.xCm() * from.xCm() + from.xCm() * to.xCm() + to.xCm() * to.xCm());
            }
        }
        return sum;
    }

    @Test
    void theUprightOutlineRunsFromTheLowerToTheUpperEdge() {
        Silhouette side = Silhouette.upright(SHELL, 300);
        Silhouette.Point first = side.points().get(0);
        Silhouette.Point last = side.points().get(side.points().size() - 1);
        assertEquals(-DEVICE.widthCm() / 2, first.yCm(), 1e-9);
        assertEquals(DEVICE.widthCm() / 2, last.yCm(), 1e-9);
        assertEquals(0, last.xCm(), 0);
        assertEquals(DEVICE.projectionCm(), side.points().stream().mapToDouble(Silhouette.Point::xCm).max().orElseThrow(), 1e-6);
        Silhouette.Point surface = side.points().get(side.points().size() - 2);
        assertEquals(side.waterlineCm(), surface.yCm(), 1e-12);
        double u = 2 * surface.yCm() / DEVICE.widthCm();
        double n = Superellipse.exponentOf(0.66);
        assertEquals(1, u * u + Math.pow(surface.xCm() / DEVICE.projectionCm(), n), 1e-9);
        assertTrue(side.waterlineCm() > 0 && side.waterlineCm() < DEVICE.widthCm() / 2);
        for (int i = 1; i < side.points().size(); i++) {
            assertTrue(side.points().get(i).yCm() > side.points().get(i - 1).yCm());
        }
    }

    @Test
    void moreFillRaisesTheWaterlineThenTheProjection() {
        assertTrue(Silhouette.upright(SHELL, 300).waterlineCm() > Silhouette.upright(SHELL, 280).waterlineCm());
        Silhouette over = Silhouette.upright(SHELL, 340);
        assertTrue(Double.isNaN(over.waterlineCm()));
        assertTrue(over.projectionCm() > DEVICE.projectionCm() && over.baseCm() < DEVICE.widthCm());
    }

    @Test
    void theListedDomeNeedsNoShell() {
        Silhouette side = Silhouette.listed(DEVICE, Rows.CONSTANTS);
        assertEquals(DEVICE.projectionCm(), side.projectionCm(), 0);
        assertEquals(DEVICE.widthCm(), side.baseCm(), 1e-12);
    }
}
