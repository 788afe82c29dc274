package domefold.record;

import domefold.device.Device;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was settled for one side. The device is copied from the list of that day, so that a later list changes nothing.
 *
 * @param side her left or right
 * @param device the device as the list showed it
 * @param fillMl the volume it is filled to; the nominal volume for gel
 * @param pocket the plane
 * @param fold what happens to the fold
 * @param route where the incision lies
 * @param incision opening the device needs, empty where nothing is published for it
 * @param openingCm the opening settled for this side, empty where it was left open
 * @param neighbours the sizes to have in the room beside it, smaller first
 * @param verdict how the device stood against this side's limits; empty where there was no verdict
 * @param margins the distances to each limit, in words
 * @param reasons why it did not plainly fit, in words
 * @param whyOutside the surgeon's reason for a device outside the limits
 */
public record Settlement(
        Side side,
        Device device,
        double fillMl,
        Optional<Pocket> pocket,
        Fold fold,
        Optional<Route> route,
        Optional<Candidate.Incision> incision,
        OptionalDouble openingCm,
        List<Device> neighbours,
        Optional<Verdict> verdict,
        List<String> margins,
        List<String> reasons,
        Optional<String> whyOutside) {

    public Settlement {
        neighbours = List.copyOf(neighbours);
        margins = List.copyOf(margins);
        reasons = List.copyOf(reasons);
    }

    /** One whose opening was left open. */
    public Settlement(Side side, Device device, double fillMl, Optional<Pocket> pocket, Fold fold, Optional<Route> route,
            Optional<Candidate.Incision> incision, List<Device> neighbours, Optional<Verdict> verdict, List<String> margins,
            List<String> reasons, Optional<String> whyOutside) {
        this(side, device, fillMl, pocket, fold, route, incision, OptionalDouble.empty(), neighbours, verdict, margins, reasons,
                whyOutside);
    }

    /**
     * What happens to the fold.
     *
     * @param targetCm nipple to new fold on stretch
     * @param loweringCm how far the fold moves down, never below 0
     * @param plan in words, for example "lower the fold by 0.4 cm"
     */
    public record Fold(OptionalDouble targetCm, OptionalDouble loweringCm, String plan) {}
}
