package domefold.practice.exercise;

import domefold.practice.Marking;
import domefold.practice.Progress;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything a fellow has practised, oldest first.
 *
 * @param progress her marked cases
 * @param drills her reading drills
 */
public record Logbook(Progress progress, List<Drilled> drills) {
    public static final Logbook EMPTY = new Logbook(Progress.NONE, List.of());

    /**
     * One reading drill.
     *
     * @param date the day
     * @param number which drill
     * @param found slips she named at their place
     * @param missed slips she did not name
     * @param unfounded what she named that was not planted
     */
    public record Drilled(LocalDate date, int number, int found, int missed, int unfounded) {}

    public Logbook {
        drills = List.copyOf(drills);
    }

    public Logbook with(Marking marking, LocalDate date) {
        return new Logbook(progress.with(marking, date), drills);
    }

    public Logbook with(Progress.Entry entry) {
        List<Progress.Entry> longer = new ArrayList<>(progress.entries());
        longer.add(entry);
        return new Logbook(new Progress(longer), drills);
    }

    public Logbook with(Drilled drilled) {
        List<Drilled> longer = new ArrayList<>(drills);
        longer.add(drilled);
        return new Logbook(progress, longer);
    }

    /** The case marked last. */
    public Progress.Entry last() {
        return progress.entries().get(progress.entries().size() - 1);
    }

    /** The lowest drill not done yet. */
    public int nextDrill() {
        int number = 1;
        while (done(number)) {
            number++;
        }
        return number;
    }

    private boolean done(int number) {
        return drills.stream().anyMatch(one -> one.number() == number);
    }
}
