package domefold.screen;

import domefold.practice.NextCase;
import domefold.practice.PatientDraw;
import domefold.practice.PracticeCase;
import domefold.practice.exercise.Exercise;
import domefold.practice.exercise.Logbook;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What every practice screen has at hand.
 *
 * @param desk evidence, device list, engine and the day; for an invented patient
 * @param log what has been practised so far
 * @param own a tutor's own cases, in order; empty where cases are drawn
 */
public record PracticeDesk(Desk desk, Logbook log, List<PracticeCase> own) {
    public PracticeDesk {
        own = List.copyOf(own);
        if (!desk.practice()) {
            throw new IllegalArgumentException("a practice desk says that it is one");
        }
    }

    /** The first screen: the case asked for, else the next one. */
    public PracticeScreen begin(OptionalInt level, OptionalInt number) {
        if (!own.isEmpty()) {
            return open(own.get(Math.min(number.orElse(1), own.size()) - 1), "");
        }
        if (number.isPresent()) {
            return open(PatientDraw.of(number.getAsInt(), level.orElse(PatientDraw.levelOf(number.getAsInt())),
                    desk.guide().evidence()), "");
        }
        if (level.isPresent()) {
            int first = IntStream.iterate(1, one -> one + 1).filter(one -> PatientDraw.levelOf(one) == level.getAsInt())
                    .filter(one -> log.progress().entries().stream().noneMatch(
                            entry -> entry.level() == level.getAsInt() && entry.number() == one)).findFirst().orElseThrow();
            return open(PatientDraw.of(first, level.getAsInt(), desk.guide().evidence()), "");
        }
        return drawn();
    }

    /** The case after that one: the tutor's next, else one chosen toward the weak spots. */
    PracticeScreen after(PracticeCase done) {
        Optional<PracticeCase> following = own.stream().dropWhile(one -> one.number() != done.number()).skip(1).findFirst();
        return following.map(one -> open(one, "")).orElseGet(this::drawn);
    }

    private PracticeScreen drawn() {
        NextCase next = NextCase.after(log.progress(), desk.guide().evidence());
        return open(PatientDraw.of(next.number(), next.level(), desk.guide().evidence()), "Case " + next.number() + ", " + next.why() + ".");
    }

    private PracticeScreen open(PracticeCase practice, String why) {
        return PracticeScreen.of(this, Exercise.begin(desk.guide(), practice), why);
    }

    public PracticeDesk with(Logbook longer) {
        return new PracticeDesk(desk, longer, own);
    }
}
