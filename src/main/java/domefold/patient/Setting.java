package domefold.patient;

import domefold.device.Surface;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What the surgeon has chosen for this consult. Every field may be open.
 *
 * @param surveillance id of the imaging schedule, for example {@code US-2020}
 * @param route where the incision lies
 * @param funnel whether a gel device goes in through a funnel
 * @param pocket the plane; empty lets the engine advise
 * @param horizonYears how far follow-up is counted
 * @param surfaces the surfaces offered; empty means no limit
 */
public record Setting(
        Optional<String> surveillance,
        Optional<Route> route,
        Optional<Boolean> funnel,
        Optional<Pocket> pocket,
        OptionalInt horizonYears,
        Set<Surface> surfaces) {
    public static final Setting OPEN = new Setting(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty(), Set.of());

    public Setting {
        surfaces = Set.copyOf(surfaces);
    }
}
