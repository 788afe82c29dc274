package domefold.followup.course;

import domefold.evidence.Evidence;
import domefold.evidence.Status;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A published cost of finding and managing one rupture by a strategy: a comparison with its label, no price of this
 * practice.
 *
 * @param scope {@code asymptomatic} or {@code symptomatic}
 */
public record PublishedCost(Strategy strategy, String scope, double amount, String currency, String year, String source,
        Status status, String note) {
    private static final String ITEM = "cost per rupture found and managed: ";

    public static List<PublishedCost> of(Evidence evidence) {
        return evidence.table("costs").rows().stream().filter(row -> row.text("item").startsWith(ITEM))
                .map(row -> new PublishedCost(strategy(row.text("item").substring(ITEM.length())), row.text("scope"),
                        row.number("value_low").orElseThrow(), row.text("currency"), row.text("price_year"),
                        row.text("source"), Status.of(row.text("status")), row.text("note"))).toList();
    }

    private static Strategy strategy(String words) {
        switch (words) {
            case "ultrasound only":
                return Strategy.ULTRASOUND;
            case "MRI only":
                return Strategy.MRI;
            case "ultrasound then MRI":
                return Strategy.ULTRASOUND_THEN_MRI;
            default:
                throw new IllegalArgumentException("a published cost for the unknown strategy '" + words + "'");
        }
    }

    /** The strategy that cost least in that study. */
    public static PublishedCost cheapest(Evidence evidence, String scope) {
        return of(evidence).stream().filter(cost -> cost.scope().equals(scope))
                .min(Comparator.comparingDouble(PublishedCost::amount)).orElseThrow();
    }

    /** The figure with its label. */
    public String words() {
        return String.format(Locale.ROOT, "published, %s women: %s, %.0f %s per rupture found and managed at prices of %s (%s; %s)",
                scope, strategy.key(), amount, currency, year, source, note);
    }
}
