package domefold.shell;

/** Newton's two unknowns (end of the taut dome, apex head), their defects and slopes. */
final class Slopes {
    private static final double NUDGE = 1e-7;
    private static final double LONGEST_TURN = 0.15;

    private final BandPath path;
    private final double volumeMl;
    private double parameter;
    private double head;
    private double closure;
    private double excess;
    private double closureByT;
    private double closureByHead;
    private double excessByT;
    private double excessByHead;

    Slopes(BandPath path, double volumeMl, double parameter, double head) {
        this.path = path;
        this.volumeMl = volumeMl;
        this.parameter = parameter;
        this.head = head;
    }

    /** Walks at the present unknowns; returns the size of both defects together. */
    double measure() {
        closure = path.descend(parameter, head);
        excess = path.volume() / volumeMl - 1;
        return Math.abs(closure) + Math.abs(excess);
    }

    /** Slopes by forward differences; call after {@link #measure}. False when a neighbour does not reach the table. */
    boolean turn() {
        double nudge = NUDGE * (path.curve.a + Math.abs(head));
        closureByT = (path.descend(parameter + NUDGE, head) - closure) / NUDGE;
        excessByT = (path.volume() / volumeMl - 1 - excess) / NUDGE;
        boolean reached = path.reachedTable;
        closureByHead = (path.descend(parameter, head + nudge) - closure) / nudge;
        excessByHead = (path.volume() / volumeMl - 1 - excess) / nudge;
        return reached && path.reachedTable;
    }

    /** One Newton step with the slopes at hand, braked where it is long. False when it leaves the range. */
    boolean step() {
        double det = closureByT * excessByHead - closureByHead * excessByT;
        double stepT = (closure * excessByHead - closureByHead * excess) / det;
        double stepHead = (closureByT * excess - closure * excessByT) / det;
        double brake = Math.min(1, LONGEST_TURN / Math.abs(stepT));
        parameter -= brake * stepT;
        head -= brake * stepHead;
        return parameter > ShellMetric.T_LOW && parameter < ShellMetric.T_HIGH && head > -path.curve.p;
    }
}
