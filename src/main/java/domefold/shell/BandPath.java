package domefold.shell;

/**
 * One descent along the hoop-wrinkled band, from the end of the taut dome (parameter t1) to the table, for a given apex
 * head H0. Liquid of unit weight: tensions in cm^2, pressures in cm of head.
 *
 * <p>In the band the hoop carries nothing, so r T = C is constant and with the tangent angle psi as the running variable
 * <pre>
 *   k = C / [(z + H0) r],  dr/dpsi = k cos psi,  dz/dpsi = k sin psi,  dS/dpsi = k / (1 + C / (r K))
 * </pre>
 * from psi1 to pi, where it meets the table. C = F(t1) / sin psi1 with the weight above the ring
 * <pre>
 *   F = a^2/2 { (P + H0)(v_w - v1) + P n/(n+1) (v1^(1+1/n) - v_w^(1+1/n)) },  v1 = cos^2 t1,
 *   v_w = ((P + H0)/P)^n where the top is slack (H0 below 0), else 1
 * </pre>
 * K = E t / (rho g) in cm^2 is the shell's stiffness, infinite for a shell that does not stretch; the taut dome then
 * grows by s = 1 + C / (r1 K). Closure: S + r / (1 + C / (r K)) = L. Fixed-step fourth-order Runge-Kutta: psi has no
 * stiffness and needs no event search.
 */
final class BandPath {
    /** A ring this small, as a share of the half width, counts as run through the axis. */
    private static final double AXIS = 1e-9;

    final DomeCurve curve;
    final double stiffness;
    /** Steps above and below the widest ring. */
    private int upper;
    private int lower;

    double t1;
    double headH0;
    /** r T in the band. */
    double tension;
    /** How much the taut dome has grown, 1 without stretch. */
    double growth;
    double r1;
    double z1;
    double psi1;
    /** Ring radius, depth and reference arc where the descent stands; at the end, of the contact ring. */
    double r;
    double z;
    double arc;
    double widest;
    /** Area of the band as it lies, integral of 2 pi r dS. */
    double bandArea;
    /** Volume under the band by integration of pi r^2 dz. */
    double bandVolume;
    boolean reachedTable;
    /** (S + r - L) / L at the table. */
    double closure;
    /** Node i of the descent, kept only when asked. */
    double[] nodeR;
    double[] nodeZ;
    double[] nodeArc;

    BandPath(DomeCurve curve, double stiffness, int steps) {
        this.curve = curve;
        this.stiffness = stiffness;
        inSteps(steps);
    }

    /** Sets the number of steps; the nodes kept so far are dropped. */
    void inSteps(int steps) {
        upper = Math.max(2, steps / 3);
        lower = Math.max(2, steps - upper);
        nodeR = null;
        nodeZ = null;
        nodeArc = null;
    }

    /** Keeps the nodes of each descent from now on. */
    void keepNodes() {
        nodeR = new double[upper + lower + 1];
        nodeZ = new double[upper + lower + 1];
        nodeArc = new double[upper + lower + 1];
    }

    /** Walks down; returns the closure defect (S + r - L) / L, positive when the meridian is too long. */
    double descend(double parameter, double head) {
        t1 = parameter;
        headH0 = head;
        start();
        arc = curve.arcTo(t1);
        walk();
        double base = r / (1 + tension / (r * stiffness));
        double defect = (arc + (reachedTable ? base : 0)) / curve.meridian() - 1;
        closure = reachedTable ? defect : Math.max(defect, 1e-3);
        return closure;
    }

    /** The band alone, from a given ring, depth, angle and tension; ends at the table. */
    void descendFrom(double ring, double depth, double angle, double ringTension, double head) {
        r1 = ring;
        z1 = depth;
        psi1 = angle;
        tension = ringTension;
        headH0 = head;
        arc = 0;
        walk();
    }

    private void walk() {
        r = r1;
        z = z1;
        bandArea = 0;
        bandVolume = 0;
        reachedTable = tension > 0;
        keep(0);
        leg(psi1, Math.PI / 2, upper, 0);
        widest = r;
        leg(Math.PI / 2, Math.PI, lower, upper);
    }

    private void start() {
        psi1 = curve.slope(t1);
        double sin = Math.sin(psi1);
        growth = 1;
        tension = weightAbove(1) / sin;
        if (!Double.isInfinite(stiffness)) {
            for (int round = 0; round < 60; round++) {
                double next = 1 + tension / (growth * curve.a * Math.sin(t1) * stiffness);
                boolean settled = Math.abs(next - growth) < 1e-15 * growth;
                growth = next;
                tension = weightAbove(growth) / sin;
                if (settled || growth > 2) {
                    break;
                }
            }
        }
        r1 = growth * curve.a * Math.sin(t1);
        z1 = growth * curve.depth(t1);
    }

