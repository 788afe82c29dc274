package domefold.plan;

import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Pocket;
import domefold.patient.Side;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one side allows.
 *
 * @param side whose limits
 * @param widthCeilingCm base width less half of each edge pinch
 * @param widthCeilingSdCm its error SD
 * @param startingVolumeMl table value plus adjustments; empty where there is none, with the reason in the notes
 * @param volumeBandMl 5th to 95th percentile of the starting volume over the reading error
 * @param foldTargetCm nipple to new fold on stretch, for the starting volume
 * @param foldLoweringCm target less the stretched reading, not below 0
 * @param foldByMethod the methods side by side, for the starting volume
 * @param pocket the plane chosen by the surgeon, else the one advised
 * @param notes remarks, with stable codes
 * @param incomplete field names that a result needed and did not have
 * @param working line by line
 */
public record SideLimits(
        Side side,
        OptionalDouble widthCeilingCm,
        OptionalDouble widthCeilingSdCm,
        OptionalDouble startingVolumeMl,
        Optional<Band> volumeBandMl,
        OptionalDouble foldTargetCm,
        OptionalDouble foldLoweringCm,
        List<FoldMethod> foldByMethod,
        Optional<Pocket> pocket,
        List<Note> notes,
        List<String> incomplete,
        List<Working> working) {
    public SideLimits {
        foldByMethod = List.copyOf(foldByMethod);
        notes = List.copyOf(notes);
        incomplete = List.copyOf(incomplete);
        working = List.copyOf(working);
    }

    /**
     * One way to a fold target.
     *
     * @param name "volume rows", "dome arc", "dimension minus capacity"
     * @param targetCm nipple to new fold on stretch by this method
     * @param drives true for the one the plan uses
     * @param remark what to know about it
     */
    public record FoldMethod(String name, double targetCm, boolean drives, String remark) {}
}
