package domefold.interview;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.engine.Exact;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.FoldSchool;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/** What is settled: pinned devices, the device and fill per side, fold, opening, topics talked over. */
final class SettleQuestions {
    private static final double DEEPEST_LOWERING_CM = 6;
    private static final double LONGEST_OPENING_CM = 12;

    private SettleQuestions() {}

    static List<Question> all() {
        return List.of(device(), fill(), lowering(), opening(), new ReasonEntry(), discussed());
    }

    static Question pins() {
        return new TextQuestion("pins", Room.DEVICES, "Devices side by side", "two to four device codes", false,
                List.of("Pin devices in the list with Space; two to four stand side by side."),
                dossier -> Optional.of(String.join(", ", dossier.choices().pinned())).filter(text -> !text.isEmpty()),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> {
                    List<String> ids = typed.strip().equals("-") ? List.of() : List.of(typed.strip().split("[\\s,]+"));
                    if (ids.size() > Choices.MOST_PINNED) {
                        throw new Refusal("too-many-pins", "pins", "up to four devices stand side by side");
                    }
                    for (String id : ids) {
                        known(guide, id, "pins");
                    }
                    return Question.Taken.quietly(dossier.withChoices(
                            dossier.choices().withPinned(List.copyOf(new LinkedHashSet<>(ids)))));
                });
    }

    static Device known(Guide guide, String id, String where) {
        return guide.catalogue().devices().stream().filter(device -> device.id().equalsIgnoreCase(id)).findFirst()
                .orElseThrow(() -> new Refusal("unknown-device", where,
                        "'" + id + "' is no device of the list '" + guide.catalogue().name() + "'"));
    }

    private static Question device() {
        return new TextQuestion("device", Room.SETTLE, "Device", "LEFT RIGHT: a pinned number 1 to 4, or a device code", true,
                List.of("For example `1 same`, `1 2`, or device codes. Nothing is chosen for you."),
                dossier -> sides(dossier, side -> dossier.choices().on(side).deviceId()),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> {
                    String[] words = two(typed, "device");
                    Device left = pick(dossier, guide, words[0]);
                    Device right = words[1].equals("same") ? left : pick(dossier, guide, words[1]);
                    Choices choices = dossier.choices()
                            .withSettled(Side.LEFT, dossier.choices().on(Side.LEFT).withDevice(left.id()))
                            .withSettled(Side.RIGHT, dossier.choices().on(Side.RIGHT).withDevice(right.id()));
                    Dossier next = dossier.withChoices(choices);
                    return new Question.Taken(next, remarks(next, guide));
                });
    }

    private static Device pick(Dossier dossier, Guide guide, String word) {
        if (word.matches("[1-4]")) {
            int at = Integer.parseInt(word) - 1;
            if (at >= dossier.choices().pinned().size()) {
                throw new Refusal("no-such-pin", "device", "there is no pinned device " + word + "; "
                        + (dossier.choices().pinned().size() == 1 ? "1 is" : dossier.choices().pinned().size() + " are") + " pinned");
            }
            return known(guide, dossier.choices().pinned().get(at), "device");
        }
        return known(guide, word, "device");
    }

    private static List<Note> remarks(Dossier dossier, Guide guide) {
        List<Note> remarks = new ArrayList<>();
        Plan plan = guide.planner().apply(dossier.patientCase());
        for (Side side : Side.values()) {
            dossier.choices().on(side).deviceId().flatMap(id -> candidate(plan, id)).ifPresent(candidate -> {
                if (candidate.side(side).verdict() != Verdict.FITS) {
                    candidate.side(side).reasons().forEach(reason ->
                            remarks.add(new Note(reason.code(), side + ": " + reason.text())));
                }
            });
        }
        return remarks;
    }

    static Optional<Candidate> candidate(Plan plan, String deviceId) {
        return plan.candidates().stream().filter(c -> c.device().id().equals(deviceId)).findFirst();
    }

    private static Question fill() {
        return new SalineFillEntry();
    }

