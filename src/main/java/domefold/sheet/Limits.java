package domefold.sheet;

import domefold.outcome.Band;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the saved plan allowed on one side, as far as a print shows it.
 *
 * @param widthCeilingCm the widest device
 * @param startingVolumeMl where the volume starts
 * @param volumeBandMl the band around it
 */
public record Limits(OptionalDouble widthCeilingCm, OptionalDouble startingVolumeMl, Optional<Band> volumeBandMl) {
    public static final Limits UNKNOWN = new Limits(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
}
