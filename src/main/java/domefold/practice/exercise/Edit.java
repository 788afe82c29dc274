package domefold.practice.exercise;

import domefold.device.Fill;
import domefold.device.Profile;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.practice.FellowPlan;
import domefold.practice.SidePlan;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A fellow's plan with one thing changed. */
final class Edit {
    /** Nothing stated yet. */
    static final FellowPlan BLANK = new FellowPlan(false, SidePlan.OPEN, SidePlan.OPEN, Optional.empty(), false,
            OptionalDouble.empty(), Optional.empty(), Set.of(), "");

    private Edit() {}

    static FellowPlan declined(FellowPlan p, boolean declined) {
        return new FellowPlan(declined, p.left(), p.right(), p.route(), p.funnel(), p.incisionCm(), p.schedule(),
                p.warnings(), p.reason());
    }

    static FellowPlan side(FellowPlan p, Side side, SidePlan changed) {
        return new FellowPlan(p.declined(), side == Side.LEFT ? changed : p.left(),
                side == Side.RIGHT ? changed : p.right(), p.route(), p.funnel(), p.incisionCm(), p.schedule(),
                p.warnings(), p.reason());
    }

    static FellowPlan route(FellowPlan p, Optional<Route> route) {
        return new FellowPlan(p.declined(), p.left(), p.right(), route, p.funnel(), p.incisionCm(), p.schedule(),
                p.warnings(), p.reason());
    }

    static FellowPlan funnel(FellowPlan p, boolean funnel) {
        return new FellowPlan(p.declined(), p.left(), p.right(), p.route(), funnel, p.incisionCm(), p.schedule(),
                p.warnings(), p.reason());
    }

    static FellowPlan incision(FellowPlan p, OptionalDouble cm) {
        return new FellowPlan(p.declined(), p.left(), p.right(), p.route(), p.funnel(), cm, p.schedule(),
                p.warnings(), p.reason());
    }

    static FellowPlan schedule(FellowPlan p, Optional<String> id) {
        return new FellowPlan(p.declined(), p.left(), p.right(), p.route(), p.funnel(), p.incisionCm(), id,
                p.warnings(), p.reason());
    }

    static FellowPlan warnings(FellowPlan p, Set<String> codes) {
        return new FellowPlan(p.declined(), p.left(), p.right(), p.route(), p.funnel(), p.incisionCm(), p.schedule(),
                codes, p.reason());
    }

    static FellowPlan reason(FellowPlan p, String reason) {
        return new FellowPlan(p.declined(), p.left(), p.right(), p.route(), p.funnel(), p.incisionCm(), p.schedule(),
                p.warnings(), reason);
    }

    static SidePlan ceiling(SidePlan s, OptionalDouble cm) {
        return new SidePlan(cm, s.volumeMl(), s.pocket(), s.foldLoweringCm(), s.deviceId(), s.fill(), s.fillMl(), s.profile());
    }

    static SidePlan volume(SidePlan s, OptionalDouble ml) {
        return new SidePlan(s.ceilingCm(), ml, s.pocket(), s.foldLoweringCm(), s.deviceId(), s.fill(), s.fillMl(), s.profile());
    }

    static SidePlan pocket(SidePlan s, Optional<Pocket> pocket) {
        return new SidePlan(s.ceilingCm(), s.volumeMl(), pocket, s.foldLoweringCm(), s.deviceId(), s.fill(), s.fillMl(), s.profile());
    }

    static SidePlan fold(SidePlan s, OptionalDouble cm) {
        return new SidePlan(s.ceilingCm(), s.volumeMl(), s.pocket(), cm, s.deviceId(), s.fill(), s.fillMl(), s.profile());
    }

    static SidePlan device(SidePlan s, Optional<String> id) {
        return new SidePlan(s.ceilingCm(), s.volumeMl(), s.pocket(), s.foldLoweringCm(), id, s.fill(), s.fillMl(), s.profile());
    }

    static SidePlan fill(SidePlan s, Optional<Fill> fill) {
        return new SidePlan(s.ceilingCm(), s.volumeMl(), s.pocket(), s.foldLoweringCm(), s.deviceId(), fill, s.fillMl(), s.profile());
    }

    static SidePlan fillMl(SidePlan s, OptionalDouble ml) {
        return new SidePlan(s.ceilingCm(), s.volumeMl(), s.pocket(), s.foldLoweringCm(), s.deviceId(), s.fill(), ml, s.profile());
    }

    static SidePlan profile(SidePlan s, Optional<Profile> profile) {
        return new SidePlan(s.ceilingCm(), s.volumeMl(), s.pocket(), s.foldLoweringCm(), s.deviceId(), s.fill(), s.fillMl(), profile);
    }
}
