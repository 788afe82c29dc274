package domefold.export;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import domefold.outcome.Band;
import domefold.patient.Side;
import domefold.sheet.Limits;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a saved plan allowed on each side, read from the plan as it was saved; nothing is computed again. */
public final class PlanLimits {
    private PlanLimits() {}

    /** The limits by side; what the plan does not state is unknown. */
    public static Map<Side, Limits> of(String planJson) {
        Map<Side, Limits> limits = new EnumMap<>(Side.class);
        try {
            JsonNode plan = new ObjectMapper().readTree(planJson);
            for (Side side : Side.values()) {
                limits.put(side, side(plan.path(side.key())));
            }
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("a saved plan is JSON", broken);
        }
        return limits;
    }

    private static Limits side(JsonNode side) {
        JsonNode band = side.path("volumeBandMl");
        return new Limits(number(side.path("widthCeilingCm")), number(side.path("startingVolumeMl")),
                band.path("low").isNumber() && band.path("high").isNumber()
                        ? Optional.of(new Band(band.path("low").doubleValue(), band.path("high").doubleValue()))
                        : Optional.empty());
    }

    private static OptionalDouble number(JsonNode node) {
        return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
    }
}
