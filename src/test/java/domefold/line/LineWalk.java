package domefold.line;

import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.patient.Case;
import domefold.screen.Desk;
import domefold.screen.Effect;
import domefold.screen.Walk;
import java.util.ArrayList;
import java.util.List;

/** Walks a consult line by line, without a terminal: what was printed, with the lines typed, and what was asked of the shell. */
public final class LineWalk {
    /** What follows {@link Walk#ORDINARY} to the last question: two devices pinned and settled, one a side. */
    public static final List<String> SETTLED = List.of("sort verdict", "pin 1", "pin 2", "", "dual-plane", "1 2", "target same",
            "typical", "all but 3");

    private LineConsult consult;
    private final List<Effect> effects = new ArrayList<>();
    private final StringBuilder printed = new StringBuilder();
    private String last = "";

    private LineWalk() {}

    public static LineWalk consult() {
        Desk desk = Walk.desk();
        return on(LineConsult.of(desk, Interview.begin(desk.guide(), new Dossier(Case.empty("", desk.today()), Choices.NONE)), List.of()));
    }

    public static LineWalk on(LineConsult first) {
        LineWalk walk = new LineWalk();
        walk.take(first.open());
        return walk;
    }

    /** Goes on from where this one is; neither disturbs the other. */
    public LineWalk fork() {
        LineWalk walk = new LineWalk();
        walk.consult = consult;
        walk.effects.addAll(effects);
        walk.printed.append(printed);
        walk.last = last;
        return walk;
    }

    private void take(Turn turn) {
        consult = turn.next();
        last = turn.text();
        printed.append(turn.text());
        if (turn.effect() != Effect.NOTHING) {
            effects.add(turn.effect());
        }
    }

    public LineWalk line(String text) {
        printed.append("> ").append(text).append('\n');
        take(consult.say(text));
        return this;
    }

    public LineWalk told(Effect.Outcome outcome) {
        take(consult.told(outcome));
        return this;
    }

    public LineWalk lines(List<String> lines) {
        lines.forEach(this::line);
        return this;
    }

    /** What the last line printed. */
    public String last() {
        return last;
    }

    public String printed() {
        return printed.toString();
    }

    public List<Effect> effects() {
        return effects;
    }

    public Effect lastEffect() {
        return effects.get(effects.size() - 1);
    }

    public Interview interview() {
        return consult.interview();
    }

    public LineConsult now() {
        return consult;
    }
}
