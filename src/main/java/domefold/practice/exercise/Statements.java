package domefold.practice.exercise;

import domefold.device.Fill;
import domefold.device.Profile;
import domefold.engine.TypedReading;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.Schedules;
import domefold.interview.Guide;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.practice.FellowPlan;
import domefold.practice.SidePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/** What the fellow is asked to state, in order. The ranges only catch slips of typing. */
final class Statements {
    private static final Predicate<FellowPlan> DECLINED = FellowPlan::declined;
    private static final List<String> YES = List.of("yes", "y", "operate", "now");
    private static final List<String> NO = List.of("no", "n", "not now", "decline", "wait");
    private static final List<Statement> ALL = List.of(
            operate(),
            cm("ceiling", "Width ceiling", 5, 25, SidePlan::ceilingCm, Edit::ceiling,
                    "The widest device each side carries: base width, cover at the edges."),
            volume(), pocket(), fold(), fill(), profile(), device(), salineFill(), route(), funnel(), opening(),
            schedule(), warnings(), reason());

    private Statements() {}

    static List<Statement> all() {
        return ALL;
    }

    private static Statement operate() {
        return new Statement("operate", "Would you operate now?", "yes, or no where something speaks against it", true,
                plan -> false, (typed, plan, guide) -> {
                    String said = typed.strip().toLowerCase(Locale.ROOT);
                    if (!YES.contains(said) && !NO.contains(said)) {
                        throw new Refusal("yes-or-no", "operate", "yes or no is expected");
                    }
                    return Edit.declined(plan, NO.contains(said));
                }, plan -> plan, (plan, guide) -> plan.declined() ? "not now" : "yes",
                help("Not now ends the plan: only the warnings and your reason are asked then."));
    }

    private static Statement cm(String id, String prompt, double lowCm, double highCm, Function<SidePlan, OptionalDouble> get,
            BiFunction<SidePlan, OptionalDouble, SidePlan> put, String about) {
        Function<String, Double> number = Pair.number("a " + prompt.toLowerCase(Locale.ROOT), id, "cm", lowCm, highCm);
        return sides(id, prompt, "LEFT RIGHT in cm", false, (text, side, guide) -> put.apply(side, OptionalDouble.of(number.apply(text))),
                side -> put.apply(side, OptionalDouble.empty()), (side, guide) -> get.apply(side).isPresent()
                        ? Numbers.cm(get.apply(side).getAsDouble()) : "open", DECLINED, help(about));
    }

    private static Statement volume() {
        Function<String, Double> number = Pair.number("a volume", "volume", "mL", 50, 1500);
        return sides("volume", "Volume", "LEFT RIGHT in mL", false,
                (text, side, guide) -> Edit.volume(side, OptionalDouble.of(number.apply(text))),
                side -> Edit.volume(side, OptionalDouble.empty()),
                (side, guide) -> side.volumeMl().isPresent() ? Numbers.ml(side.volumeMl().getAsDouble()) : "open", DECLINED,
                help("The volume you aim at on each side, before a device is chosen."));
    }

    private static Statement pocket() {
        return sides("pocket", "Pocket", words(List.of(Pocket.values()), Pocket::key), true,
                (text, side, guide) -> Edit.pocket(side, Optional.of(Pair.pick(text, "pocket", List.of(Pocket.values()), Pocket::key))),
                side -> Edit.pocket(side, Optional.empty()), (side, guide) -> side.pocket().map(Pocket::key).orElse("open"),
                DECLINED, help("One word for both sides, or LEFT / RIGHT with a stroke between."));
    }

