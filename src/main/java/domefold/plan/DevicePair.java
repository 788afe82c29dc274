package domefold.plan;

import java.util.OptionalDouble;

/**
 * A device for each side.
 *
 * @param leftId device for her left
 * @param rightId device for her right
 * @param leftFillMl volume on her left
 * @param rightFillMl volume on her right
 * @param volumeGapMl what remains between the sides, left less right; empty where the natural volumes are unknown
 * @param text in words: what remains, what differs
 */
public record DevicePair(
        String leftId, String rightId, double leftFillMl, double rightFillMl, OptionalDouble volumeGapMl, String text) {}
