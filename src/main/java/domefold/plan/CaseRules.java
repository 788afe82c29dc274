package domefold.plan;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.engine.AreolaArc;
import domefold.engine.History;
import domefold.engine.IncisionRows;
import domefold.engine.LabelAge;
import domefold.engine.RoutePermission;
import domefold.evidence.Constant;
import domefold.evidence.Evidence;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Route;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the case as a whole says to a device: contraindications, label age, route. Made once per plan.
 *
 * @param blocked contraindications
 */
record CaseRules(
        Case of, List<Note> blocked, Map<Fill, Note> belowLabel, IncisionRows incisions, Evidence evidence) {

    static CaseRules of(Case of, Evidence evidence) {
        Map<Fill, Note> belowLabel = new EnumMap<>(Fill.class);
        OptionalDouble age = of.patient().value(Measure.AGE);
        for (Fill fill : Fill.values()) {
            if (age.isPresent() && LabelAge.below(age.getAsDouble(), fill, evidence.constants())) {
                Constant rule = LabelAge.rule(fill, evidence.constants());
                belowLabel.put(fill, new Note("age-below-label", "at " + Figures.of(age.getAsDouble(), 0, 1) + " years she"
                        + " is below the label age for " + fill.key() + ", " + Figures.of(rule.value(), 0, 1) + " ("
                        + rule.source() + ", " + rule.status().words() + ")"));
            }
        }
        return new CaseRules(of, History.blocks(of.history(), evidence), belowLabel, IncisionRows.of(evidence), evidence);
    }

    static boolean shaped(Device device) {
        return device.heightCm() != device.widthCm();
    }

    Route route() {
        return of.setting().route().orElse(Route.INFRAMAMMARY);
    }

    RoutePermission permission(Device device) {
        return RoutePermission.of(route().key(), device.fill(), shaped(device), evidence);
    }

    /** The published length for the device by the chosen route; empty where nothing is published. */
    Optional<Candidate.Incision> incision(Device device) {
        boolean funnel = of.setting().funnel().orElse(false);
        Optional<IncisionRows.Length> length;
        if (device.fill() == Fill.SALINE) {
            length = Optional.of(route() == Route.TRANSAXILLARY ? incisions.throughArmpit() : incisions.saline());
        } else if (route() == Route.TRANSAXILLARY) {
            length = funnel ? Optional.of(incisions.throughArmpit()) : Optional.empty();
        } else if (shaped(device)) {
            length = Optional.of(incisions.shapedGel());
        } else {
            length = funnel ? Optional.of(incisions.gelWithFunnel()) : incisions.gelByHand(device.nominalMl());
        }
        String help = device.fill() == Fill.GEL && funnel ? "funnel" : "hand";
        return length.map(found -> new Candidate.Incision(found.lowCm(), found.typicalCm(), found.highCm(), route(), help,
                found.basis() + (of.setting().route().isEmpty() ? "; route not chosen, the fold is assumed"
                        : route() == Route.PERIAREOLAR ? "; read at the fold, used as the opening needed" : "")));
    }

    /** Reasons on one side that no reading error can change; each makes the device outside. */
    List<Note> refusals(Device device, Side side, RoutePermission permission, Optional<Candidate.Incision> incision) {
        List<Note> reasons = new ArrayList<>(blocked);
        if (belowLabel.containsKey(device.fill())) {
            reasons.add(belowLabel.get(device.fill()));
        }
        if (!permission.permitted()) {
            reasons.add(new Note("route-not-permitted", "the " + route().key() + " route is not for this device: "
                    + permission.words() + " (" + permission.source() + ", " + permission.status().words() + ")"));
        }
        OptionalDouble areola = of.side(side).readings().value(Measure.AREOLA);
        if (route() == Route.PERIAREOLAR && areola.isPresent() && incision.isPresent()) {
            double neededCm = incision.get().typicalCm().orElse(incision.get().lowCm());
            if (!AreolaArc.holds(areola.getAsDouble(), neededCm)) {
                reasons.add(new Note("route-not-permitted", "an incision of " + Figures.cm(neededCm)
                        + " cm does not go along an areola of " + Figures.cm(areola.getAsDouble()) + " cm, at most "
                        + Figures.cm(AreolaArc.longestIncisionCm(areola.getAsDouble())) + " cm; an areola of "
                        + Figures.cm(AreolaArc.areolaNeededCm(neededCm)) + " cm would hold it"
                        + " (half circle, common practice, no source)"));
            }
        }
        return reasons;
    }

    /** True where the route needs the areola of that side and it was not taken. */
    boolean areolaMissing(Side side) {
        return route() == Route.PERIAREOLAR && !of.side(side).readings().has(Measure.AREOLA);
    }
}