    private static Statement fold() {
        Function<String, Double> number = Pair.number("a lowering", "fold", "cm", 0, 6);
        Statement plain = sides("fold", "Fold: keep, or lower by how much", "LEFT RIGHT: keep or cm", false,
                (text, side, guide) -> Edit.fold(side, OptionalDouble.of(text.equals("keep") ? 0 : number.apply(text))),
                side -> Edit.fold(side, OptionalDouble.empty()), (side, guide) -> side.foldLoweringCm().isEmpty() ? "open"
                        : side.foldLoweringCm().getAsDouble() == 0 ? "keep" : "lower by " + Numbers.cm(side.foldLoweringCm().getAsDouble()),
                DECLINED, help("How far each fold comes down: `keep same`, `0.5 0.7`, `keep 0.5`."));
        return new Statement(plain.id(), plain.prompt(), plain.expects(), plain.required(), plain.pointless(),
                (typed, plan, guide) -> plain.reader().read(typed.strip().toLowerCase(Locale.ROOT)
                        .replaceAll("\\blower(ed)?( by)?\\s*", "").replaceAll("^keep$", "keep same"), plan, guide), plain.open(), plain.shown(), plain.help());
    }

    private static Statement fill() {
        return sides("fill", "Fill", words(List.of(Fill.values()), Fill::key), true,
                (text, side, guide) -> Edit.fill(side, Optional.of(Pair.pick(text, "fill", List.of(Fill.values()), Fill::key))),
                side -> Edit.fill(side, Optional.empty()), (side, guide) -> side.fill().map(Fill::key).orElse("open"),
                DECLINED, help("What fills the device, one word for both sides or LEFT / RIGHT."));
    }

    private static Statement profile() {
        return sides("profile", "Profile", words(List.of(Profile.values()), Profile::key), true,
                (text, side, guide) -> Edit.profile(side, Optional.of(Pair.pick(text, "profile", List.of(Profile.values()), Profile::key))),
                side -> Edit.profile(side, Optional.empty()), (side, guide) -> side.profile().map(Profile::key).orElse("open"),
                DECLINED, help("The class of projection for that width, one word for both sides or LEFT / RIGHT."));
    }

    private static Statement device() {
        return sides("device", "Device", "a code, or words like `full 300`; LEFT / RIGHT", true,
                (text, side, guide) -> Edit.device(side, Optional.of(DeviceByWords.of(text, side, guide.catalogue(), "device").id())),
                side -> Edit.device(side, Optional.empty()), (side, guide) -> side.deviceId().orElse("open"), DECLINED,
                help("A code of the list, or words that leave only one: fill, surface, profile, mL. Where more are left"
                        + " they are named. `gel full 300 / gel full 330` for two sides that differ."));
    }

    private static Statement salineFill() {
        Function<String, Double> number = Pair.number("a fill", "saline", "mL", 50, 1500);
        return sides("saline", "Saline put in", "LEFT RIGHT in mL", false,
                (text, side, guide) -> Edit.fillMl(side, OptionalDouble.of(number.apply(text))),
                side -> Edit.fillMl(side, OptionalDouble.empty()),
                (side, guide) -> side.fillMl().isPresent() ? Numbers.ml(side.fillMl().getAsDouble()) : "open",
                plan -> plan.declined() || !saline(plan), help("How much each device is filled with, within its label."));
    }

    private static boolean saline(FellowPlan plan) {
        return plan.left().fill().equals(Optional.of(Fill.SALINE)) || plan.right().fill().equals(Optional.of(Fill.SALINE));
    }

    private static Statement route() {
        return new Statement("route", "Route", words(List.of(Route.values()), Route::key), false, DECLINED,
                (typed, plan, guide) -> Edit.route(plan, Optional.of(Pair.pick(typed, "route", List.of(Route.values()), Route::key))),
                plan -> Edit.route(plan, Optional.empty()), (plan, guide) -> plan.route().map(Route::key).orElse("open"),
                help("Where the incision lies."));
    }

