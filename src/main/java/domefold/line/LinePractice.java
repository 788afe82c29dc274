package domefold.line;

import domefold.canvas.TextWidth;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import domefold.practice.Marking;
import domefold.practice.PracticeCase;
import domefold.practice.exercise.Exercise;
import domefold.practice.exercise.Logbook;
import domefold.practice.exercise.Page;
import domefold.practice.exercise.Said;
import domefold.practice.exercise.Statement;
import domefold.practice.exercise.Taken;
import domefold.screen.Effect;
import domefold.screen.PracticeDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * A practice case line by line: the same exercise as in the full screen, in sentences of at most 80 columns.
 *
 * @param desk evidence, device list, and what has been practised so far
 * @param exercise how far the exercise has come
 * @param listing the device list as last printed, after the marking
 * @param drill a reading drill that was opened beside the case
 */
public record LinePractice(PracticeDesk desk, Exercise exercise, Listing listing, Optional<LineDrill> drill) implements Completing {
    private static final int COLUMNS = 80;
    private static final List<String> OUTWARD = List.of("sign", "save", "order", "calendar", "export", "print");

    /** What a line led to: the exercise after it, what to print, what to keep. */
    public record Turn(LinePractice next, String text, Effect effect) {}

    /** The case asked for, else the next one. */
    public static LinePractice of(PracticeDesk desk, OptionalInt level, OptionalInt number) {
        return at(desk, desk.begin(level, number).exercise());
    }

    private static LinePractice at(PracticeDesk desk, Exercise exercise) {
        return new LinePractice(desk, exercise, Listing.TO_LOOK_AT, Optional.empty());
    }

    /** The banner, whose case it is, history and wish, and what can be typed. */
    public Turn open() {
        PracticeCase of = exercise.practice();
        List<String> lines = new ArrayList<>(List.of(PracticeCase.BANNER, "Case " + of.number() + ", level " + of.level() + ".", ""));
        lines.addAll(PracticeInWords.history(of));
        lines.add("");
        lines.addAll(PracticeWords.help(exercise));
        return new Turn(this, text(lines), Effect.NOTHING);
    }

    /** Understands a typed line. Never throws for what a person types or a script holds. */
    public Turn say(String line) {
        Optional<String> unread = LineCheck.against(line);
        if (unread.isPresent()) {
            return stays(List.of(unread.get()));
        }
        String typed = line.replace('\t', ' ').strip();
        String lower = typed.toLowerCase(Locale.ROOT);
        if (lower.equals("quit") || lower.equals("leave")) {
            return new Turn(this, left(), Effect.QUIT);
        }
        if (drill.isPresent()) {
            return drilled(drill.get(), lower);
        }
        return steered(lower).orElseGet(() -> heard(typed));
    }

    /** What is said last to one who leaves. */
    public String left() {
        return exercise.answers().isEmpty() || exercise.marking().isPresent() ? "Left.\n"
                : "Left. The plan was not handed in; nothing of it is kept.\n";
    }

    /** Words about practice itself, and about the plan once it is marked; an answer begins with none of them. */
    private Optional<Turn> steered(String lower) {
        String first = lower.split(" ", 2)[0];
        boolean marked = exercise.marking().isPresent();
        if (marked && PracticeWords.OPENED.contains(first)) {
            return Optional.of(looked(first, lower.substring(first.length()).strip()));
        }
        if (PracticeWords.OPENED.contains(lower)) {
            return Optional.of(stays(List.of("The limits, the devices and the working open once your plan is handed in: `commit`.")));
        }
        if (OUTWARD.contains(lower)) {
            return Optional.of(stays(List.of("Practice: nothing of it is saved as a record, ordered, exported or booked.")));
        }
        return switch (lower) {
            case "summary" -> Optional.of(stays(PracticeInWords.summary(exercise)));
            case "progress" -> Optional.of(stays(PracticeInWords.progress(desk.log(), desk.desk().guide().evidence().constants())));
            case "drill" -> Optional.of(opened(LineDrill.next(desk)));
            case "next" -> Optional.of(marked || exercise.answers().isEmpty() ? following().open()
                    : stays(List.of("Your plan is not handed in and would be lost: `commit` marks it, `quit` leaves.")));
            default -> Optional.empty();
        };
    }

    /** The tutor's next case, else one chosen toward the weak spots. */
    private LinePractice following() {
        int place = desk.own().indexOf(exercise.practice()) + 1;
        return place > 0 && place < desk.own().size() ? of(desk, OptionalInt.empty(), OptionalInt.of(place + 1))
                : at(desk, new PracticeDesk(desk.desk(), desk.log(), List.of()).begin(OptionalInt.empty(), OptionalInt.empty()).exercise());
    }

    private Turn heard(String typed) {
        Said said = exercise.say(typed);
        LinePractice next = with(said.exercise());
        if (said.kind() == Said.Kind.HELP) {
            return stays(PracticeWords.help(exercise));
        }
        if (said.kind() == Said.Kind.COMMITTED) {
            Marking marking = said.exercise().marking().orElseThrow();
            Logbook longer = desk.log().with(marking, desk.desk().today());
            Turn turn = at(desk.with(longer), said.exercise()).stays(PracticeInWords.marked(marking));
            return new Turn(turn.next(), turn.text(), new Effect.Practised(longer.last()));
        }
        List<String> lines = new ArrayList<>(said.lines());
        if (said.kind() == Said.Kind.DONE && said.exercise().page() != exercise.page()) {
            lines.addAll(next.page());
        }
        return next.stays(lines);
    }