    private static Question lowering() {
        return new TextQuestion("lowering", Room.SETTLE, "Fold",
                "LEFT RIGHT: `target`, `rows`, `arc`, `keep`, or a lowering in cm", false,
                List.of("`rows` lowers to the target of the volume rows (memory-high), `arc` to the arc of the device's dome plus"
                                + " its cover (derived), `target` to the one of the two that the plan uses.",
                        "`keep` leaves the fold where it is. The three disagree; they are not averaged.",
                        "One school lowers and fixes the fold; another stays 0.5 to 1.0 cm above it and never crosses it."),
                dossier -> sides(dossier, side -> text(dossier.choices().on(side).foldLoweringCm(), SettleQuestions::loweringWords)),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> {
                    String[] words = two(typed, "lowering");
                    Choices choices = dossier.choices();
                    for (Side side : Side.values()) {
                        String word = side == Side.RIGHT && !words[1].equals("same") ? words[1] : words[0];
                        choices = choices.withSettled(side, choices.on(side).withLowering(loweringCm(word, side, dossier, guide)));
                    }
                    return Question.Taken.quietly(dossier.withChoices(choices));
                });
    }

    private static String loweringWords(double cm) {
        return cm == 0 ? "keep the fold" : "lower the fold by " + Numbers.cm(cm);
    }

    private static double loweringCm(String word, Side side, Dossier dossier, Guide guide) {
        if (List.of("keep", "k", "0").contains(word)) {
            return 0;
        }
        for (FoldSchool school : FoldSchool.values()) {
            if (school.word().equals(word)) {
                return bySchool(school, side, dossier, guide);
            }
        }
        if ("target".startsWith(word)) {
            Plan plan = guide.planner().apply(dossier.patientCase());
            OptionalDouble cm = dossier.choices().on(side).deviceId().flatMap(id -> candidate(plan, id))
                    .map(c -> c.side(side).foldLoweringCm()).orElse(plan.side(side).foldLoweringCm());
            return cm.orElseThrow(() -> new Refusal("no-fold-target", "lowering", "there is no fold target for the "
                    + side + " side: the stretched nipple to fold is missing; type a lowering in cm or `keep`"));
        }
        double cm = Questions.one(word, "cm", "lowering");
        if (!(cm >= 0 && cm <= DEEPEST_LOWERING_CM)) {
            throw new Refusal("lowering-range", "lowering", Numbers.cm(cm) + " is outside 0 to " + Numbers.cm(DEEPEST_LOWERING_CM));
        }
        return cm;
    }

    private static double bySchool(FoldSchool school, Side side, Dossier dossier, Guide guide) {
        Readings readings = dossier.patientCase().side(side).readings();
        OptionalDouble now = readings.value(Measure.NIPPLE_TO_FOLD_STRETCHED);
        OptionalDouble target = dossier.choices().on(side).deviceId().flatMap(guide.catalogue()::find)
                .map(device -> school.targetCm(device, readings, guide.evidence().constants())).orElse(OptionalDouble.empty());
        if (now.isEmpty() || target.isEmpty()) {
            throw new Refusal("no-fold-target", "lowering", "`" + school.word() + "` gives no target for the " + side
                    + " side; type a lowering in cm, `target` or `keep`");
        }
        return Math.max(0, Exact.clean(target.getAsDouble() - now.getAsDouble()));
    }

    private static Question opening() {
        return new TextQuestion("opening", Room.SETTLE, "Opening", "LEFT RIGHT in cm, or `typical`", false,
                List.of("`typical` takes the middle of the band shown for the device, by the chosen route and way in."),
                dossier -> sides(dossier, side -> text(dossier.choices().on(side).incisionCm(), Numbers::cm)),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> {
                    String line = typed.strip().toLowerCase(Locale.ROOT);
                    String[] words = two(line.equals("typical") ? "typical same" : line, "opening");
                    Choices choices = dossier.choices();
                    for (Side side : Side.values()) {
                        String word = side == Side.RIGHT && !words[1].equals("same") ? words[1] : words[0];
                        choices = choices.withSettled(side, choices.on(side).withIncision(openingCm(word, side, dossier, guide)));
                    }
                    return Question.Taken.quietly(dossier.withChoices(choices));
                });
    }

