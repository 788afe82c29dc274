package domefold.practice;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.engine.Exact;
import domefold.engine.LabelAge;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A plan that stays inside the engine's limits, for a tutor to hold others against. One of many: it takes the engine's
 * ceiling, volume, pocket and lowering as they stand, and on each side the device that keeps fitting most often over the
 * reading error.
 */
final class ReferencePlan {
    private static final String GEL_SCHEDULE = "US-2020";
    private static final String SALINE_SCHEDULE = "US-SALINE";
    private final Case of;
    private final Constants constants;
    private final Fill fill;

    private ReferencePlan(Case of, Evidence evidence) {
        this.of = of;
        constants = evidence.constants();
        double age = of.patient().value(Measure.AGE).orElseThrow();
        fill = LabelAge.below(age, Fill.GEL, constants) ? Fill.SALINE : Fill.GEL;
    }

    /** The case with the reference's route and schedule, for the engine. */
    static Case settingOn(PracticeCase practice, Evidence evidence) {
        return open(new ReferencePlan(practice.of(), evidence).fill).settingOn(practice.of());
    }

    private static FellowPlan open(Fill fill) {
        return new FellowPlan(false, SidePlan.OPEN, SidePlan.OPEN, Optional.of(Route.INFRAMAMMARY), fill == Fill.GEL,
                OptionalDouble.empty(), Optional.of(fill == Fill.GEL ? GEL_SCHEDULE : SALINE_SCHEDULE), Set.of(), "");
    }

    /** @param plan the engine's plan of {@link #settingOn} over the whole list */
    static FellowPlan of(PracticeCase practice, Plan plan, Catalogue catalogue, Evidence evidence) {
        ReferencePlan reference = new ReferencePlan(practice.of(), evidence);
        Set<String> warnings = Flags.of(plan, evidence.constants()).keySet();
        if (!plan.blocked().isEmpty()) {
            return FellowPlan.declining(warnings, "reference: the history blocks an operation now");
        }
        Optional<Candidate> left = reference.best(plan, Side.LEFT);
        Optional<Candidate> right = reference.best(plan, Side.RIGHT);
        if (left.isEmpty() || right.isEmpty()) {
            return FellowPlan.declining(warnings, "reference: no " + reference.fill.key()
                    + " device of the list stays inside the limits of both sides");
        }
        FellowPlan open = open(reference.fill);
        return new FellowPlan(false, reference.side(plan, Side.LEFT, left.get()),
                reference.side(plan, Side.RIGHT, right.get()), open.route(), open.funnel(),
                longest(left.get(), right.get()), open.schedule(), warnings,
                "reference: inside the engine's limits on both sides");
    }

    /** Fits before tight; then a profile for the look wanted; then the largest share of error draws that fits. */
    private Optional<Candidate> best(Plan plan, Side side) {
        return plan.candidates().stream()
                .filter(one -> one.device().fill() == fill && one.side(side).verdict() != Verdict.OUTSIDE)
                .min(Comparator.comparing((Candidate one) -> one.side(side).verdict())
                        .thenComparing(one -> !suits(one.device()))
                        .thenComparing(one -> -one.side(side).fitShare().orElse(0)));
    }

    private boolean suits(Device device) {
        return of.wishes().upperPole().map(look -> DeviceMarks.usual(look).contains(device.profile())).orElse(true);
    }

    private SidePlan side(Plan plan, Side side, Candidate chosen) {
        SideLimits limits = plan.side(side);
        SideFit fit = chosen.side(side);
        OptionalDouble volume = limits.startingVolumeMl().isPresent() ? limits.startingVolumeMl()
                : limits.volumeBandMl().map(band -> OptionalDouble.of((band.low() + band.high()) / 2))
                        .orElse(OptionalDouble.empty());
        OptionalDouble fillMl = fill == Fill.SALINE ? OptionalDouble.of(chosen.device().nominalMl())
                : OptionalDouble.empty();
        return new SidePlan(limits.widthCeilingCm(), volume, pocket(limits, of.side(side).readings()),
                fit.foldLoweringCm(), Optional.of(chosen.device().id()), Optional.of(fill), fillMl,
                Optional.of(chosen.device().profile()));
    }

    /** The plane advised; under the whole muscle where the fold is too thin to divide it there. */
    private Optional<Pocket> pocket(SideLimits limits, Readings readings) {
        OptionalDouble fold = readings.value(Measure.FOLD_PINCH);
        boolean thinFold = fold.isPresent() && Exact.below(fold.getAsDouble(), constants.value("POC-03"));
        return limits.pocket().map(pocket -> pocket == Pocket.DUAL_PLANE && thinFold ? Pocket.SUBMUSCULAR : pocket);
    }

    private static OptionalDouble longest(Candidate left, Candidate right) {
        return Stream.of(left, right).flatMap(one -> one.incision().stream())
                .mapToDouble(Candidate.Incision::highCm).max();
    }
}
