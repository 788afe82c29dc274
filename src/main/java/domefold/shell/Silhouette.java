package domefold.shell;

import domefold.device.Device;
import domefold.evidence.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * The side of a device as points in cm, for drawing to scale. Two of the same view share an origin and can be laid over
 * each other.
 *
 * @param view upright (x forward from the chest, y up, middle of the base at 0,0) or lying (x across, y above the table)
 * @param points the outline in order, open at the base
 * @param baseCm length of the base
 * @param projectionCm farthest from the base
 * @param waterlineCm height of the liquid's surface where part of the shell is slack, else NaN
 * @param caption what the drawing is and is not
 */
public record Silhouette(
        View view, List<Point> points, double baseCm, double projectionCm, double waterlineCm, String caption) {
    private static final int STEPS = 48;

    public Silhouette {
        points = List.copyOf(points);
    }

    /** How the device is seen. */
    public enum View {
        UPRIGHT,
        LYING
    }

    /** A point of the outline. */
    public record Point(double xCm, double yCm) {}

    /**
     * The listed dome upright at a volume: from the lower edge over the apex to the upper edge. Below full it is cut off
     * at the liquid's surface and the slack shell hangs straight from the upper edge; above full, width and projection
     * follow the lying shell.
     */
    public static Silhouette upright(DeviceShell shell, double volumeMl) {
        Device device = shell.device();
        double k = Superellipse.formFactorOf(device.widthCm(), device.projectionCm(), device.nominalMl());
        double n = Math.max(1.05, Math.min(3, Superellipse.exponentOf(Math.max(0.4, Math.min(0.8, k)))));
        double ratio = volumeMl / shell.metric().fullVolumeMl();
        double wide = 1;
        double tall = 1;
        ShellState full = shell.at(shell.metric().fullVolumeMl());
        ShellState now = ratio > 1 ? shell.at(volumeMl) : full;
        if (now.hasShape()) {
            wide = now.widthCm() / full.widthCm();
            tall = now.heightCm() / full.heightCm();
        }
        double a = device.heightCm() / 2 * wide;
        double p = device.projectionCm() * tall;
        RigidBag bag = RigidBag.of(a, p, n, ratio);
        double waterline = bag.waterline() * a;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 2 * STEPS; i++) {
            double y = -a * Math.cos(Math.PI * i / (2 * STEPS));
            if (y < waterline) {
                points.add(new Point(x(y, a, p, n), y));
            }
        }
        if (bag.waterline() < 1) {
            points.add(new Point(x(waterline, a, p, n), waterline));
        }
        points.add(new Point(0, a));
        return new Silhouette(View.UPRIGHT, points, 2 * a, p, bag.waterline() < 1 ? waterline : Double.NaN,
                "side view to scale from the listed dome; a drawing aid, the pocket decides the real shape");
    }

    private static double x(double y, double a, double p, double n) {
        return p * Math.pow(Math.max(0, 1 - y * y / (a * a)), 1 / n);
    }

    /** The filled shell lying on a table, from the left of its contact over the top to the right; empty list beyond capacity. */
    public static Silhouette lying(DeviceShell shell, double volumeMl) {
        return lying(shell.metric(), volumeMl, shell.stiffnessCm2());
    }

    static Silhouette lying(ShellMetric metric, double volumeMl, double stiffnessCm2) {
        String caption = "lying on a table, computed shell; good to about 0.3 cm";
        BandPath path = new BandPath(metric.curve, stiffnessCm2, 128);
        boolean reachable = stiffnessCm2 < Double.POSITIVE_INFINITY || volumeMl < metric.capacityMl();
        if (!reachable || !ShellSolver.solve(metric, path, volumeMl)) {
            return new Silhouette(View.LYING, List.of(), 0, 0, Double.NaN, "more than this shell can hold");
        }
        List<Point> right = rightHalf(path);
        List<Point> points = new ArrayList<>();
        for (int i = right.size() - 1; i > 0; i--) {
            points.add(new Point(-right.get(i).xCm(), right.get(i).yCm()));
        }
        points.addAll(right);
        double height = path.baseHead() - Math.max(path.headH0, 0);
        return new Silhouette(View.LYING, points, 2 * path.r, height, path.headH0 < 0 ? height : Double.NaN, caption);
    }

    private static List<Point> rightHalf(BandPath path) {
        double bottom = path.z;
        double slackTo = path.headH0 < 0 ? path.curve.parameterAtDepth(-path.headH0 / path.growth) : 0;
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, bottom + Math.min(path.headH0, 0)));
        for (int i = slackTo > 0 ? 0 : 1; i < STEPS; i++) {
            double t = slackTo + (path.t1 - slackTo) * i / STEPS;
            points.add(new Point(path.growth * path.curve.a * Math.sin(t), bottom - path.growth * path.curve.depth(t)));
        }
        for (int i = 0; i < path.nodeR.length; i++) {
            points.add(new Point(path.nodeR[i], bottom - path.nodeZ[i]));
        }
        return points;
    }

    /** The listed dome upright at its nominal volume by the convention of {@link DeviceShell}, without solving a shell. */
    public static Silhouette listed(Device device, Constants constants) {
        return listed(device);
    }

    /** The listed dome upright; its listed numbers are all it needs. */
    public static Silhouette listed(Device device) {
        double k = Superellipse.formFactorOf(device.widthCm(), device.projectionCm(), device.nominalMl());
        double n = Superellipse.exponentOf(Math.max(0.4, Math.min(0.8, k)));
        double a = device.heightCm() / 2;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 2 * STEPS; i++) {
            double y = -a * Math.cos(Math.PI * i / (2 * STEPS));
            points.add(new Point(x(y, a, device.projectionCm(), n), y));
        }
        return new Silhouette(View.UPRIGHT, points, 2 * a, device.projectionCm(), Double.NaN,
                "side view to scale from the listed width, projection and volume");
    }
}
