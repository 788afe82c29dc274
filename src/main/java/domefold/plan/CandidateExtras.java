package domefold.plan;

import domefold.device.Device;
import domefold.outcome.Band;
import domefold.patient.Case;
import domefold.patient.Side;
import java.util.List;
import java.util.Optional;

/**
 * What other rooms add to a candidate: follow-up, ripple, shape, another incision model, pairs. Each answers empty where
 * it has nothing to say; {@link #NONE} says nothing at all.
 */
public interface CandidateExtras {
    /** Adds nothing. */
    CandidateExtras NONE = new CandidateExtras() {};

    /** Exams and outcomes under the chosen schedule. */
    default Optional<Candidate.FollowUp> followUp(Case of, Device device) {
        return Optional.empty();
    }

    /** Ripple index of a device under the cover of both sides. */
    default Optional<Candidate.Ripple> ripple(Case of, Device device, SideLimits left, SideLimits right) {
        return Optional.empty();
    }

    /** Another length than the published rows give; empty keeps theirs, which is handed in. */
    default Optional<Candidate.Incision> incision(Case of, Device device, Optional<Candidate.Incision> published) {
        return published;
    }

    /** Share of the side profile above the nipple, percent. */
    default Optional<Band> upperPolePercent(Case of, Side side, Device device) {
        return Optional.empty();
    }

    /** Pairs of devices that leave the smallest difference between the sides. */
    default List<DevicePair> pairs(Case of, SideLimits left, SideLimits right, List<Candidate> candidates) {
        return List.of();
    }
}
