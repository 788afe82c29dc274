package domefold.practice;

import domefold.patient.Case;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the fellow states before she may see the engine's answer.
 *
 * @param declined true where she would not operate now
 * @param left her plan for the patient's left
 * @param right her plan for the patient's right
 * @param route where the incision lies
 * @param funnel whether a gel device goes in through a funnel
 * @param incisionCm how long the incision is
 * @param schedule id of the imaging schedule
 * @param warnings codes of what she would warn of, for example {@code lift-to-discuss}
 * @param reason her reason in her words
 */
public record FellowPlan(
        boolean declined,
        SidePlan left,
        SidePlan right,
        Optional<Route> route,
        boolean funnel,
        OptionalDouble incisionCm,
        Optional<String> schedule,
        Set<String> warnings,
        String reason) {
    public FellowPlan {
        warnings = Collections.unmodifiableSet(new TreeSet<>(warnings));
    }

    /** A fellow who would not operate now. */
    public static FellowPlan declining(Set<String> warnings, String reason) {
        return new FellowPlan(true, SidePlan.OPEN, SidePlan.OPEN, Optional.empty(), false, OptionalDouble.empty(),
                Optional.empty(), warnings, reason);
    }

    public SidePlan side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** The same plan with left and right exchanged. */
    public FellowPlan mirrored() {
        return new FellowPlan(declined, right, left, route, funnel, incisionCm, schedule, warnings, reason);
    }

    /**
     * The case with her route, funnel and schedule in it, and the pocket left open: the engine's plan of this case is
     * what she is marked against.
     */
    public Case settingOn(Case of) {
        Setting was = of.setting();
        return of.withSetting(new Setting(schedule.or(was::surveillance), route.or(was::route), Optional.of(funnel),
                Optional.empty(), was.horizonYears(), was.surfaces()));
    }
}
