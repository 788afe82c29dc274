package domefold.followup.course;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What the practice itself asks, in one named currency. A price that was not entered is not known, never zero.
 *
 * @param currency as the practice writes it, for example {@code EUR}
 */
public record PriceList(String currency, Map<Item, Double> prices) {

    /** What can carry a price. */
    public enum Item {
        ULTRASOUND("ultrasound"),
        MRI("mri"),
        EXCHANGE_SALINE("exchangeSaline"),
        EXCHANGE_GEL("exchangeGel");

        private final String field;

        Item(String field) {
            this.field = field;
        }

        public String field() {
            return field;
        }
    }

    public PriceList {
        if (currency.isBlank()) {
            throw new IllegalArgumentException("a price list names its currency");
        }
        prices.forEach((item, price) -> {
            if (!(price >= 0 && Double.isFinite(price))) {
                throw new IllegalArgumentException("the price of " + item.field() + " is 0 or more");
            }
        });
        Map<Item, Double> copy = new EnumMap<>(Item.class);
        copy.putAll(prices);
        prices = Collections.unmodifiableMap(copy);
    }

    public OptionalDouble of(Item item) {
        Double price = prices.get(item);
        return price == null ? OptionalDouble.empty() : OptionalDouble.of(price);
    }
}