    /** What stands on the page that was turned to. */
    private List<String> page() {
        Page page = exercise.page();
        if (page == Page.HISTORY) {
            return PracticeInWords.history(exercise.practice());
        }
        List<String> lines = new ArrayList<>();
        if (page.reads()) {
            List<Taken> taken = exercise.readings(page);
            lines.add(page.title() + (taken.isEmpty() ? ": no reading taken; `ask " + page.title().toLowerCase(Locale.ROOT) + "` takes them." : ":"));
            taken.forEach(one -> lines.add("  " + one.sentence()));
        }
        return lines;
    }

    /** What is asked now. */
    private List<String> asked() {
        if (drill.isPresent()) {
            return List.of(drill.get().asked());
        }
        if (exercise.marking().isPresent()) {
            return List.of("`next` draws another case, `quit` leaves; ? tells what else can be looked at.");
        }
        if (exercise.page() == Page.PLAN) {
            return exercise.current().map((Statement one) -> List.of(one.prompt() + " (" + one.expects() + (one.required() ? ")" : ", or skip)")))
                    .orElse(List.of("Everything is stated. `commit` hands the plan in."));
        }
        Exercise after = exercise.say("").exercise();
        return List.of(after.page() == Page.PLAN ? "Enter goes to your plan."
                : "Enter " + (after.readings().size() > exercise.readings().size() ? "takes the readings of " : "turns to ")
                        + after.page().title() + ", `state` goes to your plan.");
    }

    private Turn opened(LineDrill next) {
        return new LinePractice(desk, exercise, listing, Optional.of(next)).stays(next.shown());
    }

    private Turn drilled(LineDrill now, String lower) {
        if (lower.equals("back")) {
            return with(exercise).stays(List.of("Back to case " + exercise.practice().number() + "."));
        }
        if (lower.equals("?") || lower.equals("help")) {
            return stays(now.help());
        }
        if (now.answered().isPresent()) {
            return lower.isEmpty() || lower.equals("next") || lower.equals("drill") ? opened(LineDrill.next(desk))
                    : stays(List.of("This drill is answered."));
        }
        try {
            LineDrill answered = now.said(lower, desk);
            LinePractice next = new LinePractice(desk.with(desk.log().with(answered.kept(desk))), exercise, listing, Optional.of(answered));
            return new Turn(next, next.stays(answered.checked()).text(), new Effect.Drilled(answered.kept(desk)));
        } catch (Refusal refusal) {
            return stays(List.of(LineConsult.sentence(refusal.getMessage())));
        }
    }

    /** The consult's own pages on this patient, the devices that were stated side by side. */
    private Turn looked(String first, String rest) {
        List<String> stated = Stream.of(Side.LEFT, Side.RIGHT).flatMap(side -> exercise.stated().side(side).deviceId().stream()).distinct().toList();
        Interview of = Interview.begin(desk.desk().guide(), new Dossier(exercise.stated().settingOn(exercise.practice().of()),
                Choices.NONE.withPinned(stated)));
        return switch (first) {
            case "limits" -> printed(listing, LimitsInWords.whole(of));
            case "why" -> printed(listing, WhyInWords.of(of, rest));
            case "compare" -> stated.isEmpty() ? stays(List.of("You stated no device that could stand side by side."))
                    : printed(listing, SideBySide.of(of));
            case "sort" -> Listing.sortNamed(rest).map(sort -> printed(listing.first(of, sort, listing.all())))
                    .orElseGet(() -> stays(List.of("The devices can be ordered by: " + String.join(", ", Listing.sortWords()) + ".")));
            default -> switch (rest) {
                case "" -> printed(listing.first(of, listing.sort(), false));
                case "all" -> printed(listing.first(of, listing.sort(), true));
                case "more" -> printed(listing.more(of));
                default -> stays(List.of("`devices`, `devices more` or `devices all`; `sort width` orders them."));
            };
        };
    }

    private Turn printed(Listing.Printed list) {
        return printed(list.listing(), list.text());
    }

    private Turn printed(Listing next, String consults) {
        LinePractice after = new LinePractice(desk, exercise, next, drill);
        return new Turn(after, consults + after.stays(List.of("")).text(), Effect.NOTHING);
    }

    private LinePractice with(Exercise next) {
        return new LinePractice(desk, next, listing, Optional.empty());
    }

    private Turn stays(List<String> said) {
        List<String> lines = new ArrayList<>(said);
        lines.addAll(asked());
        return new Turn(this, text(lines), Effect.NOTHING);
    }

    @Override
    public Completion completion(String typed) {
        if (drill.isEmpty()) {
            return PracticeWords.completion(typed, exercise);
        }
        return Completion.answer(Completion.start(typed), typed, List.of("none", "swapped", "mm", "height weight", "stretched", "scan",
                "left", "right", "back", "help", "next", "quit"));
    }

    private static String text(List<String> lines) {
        StringBuilder out = new StringBuilder();
        for (String line : lines) {
            String indent = line.startsWith("  ") ? "  " : "";
            for (String part : TextWidth.wrap(line.strip(), COLUMNS - indent.length())) {
                out.append(part.isEmpty() ? "" : indent).append(part).append('\n');
            }
        }
        return out.toString();
    }
}
