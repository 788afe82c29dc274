package domefold.plan;

import domefold.basics.Lists;
import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Surface;
import domefold.engine.DomeArc;
import domefold.engine.ErrorDraws;
import domefold.engine.Exact;
import domefold.engine.FoldTarget;
import domefold.engine.RoutePermission;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/**
 * From a case and a device list to a plan. Pure: the same arguments give the same plan, on every machine and every day.
 *
 * <p>Where a reading is missing, the results that need it are empty and name it; nothing is assumed for it.
 */
public final class Planner {
    /** Devices from which follow-up and ripples are computed beside the fits. */
    private static final int WORTH_A_THREAD = 40;

    private Planner() {}

    /** Makes what no case changes, the usual draws foremost, for a caller who has a thread to spare before the first plan. */
    public static void prepare() {
        errors(PlanOptions.DEFAULT);
        DomeArc.superellipseCm(1, 1, 1);
    }

    /** The plan without what other rooms add. */
    public static Plan plan(Case of, Catalogue catalogue, Evidence evidence, PlanOptions options) {
        return plan(of, catalogue, evidence, options, CandidateExtras.NONE);
    }

    public static Plan plan(
            Case of, Catalogue catalogue, Evidence evidence, PlanOptions options, CandidateExtras extras) {
        return plan(of, () -> catalogue, evidence, options, extras);
    }

    /** @param list gives the device list; asked once, after what the tissues allow is computed without it */
    public static Plan plan(
            Case of, Supplier<Catalogue> list, Evidence evidence, PlanOptions options, CandidateExtras extras) {
        Constants constants = evidence.constants();
        VerdictRule rule = new VerdictRule(constants, options.widthSchool());
        ErrorDraws errors = errors(options);
        CaseRules rules = CaseRules.of(of, evidence);
        SideContext left = LimitsOf.of(of, Side.LEFT, evidence, rule, errors);
        SideContext right = LimitsOf.of(of, Side.RIGHT, evidence, rule, errors);
        Catalogue catalogue = list.get();
        List<Candidate> candidates = candidates(catalogue, left, right, rule, rules, constants, extras);
        return new Plan(of, catalogue.name(), catalogue.sha256(), rules.blocked(),
                PlanNotes.of(rules, catalogue, left.limits(), right.limits(), evidence), left.limits(), right.limits(),
                candidates, extras.pairs(of, left.limits(), right.limits(), candidates));
    }

    /** The usual draws, made once: they cost as much as a plan of a few devices. */
    private static final class Usual {
        static final ErrorDraws DRAWS = drawn(PlanOptions.DEFAULT);
    }

    private static ErrorDraws errors(PlanOptions options) {
        boolean usual = options.draws() == PlanOptions.DEFAULT.draws() && options.seed() == PlanOptions.DEFAULT.seed();
        return usual ? Usual.DRAWS : drawn(options);
    }

    private static ErrorDraws drawn(PlanOptions options) {
        return ErrorDraws.of(SideNumbers.VARYING.size(), options.draws(), options.seed());
    }

    private static List<Candidate> candidates(Catalogue catalogue, SideContext left, SideContext right,
            VerdictRule rule, CaseRules rules, Constants constants, CandidateExtras extras) {
        Case of = rules.of();
        FoldTarget rows = FoldTarget.of(constants);
        FitOf onLeft = new FitOf(left, rule, rules, constants, catalogue.devices().size());
        FitOf onRight = new FitOf(right, rule, rules, constants, catalogue.devices().size());
        Set<Surface> surfaces = of.setting().surfaces();
        List<Device> offered = surfaces.isEmpty() ? catalogue.devices()
                : Lists.where(catalogue.devices(), device -> surfaces.contains(device.surface()));
        Beside<List<Owned>> owned = Beside.begin(offered.size() >= WORTH_A_THREAD && extras != CandidateExtras.NONE,
                () -> Lists.map(offered, device -> new Owned(extras.followUp(of, device),
                        extras.ripple(of, device, left.limits(), right.limits()))));
        List<Candidate> fitted = new ArrayList<>();
        for (Device device : offered) {
            DeviceGeometry geometry = DeviceGeometry.of(device, rows);
            RoutePermission permission = rules.permission(device);
            Optional<Candidate.Incision> incision = extras.incision(of, device, rules.incision(device));
            Optional<Note> gap = gapAfter(of, device, left, right, rule, constants);
            fitted.add(new Candidate(device,
                    onLeft.of(geometry, permission, incision, gap, extras.upperPolePercent(of, Side.LEFT, device)),
                    onRight.of(geometry, permission, incision, gap, extras.upperPolePercent(of, Side.RIGHT, device)),
                    incision, Optional.empty(), Optional.empty()));
        }
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < fitted.size(); i++) {
            candidates.add(owned.result().get(i).of(fitted.get(i)));
        }
        return candidates;
    }

    /** What owning a device brings; no verdict waits for it. */
    private record Owned(Optional<Candidate.FollowUp> followUp, Optional<Candidate.Ripple> ripple) {
        Candidate of(Candidate fitted) {
            return new Candidate(fitted.device(), fitted.left(), fitted.right(), fitted.incision(), followUp, ripple);
        }
    }

    /** The gap now less the mean widening of the two sides, where everything it needs was taken and it is small. */
    private static Optional<Note> gapAfter(Case of, Device device, SideContext left, SideContext right,
            VerdictRule rule, Constants constants) {
        OptionalDouble gap = of.chest().value(Measure.INTERMAMMARY);
        if (gap.isEmpty() || left.band().isEmpty() || right.band().isEmpty() || !left.numbers().hasPinches()
                || !right.numbers().hasPinches()) {
            return Optional.empty();
        }
        double widening = 0.5 * (Math.max(0, device.widthCm() - left.numbers().ceilingCm())
                + Math.max(0, device.widthCm() - right.numbers().ceilingCm()));
        double after = gap.getAsDouble() - widening;
        if (!Exact.below(after, constants.value("VERDICT-GAP-SMALL"))) {
            return Optional.empty();
        }
        return Optional.of(new Note("gap-small", "the gap between the breasts would be " + Figures.cm(after) + " cm ("
                + Figures.cm(gap.getAsDouble()) + " cm now, less " + Figures.cm(widening)
                + " cm of widening), below " + Figures.cm(constants.value("VERDICT-GAP-SMALL"))
                + " cm; teaching asks for " + Figures.cm(constants.value("WID-06")) + " cm"));
    }
}
