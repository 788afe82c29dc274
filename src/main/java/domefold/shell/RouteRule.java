package domefold.shell;

import domefold.device.Device;
import domefold.engine.AreolaArc;
import domefold.engine.RoutePermission;
import domefold.evidence.Evidence;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Route;
import java.util.List;
import java.util.OptionalDouble;

/** What a route lets through: its permission and the areola's arc. */
final class RouteRule {
    private RouteRule() {}

    /** Adds what the route says; false where the opening cannot be had there. */
    static boolean check(Route route, Device device, double openingCm, OptionalDouble areolaCm, Evidence evidence,
            List<Note> notes) {
        boolean shaped = device.widthCm() != device.heightCm();
        RoutePermission permission = RoutePermission.of(route.key(), device.fill(), shaped, evidence);
        if (!permission.permitted()) {
            notes.add(new Note("route-not-permitted", device.fill().key() + " by the " + route.key() + " route: "
                    + permission.words() + (permission.note().isEmpty() ? "" : ", " + permission.note())));
            return false;
        }
        if (permission.limited()) {
            notes.add(new Note("route-limited", route.key() + ", " + device.fill().key() + ": " + permission.words() + " ("
                    + permission.status().words() + ")"));
        }
        return route != Route.PERIAREOLAR || areola(openingCm, areolaCm, notes);
    }

    private static boolean areola(double openingCm, OptionalDouble areolaCm, List<Note> notes) {
        String opening = Figures.of(openingCm, 1, 2) + " cm";
        String needed = Figures.of(AreolaArc.areolaNeededCm(openingCm), 1, 2) + " cm";
        if (areolaCm.isEmpty()) {
            notes.add(new Note("areola-not-taken", "an opening of " + opening + " along the areola needs one of at least "
                    + needed));
            return true;
        }
        if (AreolaArc.holds(areolaCm.getAsDouble(), openingCm)) {
            return true;
        }
        notes.add(new Note("areola-too-small", "an areola of " + Figures.cm(areolaCm.getAsDouble()) + " cm gives at most "
                + Figures.of(AreolaArc.longestIncisionCm(areolaCm.getAsDouble()), 1, 2) + " cm; an opening of " + opening
                + " needs one of " + needed + " (half-circle rule, common practice, no source)"));
        return false;
    }
}
