package domefold.bench;

/**
 * The arithmetic of stability in a bare loop over primitive arrays, written without the program: for each device, side
 * and variant of the error, how many draws fit. What a plan is measured against.
 */
final class BareLoop {
    final double[] widths;
    final double[] volumes;
    final double[] targets;
    final double[][] base;
    final double[][] ceiling;
    final double[][] start;
    final double[][] stretched;

    BareLoop(int devices, int variants, int draws) {
        widths = new double[devices];
        volumes = new double[devices];
        targets = new double[devices];
        for (int d = 0; d < devices; d++) {
            volumes[d] = 120 + 680.0 * d / devices;
            widths[d] = Math.cbrt(4 * volumes[d] / (Math.PI * (0.24 + 0.07 * (d % 5)) * 0.66));
            targets[d] = 6 + volumes[d] / 120;
        }
        base = new double[variants][draws];
        ceiling = new double[variants][draws];
        start = new double[variants][draws];
        stretched = new double[variants][draws];
        java.util.Random random = new java.util.Random(1);
        for (int v = 0; v < variants; v++) {
            for (int i = 0; i < draws; i++) {
                base[v][i] = 12.5 + 0.49 * random.nextGaussian();
                ceiling[v][i] = base[v][i] - 1.5 + 0.28 * random.nextGaussian();
                start[v][i] = 300 + 35 * random.nextGaussian();
                stretched[v][i] = 7.5 + 0.52 * random.nextGaussian();
            }
        }
    }

    long count() {
        long sum = 0;
        for (int d = 0; d < widths.length; d++) {
            for (int side = 0; side < 2; side++) {
                for (int v = 0; v < base.length; v++) {
                    sum += fits(widths[d], volumes[d], targets[d], base[v], ceiling[v], start[v], stretched[v]);
                }
            }
        }
        return sum;
    }

    private static int fits(double width, double volume, double target, double[] base, double[] ceiling, double[] start,
            double[] stretched) {
        int fits = 0;
        for (int i = 0; i < base.length; i++) {
            boolean outside = width > base[i] || volume > start[i] + 110 || volume < start[i] - 90
                    || target - stretched[i] > 2.0;
            boolean tight = width > ceiling[i] + 1 || width < ceiling[i] - 1 || volume > start[i] + 50
                    || volume < start[i] - 30 || target - stretched[i] > 1.5;
            fits += outside || tight ? 0 : 1;
        }
        return fits;
    }
}
