package domefold.followup.shown;

import domefold.basics.Order;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Outcome codes of the table as people say them, and the order in which they are shown. */
public final class OutcomeWords {
    /** What is compared first; everything else follows in table order. */
    public static final List<String> FIRST = List.of("contracture_III_IV", "rupture", "deflation", "reoperation",
            "removal_any", "infection");

    private static final Map<String, String> WORDS = Map.of(
            "contracture_III_IV", "capsular contracture",
            "removal_any", "removal of the implant",
            "palpability_visibility", "implant felt or seen",
            "loss_of_nipple_sensation", "loss of nipple sensation",
            "skin_or_breast_sensation", "changed sensation of skin or breast",
            "removal_or_exchange", "removal or exchange");

    private OutcomeWords() {}

    public static String of(String outcome) {
        return WORDS.getOrDefault(outcome, outcome.replace('_', ' '));
    }

    /** The order of a table: outcomes of {@link #FIRST}, then the rest; of one outcome, women before implants. */
    static <T> Comparator<T> order(Function<T, String> outcome, Function<T, String> unit) {
        return Order.then(Order.byRank(row -> rank(outcome.apply(row))), Order.byRank(row -> unit.apply(row).equals("patient") ? 0 : 1));
    }

    private static int rank(String outcome) {
        int place = FIRST.indexOf(outcome);
        return place < 0 ? FIRST.size() : place;
    }
}
