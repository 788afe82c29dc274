package domefold.plan;

import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.patient.Measure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One device held against one side.
 *
 * @param verdict fits, tight or outside
 * @param reasons why it is not plainly "fits", each with the numbers
 * @param notes remarks that are no verdict
 * @param widthMarginCm width ceiling less device width; negative is wider than the ceiling
 * @param volumeMarginMl distance inside the volume band to its nearer end; negative is outside the band
 * @param foldTargetCm nipple to new fold on stretch, for this device
 * @param foldLoweringCm target less the stretched reading, not below 0
 * @param stability share of the error draws in which the verdict is not "outside"
 * @param fitShare share of the error draws in which the verdict is "fits"
 * @param decidingReading the reading whose error moves the fit share most
 * @param projectionGainCm how much further forward the breast may come
 * @param upperPolePercent share of the side profile above the nipple
 * @param wouldChange for each reason, the smallest change of one reading that removes it
 */
public record SideFit(
        Verdict verdict,
        List<Note> reasons,
        List<Note> notes,
        OptionalDouble widthMarginCm,
        OptionalDouble volumeMarginMl,
        OptionalDouble foldTargetCm,
        OptionalDouble foldLoweringCm,
        OptionalDouble stability,
        OptionalDouble fitShare,
        Optional<Measure> decidingReading,
        Optional<Band> projectionGainCm,
        Optional<Band> upperPolePercent,
        List<Note> wouldChange) {
    public SideFit {
        reasons = List.copyOf(reasons);
        notes = List.copyOf(notes);
        wouldChange = List.copyOf(wouldChange);
    }
}
