package domefold.patient;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What she wishes.
 *
 * @param upperPole the slope of the upper pole she wants
 * @param sizeWishMl the size in her words, turned into millilitres of implant
 * @param weights how much each matter counts, 0 to 5; absent means "not asked"
 */
public record Wishes(Optional<UpperPole> upperPole, OptionalDouble sizeWishMl, Map<Matter, Integer> weights) {
    public static final Wishes NONE = new Wishes(Optional.empty(), OptionalDouble.empty(), Map.of());
    public static final int HIGHEST_WEIGHT = 5;

    public Wishes {
        Map<Matter, Integer> copy = new EnumMap<>(Matter.class);
        copy.putAll(weights);
        for (Map.Entry<Matter, Integer> entry : copy.entrySet()) {
            if (entry.getValue() < 0 || entry.getValue() > HIGHEST_WEIGHT) {
                throw new IllegalArgumentException(entry.getKey() + " weighs 0 to 5, got " + entry.getValue());
            }
        }
        weights = Collections.unmodifiableMap(copy);
    }

    /** The upper pole wanted. */
    public enum UpperPole {
        SLOPED("sloped"),
        EVEN("even"),
        ROUND("round");

        private final String key;

        UpperPole(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /** What may matter to her in choosing a device. */
    public enum Matter {
        SHORT_SCAR("shortScar", "a short scar"),
        SOFT_FEEL("softFeel", "a soft feel"),
        FEW_IMAGING_VISITS("fewImagingVisits", "few imaging visits"),
        EASY_EXCHANGE("easyExchange", "an easy exchange"),
        FINE_ADJUSTMENT("fineAdjustment", "fine adjustment"),
        HIDDEN_EDGES("hiddenEdges", "hidden edges"),
        LOW_COST("lowCost", "low cost");

        private final String field;
        private final String words;

        Matter(String field, String words) {
            this.field = field;
            this.words = words;
        }

        public String field() {
            return field;
        }

        public String words() {
            return words;
        }
    }
}
