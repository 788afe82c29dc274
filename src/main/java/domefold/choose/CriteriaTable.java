package domefold.choose;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Surface;
import domefold.evidence.Constants;
import domefold.patient.Case;
import domefold.patient.Side;
import domefold.patient.Wishes;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The criteria of every candidate.
 *
 * <p>Look: projection to width against LOOK-SLOPED, LOOK-EVEN or LOOK-ROUND (sloped low, round high; common practice, no
 * source). Softness and ease of exchange are classes of common practice.
 */
public final class CriteriaTable {
    private CriteriaTable() {}

    /**
     * One row a candidate, in plan order.
     *
     * @param cost what a device and its imaging cost; empty where the practice has no price list
     */
    public static List<Profiled> of(Plan plan, Constants constants, Optional<ToDoubleFunction<Candidate>> cost) {
        Steps steps = new Steps(plan.candidates().stream().map(Candidate::device).toList(), constants);
        List<Profiled> rows = new ArrayList<>();
        for (Candidate candidate : plan.candidates()) {
            rows.add(new Profiled(candidate, values(candidate, plan.of(), constants, cost, steps)));
        }
        return rows;
    }

    private static Map<Criterion, Double> values(Candidate candidate, Case of, Constants constants,
            Optional<ToDoubleFunction<Candidate>> cost, Steps steps) {
        Map<Criterion, Double> values = new EnumMap<>(Criterion.class);
        Device device = candidate.device();
        double margin = Double.POSITIVE_INFINITY;
        for (Side side : Side.values()) {
            margin = Math.min(margin, candidate.side(side).widthMarginCm().orElse(Double.NaN));
        }
        if (Double.isFinite(margin)) {
            values.put(Criterion.TISSUE_MARGIN, margin);
        }
        of.wishes().upperPole().ifPresent(pole -> values.put(Criterion.LOOK,
                Math.abs(device.projectionCm() / device.widthCm() - constants.value(lookId(pole)))));
        OptionalDouble wish = of.wishes().sizeWishMl();
        if (wish.isPresent()) {
            values.put(Criterion.SIZE, steps.nearestTo(device, wish.getAsDouble()));
        }
        candidate.incision().ifPresent(i -> values.put(Criterion.SCAR, i.typicalCm().orElse((i.lowCm() + i.highCm()) / 2)));
        values.put(Criterion.SOFTNESS, constants.value(device.fill() == Fill.GEL ? "SOFT-GEL" : "SOFT-SALINE"));
        candidate.followUp().ifPresent(f -> values.put(Criterion.IMAGING, (f.examsLow() + f.examsHigh()) / 2.0));
        values.put(Criterion.EXCHANGE, constants.value("EXCHANGE-" + device.fill() + "-" + device.surface()));
        values.put(Criterion.ADJUSTMENT, steps.stepMl(device));
        candidate.ripple().ifPresent(ripple -> values.put(Criterion.EDGES, ripple.index()));
        cost.ifPresent(price -> values.put(Criterion.COST, price.applyAsDouble(candidate)));
        return values;
    }

    private static String lookId(Wishes.UpperPole pole) {
        return "LOOK-" + pole.name();
    }

    /** How finely a volume can be had: saline by its fill, gel by the sizes of its ladder. */
    private static final class Steps {
        private record LadderKey(String line, Fill fill, Surface surface, domefold.device.Profile profile) {
            static LadderKey of(Device device) {
                return new LadderKey(device.line(), device.fill(), device.surface(), device.profile());
            }
        }

        private final Map<LadderKey, double[]> sizes = new java.util.HashMap<>();
        private final double salineStepMl;

        Steps(List<Device> devices, Constants constants) {
            salineStepMl = constants.value("SALINE-STEP");
            Map<LadderKey, List<Double>> collected = new java.util.HashMap<>();
            devices.forEach(d -> collected.computeIfAbsent(LadderKey.of(d), key -> new ArrayList<>()).add(d.nominalMl()));
            collected.forEach((key, list) -> sizes.put(key, list.stream().mapToDouble(Double::doubleValue).sorted().toArray()));
        }

        /** Distance from the wish to the nearest volume this device can be filled to. */
        double nearestTo(Device device, double wishMl) {
            if (device.labelFillMl().isEmpty()) {
                return Math.abs(device.nominalMl() - wishMl);
            }
            double low = device.labelFillMl().get().low();
            double high = device.labelFillMl().get().high();
            return Math.max(0, Math.max(low - wishMl, wishMl - high));
        }

        double stepMl(Device device) {
            if (device.fill() == Fill.SALINE) {
                return salineStepMl;
            }
            double[] ladder = sizes.get(LadderKey.of(device));
            double step = Double.POSITIVE_INFINITY;
            for (double size : ladder) {
                if (size != device.nominalMl()) {
                    step = Math.min(step, Math.abs(size - device.nominalMl()));
                }
            }
            return Double.isFinite(step) ? step : device.nominalMl();
        }
    }
}
