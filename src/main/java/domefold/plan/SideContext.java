package domefold.plan;

import domefold.outcome.Band;
import domefold.patient.Breast;
import java.util.Optional;

/**
 * Everything about one side that holding a device against it needs.
 *
 * @param breast the readings as taken
 * @param numbers the same as bare numbers
 * @param drawn the side under the reading error, empty without a base width
 * @param band the volume band, empty without a base width
 * @param limits what the side allows
 */
record SideContext(
        Breast breast, SideNumbers numbers, Optional<DrawnSide> drawn, Optional<Band> band, SideLimits limits) {}