    private static Statement funnel() {
        return new Statement("funnel", "Through a funnel?", "yes or no", false,
                plan -> plan.declined() || !plan.left().fill().equals(Optional.of(Fill.GEL)) && !plan.right().fill().equals(Optional.of(Fill.GEL)),
                (typed, plan, guide) -> Edit.funnel(plan, Pair.pick(typed, "funnel", List.of("yes", "no"), word -> word).equals("yes")),
                plan -> Edit.funnel(plan, false), (plan, guide) -> plan.funnel() ? "yes" : "no",
                help("Whether a gel device goes in through a funnel."));
    }

    private static Statement opening() {
        return new Statement("opening", "Opening", "in cm", false, DECLINED, (typed, plan, guide) -> Edit.incision(plan,
                        OptionalDouble.of(Pair.within(TypedReading.value("opening", "opening", "cm", typed), "an opening",
                                "opening", "cm", 0.5, 12))),
                plan -> Edit.incision(plan, OptionalDouble.empty()), (plan, guide) -> plan.incisionCm().isPresent()
                        ? Numbers.cm(plan.incisionCm().getAsDouble()) : "open", help("How long the incision is, one for both sides."));
    }

    private static Statement schedule() {
        return new Statement("schedule", "Follow-up by imaging", "an issuer's schedule; ? lists them", false, DECLINED,
                (typed, plan, guide) -> Edit.schedule(plan, Optional.of(Pair.pick(typed, "schedule",
                        Schedules.of(guide.evidence()).ids(), id -> id))),
                plan -> Edit.schedule(plan, Optional.empty()), (plan, guide) -> plan.schedule().orElse("open"), guide -> {
                    List<String> lines = new ArrayList<>();
                    for (Schedule one : Schedules.of(guide.evidence()).all()) {
                        lines.add(one.id() + ": " + one.issuer() + ", " + one.version() + ", " + one.fillWords());
                    }
                    return lines;
                });
    }

    private static Statement warnings() {
        return new Statement("warnings", "What would you warn of?", "words or numbers with commas between, or none; ? lists them", true,
                plan -> false, (typed, plan, guide) -> Edit.warnings(plan, WarningWords.read(typed, "warnings")),
                plan -> Edit.warnings(plan, Set.of()), (plan, guide) -> plan.warnings().isEmpty() ? "none"
                        : String.join(", ", new TreeSet<>(plan.warnings())), guide -> WarningWords.numbered());
    }

    private static Statement reason() {
        return new Statement("reason", "Your reason, in a few words", "free words", false, plan -> false,
                (typed, plan, guide) -> Edit.reason(plan, typed.strip()), plan -> Edit.reason(plan, ""),
                (plan, guide) -> plan.reason().isBlank() ? "open" : plan.reason(),
                help("Why this plan for this patient. It is kept with the marking, not graded for its wording."));
    }

    private interface SideReader {
        SidePlan read(String text, SidePlan side, Guide guide);
    }

    private static Statement sides(String id, String prompt, String expects, boolean words, SideReader reader,
            Function<SidePlan, SidePlan> open, BiFunction<SidePlan, Guide, String> shown, Predicate<FellowPlan> pointless,
            Function<Guide, List<String>> help) {
        return new Statement(id, prompt, expects, false, pointless, (typed, plan, guide) -> {
            FellowPlan next = plan;
            for (Map.Entry<Side, String> one : Pair.of(typed, id, words).entrySet()) {
                next = Edit.side(next, one.getKey(), reader.read(one.getValue(), next.side(one.getKey()), guide));
            }
            return next;
        }, plan -> Edit.side(Edit.side(plan, Side.LEFT, open.apply(plan.left())), Side.RIGHT, open.apply(plan.right())),
                (plan, guide) -> {
                    String left = shown.apply(plan.left(), guide);
                    String right = shown.apply(plan.right(), guide);
                    return left.equals(right) ? left + " on both sides" : "LEFT " + left + "   RIGHT " + right;
                }, help);
    }

    private static <T> String words(List<T> all, Function<T, String> key) {
        return String.join(", ", all.stream().map(key).toList());
    }

    private static Function<Guide, List<String>> help(String text) {
        return guide -> List.of(text);
    }
}
