package domefold.shell;

import domefold.device.Fill;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Route;
import java.util.List;
import java.util.OptionalDouble;

/** What a route lets through: permissions and the areola's arc, from the rows of {@code incision.csv}. */
public final class RouteRule {
    private RouteRule() {}

    /**
     * What the table says of a route and a filling (round devices).
     *
     * @param allowed false where the table's answer begins with "no"
     * @param answer the table's own words, for example "limited by areola arc"
     * @param reason why, empty where the table gives none
     */
    public record Permission(boolean allowed, String answer, String reason, String source, Status status) {}

    /**
     * @param route the route's name as in the table; {@code transumbilical} is there to be refused for gel
     * @throws IllegalArgumentException for a route the table does not know
     */
    public static Permission permission(Table incision, String route, Fill fill) {
        String word = fill == Fill.GEL ? "gel round" : "saline";
        for (Table.Row row : incision.rows()) {
            if (row.text("row_type").equals("permission") && row.text("route").equals(route)
                    && row.text("fill").equals(word)) {
                String answer = row.text("allowed");
                return new Permission(!answer.startsWith("no"), answer, row.text("note"), row.text("source"),
                        Status.of(row.text("status")));
            }
        }
        throw new IllegalArgumentException("no permission row for " + route + " and " + word);
    }

    /** Adds what the route says; false where the opening cannot be had there. */
    static boolean check(Route route, Fill fill, double openingCm, OptionalDouble areolaCm, Table incision,
            List<Note> notes) {
        Permission permission = permission(incision, route.key(), fill);
        if (!permission.allowed()) {
            notes.add(new Note("route-not-permitted", fill.key() + " by the " + route.key() + " route: "
                    + permission.answer() + (permission.reason().isEmpty() ? "" : ", " + permission.reason())));
            return false;
        }
        if (!permission.answer().startsWith("yes")) {
            notes.add(new Note("route-limited", route.key() + ", " + fill.key() + ": " + permission.answer() + " ("
                    + permission.status().words() + ")"));
        }
        if (route != Route.PERIAREOLAR) {
            return true;
        }
        if (areolaCm.isEmpty()) {
            notes.add(new Note("areola-not-taken", "an opening of " + Figures.cm(openingCm)
                    + " cm along the areola needs one of at least " + Figures.cm(Areola.neededCm(openingCm)) + " cm"));
            return true;
        }
        double longest = Areola.longestCm(areolaCm.getAsDouble());
        if (openingCm > longest) {
            notes.add(new Note("areola-too-small", "an areola of " + Figures.cm(areolaCm.getAsDouble()) + " cm gives at most "
                    + Figures.cm(longest) + " cm; an opening of " + Figures.cm(openingCm) + " cm needs one of "
                    + Figures.cm(Areola.neededCm(openingCm)) + " cm (half-circle rule, common practice, no source)"));
            return false;
        }
        return true;
    }
}
