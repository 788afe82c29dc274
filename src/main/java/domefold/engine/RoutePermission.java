package domefold.engine;

import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import java.util.HashMap;
import java.util.Map;

/**
 * What the incision table says about a route and a device.
 *
 * @param permitted false where the table says no
 * @param words the table's own answer, for example {@code limited by areola arc}
 * @param note the reason, where the table gives one
 * @param source who said it
 * @param status how it came to us
 */
public record RoutePermission(boolean permitted, String words, String note, String source, Status status) {

    /**
     * The permission row.
     *
     * @param route as the table names it: inframammary, periareolar, transaxillary, transumbilical
     * @param shaped true for a device that is not round
     */
    public static RoutePermission of(String route, Fill fill, boolean shaped, Evidence evidence) {
        String wanted = fill == Fill.SALINE ? "saline" : shaped ? "gel shaped" : "gel round";
        RoutePermission found = evidence.once(All.class, All::of).byRouteAndFill().get(route + "|" + wanted);
        if (found == null) {
            throw new IllegalArgumentException("no permission row for " + wanted + " by the " + route + " route");
        }
        return found;
    }

    /** Every permission row, by {@code route|fill}. */
    private record All(Map<String, RoutePermission> byRouteAndFill) {
        static All of(Evidence evidence) {
            Map<String, RoutePermission> rows = new HashMap<>();
            for (Table.Row row : evidence.table("incision").rows()) {
                if (row.text("row_type").equals("permission")) {
                    String allowed = row.text("allowed");
                    boolean permitted = !(allowed.equals("no") || allowed.startsWith("no,"));
                    rows.putIfAbsent(row.text("route") + "|" + row.text("fill"), new RoutePermission(permitted, allowed,
                            row.text("note"), row.text("source"), Status.of(row.text("status"))));
                }
            }
            return new All(rows);
        }
    }

    /** True where the answer is neither a plain yes nor a no: it deserves a note. */
    public boolean limited() {
        return permitted && !words.startsWith("yes");
    }
}
