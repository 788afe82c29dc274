package domefold.device;

import domefold.outcome.Band;
import java.util.Optional;

/**
 * One row of a device list.
 *
 * @param id unique within its list; the list's own {@code reference}
 * @param line the product line as the list names it
 * @param nominalMl nominal volume
 * @param labelFillMl the label's fill range, for saline only
 * @param widthCm base width
 * @param heightCm base height; equal to the width in a round device
 * @param projectionCm projection as listed
 */
public record Device(
        String id,
        String line,
        Fill fill,
        Surface surface,
        Profile profile,
        double nominalMl,
        Optional<Band> labelFillMl,
        double widthCm,
        double heightCm,
        double projectionCm) {}