    private static double openingCm(String word, Side side, Dossier dossier, Guide guide) {
        if ("typical".startsWith(word)) {
            Plan plan = guide.planner().apply(dossier.patientCase());
            return dossier.choices().on(side).deviceId().flatMap(id -> candidate(plan, id)).flatMap(Candidate::incision)
                    .map(i -> i.typicalCm().orElse((i.lowCm() + i.highCm()) / 2))
                    .orElseThrow(() -> new Refusal("no-opening", "opening",
                            "no opening is known for the " + side + " device by this route; type a length in cm"));
        }
        double cm = Questions.one(word, "cm", "opening");
        if (!(cm > 0 && cm <= LONGEST_OPENING_CM)) {
            throw new Refusal("opening-range", "opening", Numbers.cm(cm) + " is outside 0 to " + Numbers.cm(LONGEST_OPENING_CM));
        }
        return cm;
    }

    private static Question discussed() {
        return new TextQuestion("discussed", Room.SETTLE, "Topics talked over", "`all`, `none`, or numbers", false,
                SettleQuestions::checklist,
                dossier -> Optional.of(dossier.choices().discussed()).filter(set -> !set.isEmpty())
                        .map(set -> set.size() + (set.size() == 1 ? " topic" : " topics")),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> Question.Taken.quietly(
                        dossier.withChoices(dossier.choices().withDiscussed(topics(typed, guide)))));
    }

    private static List<String> checklist(Guide guide) {
        List<String> lines = new ArrayList<>();
        lines.add("The topics of the decision checklist, by number; what is not named stays open and is shown as open.");
        int number = 0;
        for (String topic : guide.topics().values()) {
            lines.add(++number + ". " + topic);
        }
        return lines;
    }

    private static Set<String> topics(String typed, Guide guide) {
        List<String> ids = List.copyOf(guide.topics().keySet());
        String line = typed.strip().toLowerCase(Locale.ROOT);
        Set<String> chosen = new LinkedHashSet<>();
        if (line.startsWith("all")) {
            chosen.addAll(ids);
            line = line.substring(3).replaceFirst("^\\s*(but|except)", "").strip();
            numbers(line, ids).forEach(chosen::remove);
        } else if (!line.equals("none")) {
            chosen.addAll(numbers(line, ids));
        }
        return chosen;
    }

    private static List<String> numbers(String line, List<String> ids) {
        List<String> found = new ArrayList<>();
        for (String word : line.isEmpty() ? new String[0] : line.split("[\\s,;]+")) {
            if (!word.matches("\\d{1,2}") || Integer.parseInt(word) < 1 || Integer.parseInt(word) > ids.size()) {
                throw new Refusal("no-such-topic", "discussed", "'" + word + "' is no topic; they are numbered 1 to " + ids.size());
            }
            found.add(ids.get(Integer.parseInt(word) - 1));
        }
        return found;
    }

    /** Two words, LEFT then RIGHT; one word stands for both sides nowhere, so that no side is ever assumed. */
    static String[] two(String typed, String questionId) {
        String[] words = typed.strip().toLowerCase(Locale.ROOT).split("[\\s;/]+");
        if (words.length != 2) {
            throw new Refusal("two-values", questionId, "two answers are expected, LEFT then RIGHT; `same` repeats the LEFT");
        }
        if (words[0].equals("same")) {
            throw new Refusal("same-as-nothing", questionId, "`same` repeats the LEFT, so it can only stand second");
        }
        return new String[] {words[0], List.of("=", "s").contains(words[1]) ? "same" : words[1]};
    }

    static Optional<String> sides(Dossier dossier, Function<Side, Optional<String>> shown) {
        Optional<String> left = shown.apply(Side.LEFT);
        Optional<String> right = shown.apply(Side.RIGHT);
        if (left.isEmpty() && right.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("LEFT " + left.orElse("open") + "   RIGHT " + right.orElse("open"));
    }

    static Optional<String> text(OptionalDouble value, Function<Double, String> words) {
        return value.isPresent() ? Optional.of(words.apply(value.getAsDouble())) : Optional.empty();
    }

    static boolean isSaline(Dossier dossier, Guide guide, Side side) {
        return dossier.choices().on(side).deviceId().flatMap(guide.catalogue()::find)
                .map(device -> device.fill() == Fill.SALINE).orElse(false);
    }
}
