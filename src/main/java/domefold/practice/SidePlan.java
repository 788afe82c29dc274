package domefold.practice;

import domefold.device.Fill;
import domefold.device.Profile;
import domefold.patient.Pocket;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the fellow settles for one side. Empty means "not stated".
 *
 * @param ceilingCm her width ceiling
 * @param volumeMl the volume she aims at
 * @param pocket the plane
 * @param foldLoweringCm how far the fold is lowered, 0 for not
 * @param deviceId the device in the list
 * @param fill what fills it
 * @param fillMl how much, for saline
 * @param profile the profile class she means
 */
public record SidePlan(
        OptionalDouble ceilingCm,
        OptionalDouble volumeMl,
        Optional<Pocket> pocket,
        OptionalDouble foldLoweringCm,
        Optional<String> deviceId,
        Optional<Fill> fill,
        OptionalDouble fillMl,
        Optional<Profile> profile) {
    public static final SidePlan OPEN = new SidePlan(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
            OptionalDouble.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
}
