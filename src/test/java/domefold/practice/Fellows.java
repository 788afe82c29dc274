package domefold.practice;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import domefold.store.CatalogueFile;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Fellows who answer at random, by a seed, and the plans they are marked against. */
final class Fellows {
    static final Catalogue LIST = CatalogueFile.invented();
    private static final List<String> WARNINGS = Flags.known(Drawn.EVIDENCE.constants());
    private static final List<String> SCHEDULES = List.of("US-2020", "US-SALINE", "US-2006", "UK-2011", "FR-2018");

    private Fellows() {}

    static FellowPlan random(Dice dice) {
        Set<String> warnings = new LinkedHashSet<>();
        for (int i = dice.below(5); i > 0; i--) {
            warnings.add(dice.pick(WARNINGS));
        }
        return new FellowPlan(dice.chance(0.1), side(dice), side(dice), Optional.of(dice.pick(List.of(Route.values()))),
                dice.chance(0.5), OptionalDouble.of(3 + 0.5 * dice.below(5)), Optional.of(dice.pick(SCHEDULES)), warnings,
                dice.chance(0.5) ? "so that it fits" : "");
    }

    private static SidePlan side(Dice dice) {
        Device device = dice.pick(LIST.devices());
        return new SidePlan(OptionalDouble.of(9.5 + 0.5 * dice.below(8)), OptionalDouble.of(200 + 20 * dice.below(12)),
                Optional.of(dice.pick(List.of(Pocket.values()))), OptionalDouble.of(0.5 * dice.below(4)),
                Optional.of(device.id()), Optional.of(dice.chance(0.8) ? device.fill() : dice.pick(List.of(Fill.values()))),
                device.fill() == Fill.SALINE ? OptionalDouble.of(device.nominalMl()) : OptionalDouble.empty(),
                Optional.of(dice.chance(0.8) ? device.profile() : dice.pick(List.of(Profile.values()))));
    }

    /** The list cut down to the devices she named, which is all that marking needs. */
    static Catalogue named(FellowPlan fellow) {
        List<Device> devices = LIST.devices().stream()
                .filter(device -> fellow.left().deviceId().equals(Optional.of(device.id()))
                        || fellow.right().deviceId().equals(Optional.of(device.id()))).toList();
        return with(devices);
    }

    static Catalogue with(List<Device> devices) {
        return new Catalogue(LIST.name(), LIST.date(), LIST.note(), LIST.sha256(), LIST.invented(), devices);
    }

    static Plan plan(PracticeCase practice, FellowPlan fellow) {
        return Planner.plan(fellow.settingOn(practice.of()), named(fellow), Drawn.EVIDENCE, PlanOptions.DEFAULT);
    }

    static Marking mark(PracticeCase practice, FellowPlan fellow) {
        return Marking.mark(practice, fellow, plan(practice, fellow), LIST, Drawn.EVIDENCE);
    }
}
