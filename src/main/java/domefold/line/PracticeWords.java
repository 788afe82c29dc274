package domefold.line;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.followup.schedule.Schedules;
import domefold.interview.Guide;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.practice.exercise.Exercise;
import domefold.practice.exercise.Page;
import domefold.practice.exercise.Statement;
import domefold.practice.exercise.Taken;
import domefold.practice.exercise.WarningWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What can be typed in a practice case: help and completion. */
final class PracticeWords {
    /** What opens once the plan is handed in. */
    static final List<String> OPENED = List.of("limits", "devices", "sort", "compare", "why");
    private static final List<String> ALWAYS = List.of("help", "summary", "progress", "drill", "next", "quit");
    private static final List<String> BEFORE = List.of("ask", "go", "state", "back", "undo", "commit");

    private PracticeWords() {}

    /** Sentences for {@code ?}. */
    static List<String> help(Exercise exercise) {
        List<String> lines = new ArrayList<>(exercise.help());
        lines.add("`summary` tells what you took and stated, `progress` what you practised so far, `drill` opens a reading drill,"
                + " `quit` leaves.");
        if (exercise.marking().isPresent()) {
            lines.add(after());
        }
        return lines;
    }

    /** What can be done once the plan is marked. */
    static String after() {
        return "`next` draws another case, `drill` a reading drill. `limits`, `devices`, `compare` (your devices side by side) and"
                + " `why` show the engine's plan for her, `why fold` what stands behind the fold.";
    }

    static Completion completion(String typed, Exercise exercise) {
        int start = Completion.start(typed);
        boolean marked = exercise.marking().isPresent();
        List<String> answers = marked ? List.of() : answers(exercise);
        if (typed.indexOf(' ', start) < 0) {
            List<String> words = new ArrayList<>(answers);
            words.addAll(marked ? OPENED : BEFORE);
            words.addAll(ALWAYS);
            return Completion.at(start, typed, words);
        }
        int rest = Completion.rest(typed);
        return switch (typed.substring(start, typed.indexOf(' ', start)).toLowerCase(Locale.ROOT)) {
            case "ask" -> Completion.at(rest, typed, marked ? List.of() : readings(exercise));
            case "go" -> Completion.at(rest, typed, marked ? List.of() : places(exercise));
            case "sort" -> Completion.at(rest, typed, marked ? Listing.sortWords() : List.of());
            case "devices" -> Completion.at(rest, typed, marked ? List.of("all", "more") : List.of());
            default -> Completion.answer(start, typed, answers);
        };
    }

    private static List<String> readings(Exercise exercise) {
        List<String> words = new ArrayList<>();
        Arrays.stream(Page.values()).filter(Page::reads).forEach(page -> words.add(page.title().toLowerCase(Locale.ROOT)));
        Taken.all(exercise.practice().of()).forEach(taken -> words.add(taken.name()));
        return words;
    }

    private static List<String> places(Exercise exercise) {
        List<String> words = new ArrayList<>();
        Arrays.stream(Page.values()).filter(page -> page != Page.MARKING).forEach(page -> words.add(page.title().toLowerCase(Locale.ROOT)));
        exercise.answers().keySet().forEach(label -> words.add(label.toLowerCase(Locale.ROOT)));
        return words;
    }

    /** The words that answer what is asked; on a page of readings their names. */
    private static List<String> answers(Exercise exercise) {
        if (exercise.page() != Page.PLAN) {
            return readings(exercise);
        }
        List<String> words = new ArrayList<>(exercise.current().map(one -> of(one, exercise.guide())).orElse(List.of()));
        if (exercise.current().filter(one -> !one.required()).isPresent()) {
            words.add("skip");
        }
        return words;
    }

    private static List<String> of(Statement asked, Guide guide) {
        return switch (asked.id()) {
            case "operate", "funnel" -> List.of("yes", "no");
            case "pocket" -> Arrays.stream(Pocket.values()).map(Pocket::key).toList();
            case "fold" -> List.of("keep", "same");
            case "fill" -> Arrays.stream(Fill.values()).map(Fill::key).toList();
            case "profile" -> Arrays.stream(Profile.values()).map(Profile::key).toList();
            case "device" -> devices(guide.catalogue());
            case "route" -> Arrays.stream(Route.values()).map(Route::key).toList();
            case "schedule" -> Schedules.of(guide.evidence()).ids();
            case "warnings" -> warnings();
            default -> List.of();
        };
    }

    private static List<String> devices(Catalogue catalogue) {
        return catalogue.devices().stream().map(Device::id).toList();
    }

    private static List<String> warnings() {
        List<String> words = new ArrayList<>(List.of("none"));
        Arrays.stream(WarningWords.values()).forEach(one -> words.add(one.code()));
        return words;
    }
}
