package domefold.advise;

import domefold.choose.Pairs;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.followup.FollowUps;
import domefold.outcome.Band;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.CandidateExtras;
import domefold.plan.DevicePair;
import domefold.plan.SideLimits;
import domefold.shell.BreastAfter;
import domefold.shell.Insertion;
import domefold.shell.InsertionBand;
import domefold.shell.RippleRank;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the shell, the follow-up and the breast after add to each candidate of one plan. */
final class Extras implements CandidateExtras {
    private final Evidence evidence;
    private final Insertion.Fits fits;
    private final Map<Kind, Optional<Candidate.FollowUp>> followUps = new HashMap<>();

    /** Devices of one fill, surface and outline share a schedule and cohorts. */
    private record Kind(Fill fill, Surface surface, boolean round) {
        // Written out: those the compiler leaves to run time cost the first plan more than all its look-ups.
        @Override
        public boolean equals(Object other) {
            return other instanceof Kind kind && kind.fill == fill && kind.surface == surface && kind.round == round;
        }

        @Override
        public int hashCode() {
            return (fill.hashCode() * 31 + surface.hashCode()) * 2 + (round ? 1 : 0);
        }
    }

    Extras(Evidence evidence, Insertion.Fits fits) {
        this.evidence = evidence;
        this.fits = fits;
    }

    @Override
    public Optional<Candidate.FollowUp> followUp(Case of, Device device) {
        return followUps.computeIfAbsent(new Kind(device.fill(), device.surface(), device.widthCm() == device.heightCm()),
                kind -> FollowUps.forDevice(device, of.setting(), evidence));
    }

    /** At nominal volume, for the side that shows ripples more. */
    @Override
    public Optional<Candidate.Ripple> ripple(Case of, Device device, SideLimits left, SideLimits right) {
        if (!ranks(of, left) || !ranks(of, right)) {
            return Optional.empty();
        }
        RippleRank.Upright upright = RippleRank.Upright.of(device, device.nominalMl(), evidence.constants());
        RippleRank onLeft = rank(of, device, upright, left);
        RippleRank onRight = rank(of, device, upright, right);
        boolean leftIsWorse = onLeft.index() >= onRight.index();
        RippleRank worse = leftIsWorse ? onLeft : onRight;
        String side = onLeft.index() == onRight.index() ? "" : leftIsWorse ? "LEFT: " : "RIGHT: ";
        return Optional.of(new Candidate.Ripple(worse.index(), side + worse.text()));
    }

    /** True where the cover is known and the pocket settled. */
    private static boolean ranks(Case of, SideLimits limits) {
        return of.side(limits.side()).readings().has(Measure.UPPER_PINCH) && limits.pocket().isPresent();
    }

    private RippleRank rank(Case of, Device device, RippleRank.Upright upright, SideLimits limits) {
        double pinchCm = of.side(limits.side()).readings().value(Measure.UPPER_PINCH).getAsDouble();
        return RippleRank.of(device, upright, pinchCm, limits.pocket().get().underMuscle(), evidence.constants());
    }

    @Override
    public Optional<Candidate.Incision> incision(Case of, Device device, Optional<Candidate.Incision> published) {
        if (published.isEmpty() || of.setting().route().isEmpty()) {
            return published;
        }
        Route route = of.setting().route().get();
        InsertionBand band = Insertion.of(device, route, of.setting().funnel().orElse(false), smallestAreolaCm(of), fits, evidence);
        return Optional.of(new Candidate.Incision(band.lowCm(), OptionalDouble.of(band.typicalCm()), band.highCm(),
                route, band.device(), basis(band)));
    }

    /** What the length rests on, and what limits or contradicts it. */
    private static String basis(InsertionBand band) {
        StringBuilder words = new StringBuilder(band.basis());
        band.notes().forEach(note -> words.append("; ").append(note.text()));
        return words.toString();
    }

    private static OptionalDouble smallestAreolaCm(Case of) {
        OptionalDouble left = of.left().readings().value(Measure.AREOLA);
        OptionalDouble right = of.right().readings().value(Measure.AREOLA);
        if (left.isEmpty() || right.isEmpty()) {
            return left.isPresent() ? left : right;
        }
        return OptionalDouble.of(Math.min(left.getAsDouble(), right.getAsDouble()));
    }

    @Override
    public Optional<Band> upperPolePercent(Case of, Side side, Device device) {
        Readings readings = of.side(side).readings();
        OptionalDouble volumeMl = readings.value(Measure.BREAST_VOLUME);
        OptionalDouble baseCm = readings.value(Measure.BASE_WIDTH);
        OptionalDouble medialCm = readings.value(Measure.MEDIAL_PINCH);
        OptionalDouble lateralCm = readings.value(Measure.LATERAL_PINCH);
        if (volumeMl.isEmpty() || baseCm.isEmpty() || medialCm.isEmpty() || lateralCm.isEmpty()) {
            return Optional.empty();
        }
        double pinchCm = medialCm.getAsDouble() + lateralCm.getAsDouble();
        return Optional.of(BreastAfter.of(volumeMl.getAsDouble(), baseCm.getAsDouble(), pinchCm, device, evidence.constants())
                .upperPercentBand());
    }

    @Override
    public List<DevicePair> pairs(Case of, SideLimits left, SideLimits right, List<Candidate> candidates) {
        return Pairs.of(of, left, right, candidates, evidence.constants());
    }
}
