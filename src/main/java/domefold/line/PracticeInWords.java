package domefold.line;

import domefold.evidence.Constants;
import domefold.outcome.Numbers;
import domefold.practice.Decision;
import domefold.practice.Mark;
import domefold.practice.Marking;
import domefold.practice.PracticeCase;
import domefold.practice.Progress;
import domefold.practice.exercise.Exercise;
import domefold.practice.exercise.Logbook;
import domefold.practice.exercise.WarningWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A practice case in sentences: what was taken and stated, the marking, and what was practised so far. */
final class PracticeInWords {
    private static final int MOST_MISSED = 5;
    private static final int MOST_CASES = 20;

    private PracticeInWords() {}

    static List<String> history(PracticeCase of) {
        return List.of("History. " + of.history(), "Wish. " + of.wish());
    }

    static List<String> summary(Exercise exercise) {
        List<String> lines = new ArrayList<>();
        lines.add(exercise.readings().isEmpty() ? "No reading is taken yet." : "Taken, " + exercise.readings().size() + " of "
                + Numbers.count(exercise.there(), "reading", "readings") + ":");
        exercise.readings().forEach(taken -> lines.add("  " + taken.sentence()));
        lines.add(exercise.answers().isEmpty() ? "Nothing is stated yet." : "Your plan:");
        exercise.answers().forEach((label, said) -> lines.add("  " + label + (label.endsWith("?") ? " " : ": ") + QuestionInWords.flat(said)));
        return lines;
    }

    static List<String> marked(Marking marking) {
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
        return lines;
    }

    static List<String> progress(Logbook log, Constants constants) {
        Progress progress = log.progress();
        List<String> lines = new ArrayList<>();
        Map<Decision, Marking.Score> scores = progress.byDecision();
        if (scores.isEmpty()) {
            lines.add("No case is marked yet: `commit` a plan, and its marks stand here.");
        } else {
            lines.add("Over " + Numbers.count(progress.entries().size(), "marked case", "marked cases") + ", of 100 each:");
        }
        List<Decision> weak = progress.weakSpots(constants);
        List<Decision> strong = progress.strengths(constants);
        scores.forEach((decision, score) -> lines.add("  " + decision.words() + ": " + Math.round(score.percent())
                + (weak.contains(decision) ? ", weak" : strong.contains(decision) ? ", strong" : "")));
        List<String> missed = progress.missedWarnings(constants);
        if (!missed.isEmpty()) {
            lines.add("Missed most: " + String.join("; ", missed.stream().limit(MOST_MISSED).map(WarningWords::of).toList()) + ".");
        }
        if (!log.drills().isEmpty()) {
            long right = log.drills().stream().filter(one -> one.missed() == 0 && one.unfounded() == 0).count();
            lines.add("Reading drills: " + log.drills().size() + ", all right in " + right + ".");
        }
        if (!scores.isEmpty()) {
            lines.add("Weak and strong look at the last " + Math.round(constants.value("PRA-RECENT-CASES")) + " cases, the figures at all of them.");
            cases(progress, lines);
        }
        return lines;
    }

    private static void cases(Progress progress, List<String> lines) {
        int count = progress.entries().size();
        lines.add("Cases, the latest first:");
        for (int i = count - 1; i >= Math.max(0, count - MOST_CASES); i--) {
            Progress.Entry entry = progress.entries().get(i);
            lines.add("  " + entry.date() + ", case " + entry.number() + ", level " + entry.level() + ": "
                    + Math.round(entry.score().percent()) + " of 100");
        }
        if (count > MOST_CASES) {
            lines.add("  " + (count - MOST_CASES) + " earlier; `practise --log FILE` writes all of them.");
        }
    }
}