    private double weightAbove(double scale) {
        double n = curve.n;
        double p = scale * curve.p;
        double a = scale * curve.a;
        double v1 = Math.cos(t1) * Math.cos(t1);
        double vw = headH0 < 0 ? Math.pow(Math.max(0, (p + headH0) / p), n) : 1;
        double raised = headH0 < 0 ? Math.pow(vw, 1 + 1 / n) : 1;
        return 0.5 * a * a * ((p + headH0) * (vw - v1) + p * n / (n + 1) * (Math.pow(v1, 1 + 1 / n) - raised));
    }

    private void leg(double from, double to, int steps, int offset) {
        double h = (to - from) / steps;
        double halfCos = Math.cos(h / 2);
        double halfSin = Math.sin(h / 2);
        double c = Math.cos(from);
        double s = Math.sin(from);
        double limit = AXIS * curve.a;
        for (int i = 0; i < steps && reachedTable; i++) {
            double cm = c * halfCos - s * halfSin;
            double sm = s * halfCos + c * halfSin;
            double ce = cm * halfCos - sm * halfSin;
            double se = sm * halfCos + cm * halfSin;
            double ka = pull(r, z);
            double kb = pull(r + h / 2 * ka * c, z + h / 2 * ka * s);
            double rc = r + h / 2 * kb * cm;
            double zc = z + h / 2 * kb * sm;
            double kc = pull(rc, zc);
            double rd = r + h * kc * cm;
            double zd = z + h * kc * sm;
            double kd = pull(rd, zd);
            double rNext = r + h / 6 * (ka * c + 2 * (kb + kc) * cm + kd * ce);
            double zNext = z + h / 6 * (ka * s + 2 * (kb + kc) * sm + kd * se);
            if (!(rNext > limit) || !(rd > limit) || !(zNext + headH0 > 0)) {
                reachedTable = false;
                return;
            }
            quadratures(h, r, r + h / 2 * ka * c, rc, rd, ka, kb, kc, kd, s, sm, se);
            r = rNext;
            z = zNext;
            c = ce;
            s = se;
            keep(offset + i + 1);
        }
    }

    private double pull(double ring, double depth) {
        return tension / ((depth + headH0) * ring);
    }

    private void quadratures(double h, double ringA, double ringB, double ringC, double ringD, double ka, double kb, double kc, double kd, double s, double sm,
            double se) {
        double sa = ka / (1 + tension / (ringA * stiffness));
        double sb = kb / (1 + tension / (ringB * stiffness));
        double sc = kc / (1 + tension / (ringC * stiffness));
        double sd = kd / (1 + tension / (ringD * stiffness));
        arc += h / 6 * (sa + 2 * (sb + sc) + sd);
        bandArea += Math.PI * h / 3 * (ringA * sa + 2 * (ringB * sb + ringC * sc) + ringD * sd);
        bandVolume += Math.PI * h / 6 * (ringA * ringA * ka * s
                + 2 * (ringB * ringB * kb + ringC * ringC * kc) * sm + ringD * ringD * kd * se);
    }

    private void keep(int i) {
        if (nodeR != null) {
            nodeR[i] = r;
            nodeZ[i] = z;
            nodeArc[i] = arc;
        }
    }

    /** Ring radius at that reference arc, between nodes by the cubic through value and slope. */
    double ringAt(double reference) {
        int i = 1;
        while (i < nodeArc.length - 1 && nodeArc[i] < reference) {
            i++;
        }
        double width = nodeArc[i] - nodeArc[i - 1];
        double x = (reference - nodeArc[i - 1]) / width;
        double from = Math.cos(angle(i - 1)) * width;
        double to = Math.cos(angle(i)) * width;
        double rise = nodeR[i] - nodeR[i - 1];
        return nodeR[i - 1] + x * rise + x * (1 - x) * ((from - rise) * (1 - x) - (to - rise) * x);
    }

    /** Tangent angle at node i. */
    double angle(int i) {
        return i <= upper ? psi1 + (Math.PI / 2 - psi1) * i / upper
                : Math.PI / 2 * (1 + (double) (i - upper) / lower);
    }

    /** Head at the table. */
    double baseHead() {
        return z + headH0;
    }

    /** Liquid held, from the balance of the base: head at the table times contact area. */
    double volume() {
        return baseHead() * Math.PI * r * r;
    }

    /** Liquid under the taut dome, down to the ring where the band starts. */
    double liquidUnderDome() {
        double waterline = headH0 < 0 ? curve.parameterAtDepth(-headH0 / growth) : 0;
        double scale = growth * growth * growth;
        return scale * (curve.capVolume(t1) - curve.capVolume(waterline));
    }
}
