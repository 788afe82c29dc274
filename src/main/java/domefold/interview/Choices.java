package domefold.interview;

import domefold.patient.Side;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What surgeon and patient have chosen so far, beside the readings.
 *
 * @param pinned device ids held side by side, two to four, in the order pinned
 * @param settled what is settled on each side
 * @param discussed ids of the topics talked over
 * @param reasonTyped the surgeon's own words, needed where a device lies outside
 */
public record Choices(
        List<String> pinned, Map<Side, Settled> settled, Set<String> discussed, Optional<String> reasonTyped) {
    public static final Choices NONE = new Choices(List.of(), Map.of(), Set.of(), Optional.empty());
    public static final int MOST_PINNED = 4;

    public Choices {
        pinned = List.copyOf(pinned);
        Map<Side, Settled> copy = new EnumMap<>(Side.class);
        copy.putAll(settled);
        settled = Collections.unmodifiableMap(copy);
        discussed = Collections.unmodifiableSet(new java.util.LinkedHashSet<>(discussed));
    }

    /**
     * One side's choice.
     *
     * @param deviceId the device
     * @param fillMl the fill in mL, empty for a device that comes filled
     * @param foldLoweringCm how far the fold is lowered; 0 keeps it
     * @param incisionCm the opening's length
     */
    public record Settled(
            Optional<String> deviceId,
            OptionalDouble fillMl,
            OptionalDouble foldLoweringCm,
            OptionalDouble incisionCm) {
        public static final Settled OPEN = new Settled(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

        public Settled withDevice(String id) {
            return new Settled(Optional.of(id), OptionalDouble.empty(), foldLoweringCm, incisionCm);
        }

        public Settled withFill(double ml) {
            return new Settled(deviceId, OptionalDouble.of(ml), foldLoweringCm, incisionCm);
        }

        public Settled withLowering(double cm) {
            return new Settled(deviceId, fillMl, OptionalDouble.of(cm), incisionCm);
        }

        public Settled withIncision(double cm) {
            return new Settled(deviceId, fillMl, foldLoweringCm, OptionalDouble.of(cm));
        }
    }

    public Settled on(Side side) {
        return settled.getOrDefault(side, Settled.OPEN);
    }

    public Choices withSettled(Side side, Settled choice) {
        Map<Side, Settled> copy = new LinkedHashMap<>(settled);
        copy.put(side, choice);
        return new Choices(pinned, copy, discussed, reasonTyped);
    }

    public Choices withPinned(List<String> ids) {
        return new Choices(ids, settled, discussed, reasonTyped);
    }

    public Choices withDiscussed(Set<String> ids) {
        return new Choices(pinned, settled, ids, reasonTyped);
    }

    public Choices withReason(String words) {
        return new Choices(pinned, settled, discussed, words.isBlank() ? Optional.empty() : Optional.of(words));
    }
}
