package domefold.line;

import domefold.canvas.TextWidth;
import domefold.outcome.Numbers;
import domefold.practice.Mark;
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
import java.util.OptionalInt;

/**
 * A practice case line by line: the same exercise as in the full screen, in sentences of at most 80 columns.
 *
 * @param desk evidence, device list, and what has been practised so far
 * @param exercise how far the exercise has come
 */
public record LinePractice(PracticeDesk desk, Exercise exercise) {
    private static final int COLUMNS = 80;

    /** What a line led to: the exercise after it, what to print, what to keep. */
    public record Turn(LinePractice next, String text, Effect effect) {}

    /** The case asked for, else the next one. */
    public static LinePractice of(PracticeDesk desk, OptionalInt level, OptionalInt number) {
        return new LinePractice(desk, desk.begin(level, number).exercise());
    }

    /** The banner, whose case it is, history and wish, and what can be typed. */
    public Turn open() {
        PracticeCase of = exercise.practice();
        List<String> lines = new ArrayList<>(List.of(PracticeCase.BANNER, "Case " + of.number() + ", level " + of.level() + ".",
                "", "History. " + of.history(), "Wish. " + of.wish(), ""));
        lines.addAll(exercise.help());
        return new Turn(this, text(lines), Effect.NOTHING);
    }

    /** Understands a typed line. */
    public Turn say(String line) {
        String word = line.strip().toLowerCase(Locale.ROOT);
        if (word.equals("quit") || word.equals("leave")) {
            return new Turn(this, text(List.of("Left.")), Effect.QUIT);
        }
        if (word.equals("next") && exercise.marking().isPresent()) {
            return of(desk, OptionalInt.empty(), OptionalInt.empty()).open();
        }
        Said said = exercise.say(line);
        LinePractice next = new LinePractice(desk, said.exercise());
        if (said.kind() == Said.Kind.HELP) {
            return new Turn(next, text(exercise.help()), Effect.NOTHING);
        }
        if (said.kind() == Said.Kind.COMMITTED) {
            Marking marking = said.exercise().marking().orElseThrow();
            Logbook longer = desk.log().with(marking, desk.desk().today());
            return new Turn(new LinePractice(desk.with(longer), said.exercise()), text(marked(marking)), new Effect.Practised(longer.last()));
        }
        List<String> lines = new ArrayList<>(said.lines());
        if (said.kind() == Said.Kind.DONE && said.exercise().page() != exercise.page() && said.exercise().page().reads()) {
            lines.addAll(readings(said.exercise()));
        }
        lines.addAll(next.asked());
        return new Turn(next, text(lines), Effect.NOTHING);
    }

    private static List<String> readings(Exercise exercise) {
        List<String> lines = new ArrayList<>(List.of(exercise.page().title() + ":"));
        exercise.readings(exercise.page()).forEach((Taken taken) -> lines.add("  " + taken.sentence()));
        return lines;
    }

    /** What is asked now. */
    private List<String> asked() {
        if (exercise.page() != Page.PLAN) {
            return List.of("Enter takes the next page, `state` goes to your plan.");
        }
        return exercise.current().map((Statement one) -> List.of(one.prompt() + " (" + one.expects() + (one.required() ? ")" : ", or skip)")))
                .orElse(List.of("Everything is stated. `commit` hands the plan in."));
    }

    private static List<String> marked(Marking marking) {
        List<String> lines = new ArrayList<>(List.of("Marked: " + Numbers.plain(marking.percent(), 0) + " of 100."));
        for (Mark mark : marking.marks()) {
            String side = mark.side().map(s -> s + " ").orElse("");
            lines.add(side + mark.decision().words() + mark.code().map(code -> " (" + code + ")").orElse("") + ": " + mark.standing().words()
                    + (mark.said().isBlank() ? "" : ", you said " + mark.said()) + ".");
            lines.add("  Decided by: " + mark.decidedBy());
            if (!mark.readingError().isBlank()) {
                lines.add("  An error of reading: " + mark.readingError());
            }
            mark.bothHeld().ifPresent(other -> lines.add("  The other view: " + other));
        }
        lines.add(PracticeCase.BANNER);
        lines.add("`next` draws another case, `quit` leaves.");
        return lines;
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
