package domefold.followup.course;

import domefold.evidence.Table;
import domefold.outcome.Refusal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A practice's prices as a table: {@code item,price,currency}, one line per price, one currency throughout. */
public final class PriceTable {
    private static final List<String> COLUMNS = List.of("item", "price", "currency");

    private PriceTable() {}

    /**
     * The prices in it.
     *
     * @throws Refusal naming the line and what would be right
     */
    public static PriceList read(Table table) {
        if (!table.columns().equals(COLUMNS)) {
            throw new Refusal("prices-columns", "line 1", "the columns of a price list are " + String.join(",", COLUMNS)
                    + ", this one has " + String.join(",", table.columns()));
        }
        if (table.rows().isEmpty()) {
            throw new Refusal("prices-empty", table.name(), "the price list holds no price");
        }
        String currency = table.rows().get(0).text("currency");
        Map<PriceList.Item, Double> prices = new EnumMap<>(PriceList.Item.class);
        for (Table.Row row : table.rows()) {
            if (currency.isEmpty() || !row.text("currency").equals(currency)) {
                throw refused(row, "every line names the same currency");
            }
            if (prices.put(item(row), price(row)) != null) {
                throw refused(row, row.text("item") + " has a price already");
            }
        }
        return new PriceList(currency, prices);
    }

    private static PriceList.Item item(Table.Row row) {
        return Stream.of(PriceList.Item.values()).filter(item -> item.field().equals(row.text("item"))).findFirst()
                .orElseThrow(() -> refused(row, "'" + row.text("item") + "' is no item; known are " + Stream.of(PriceList.Item.values())
                        .map(PriceList.Item::field).collect(Collectors.joining(", "))));
    }

    private static double price(Table.Row row) {
        try {
            double price = row.number("price").orElseThrow(() -> refused(row, "the price is empty; leave the line out instead"));
            if (price >= 0 && Double.isFinite(price)) {
                return price;
            }
        } catch (NumberFormatException notANumber) {
            throw refused(row, "'" + row.text("price") + "' is not a price");
        }
        throw refused(row, "a price is 0 or more");
    }

    private static Refusal refused(Table.Row row, String text) {
        return new Refusal("prices-row", "line " + row.line(), "line " + row.line() + " of the price list: " + text);
    }
}
