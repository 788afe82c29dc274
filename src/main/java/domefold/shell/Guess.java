package domefold.shell;

/**
 * Where Newton starts. Slack side: the head falls like (1 - f)^0.8. Pressurised side: with x = (V - V_full) /
 * (V_max - V_full) the head goes like x / (1 - x) and t1 runs from its just-full value to that of the capacity limit.
 * Fitted by eye to solved shells; a guess only, nothing printed depends on it.
 */
record Guess(double parameter, double head) {

    static Guess of(ShellMetric metric, double volumeMl, double stiffnessCm2) {
        double f = volumeMl / metric.fullVolumeMl();
        return f < 1 ? slack(metric, 1 - f) : pressurised(metric, volumeMl, stiffnessCm2);
    }

    private static Guess slack(ShellMetric metric, double missing) {
        double aspect = metric.curve.p / metric.curve.a;
        double power = 0.95 - 0.35 * aspect;
        double depth = 0.2 * metric.curve.p * Math.pow(missing / 0.1, 0.8);
        double room = Math.PI / 2 - metric.fullParameter;
        double t = metric.fullParameter + room * (1 - Math.exp(-2.2 * Math.pow(missing / 0.2, power) * 0.45));
        return new Guess(t, -depth);
    }

    private static Guess pressurised(ShellMetric metric, double volumeMl, double stiffnessCm2) {
        double full = metric.fullVolumeMl();
        double x = (volumeMl - full) / (metric.capacityMl() - full);
        double effective = Double.isInfinite(stiffnessCm2) ? x : x / (1 + x);
        double end = metric.capacity.parameter();
        double t = end + (metric.fullParameter - end) * Math.pow(1 - effective, 1.3);
        double head = 0.45 * metric.fullBaseHead * effective / (1 - effective);
        return new Guess(t, head);
    }
}
