package domefold.practice;

import domefold.evidence.Constants;
import domefold.patient.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A fellow's marked cases, oldest first. A value: marking another case gives a new one.
 *
 * @param entries one for each marked case
 */
public record Progress(List<Entry> entries) {
    public static final Progress NONE = new Progress(List.of());

    public Progress {
        entries = List.copyOf(entries);
    }

    /**
     * A marked case.
     *
     * @param date the day it was worked on, handed in
     * @param number its number
     * @param level its level
     * @param lines what was marked
     */
    public record Entry(LocalDate date, int number, int level, List<Line> lines) {
        public Entry {
            lines = List.copyOf(lines);
        }

        public Marking.Score score() {
            return lines.stream().map(Line::score).reduce(NOTHING, Marking.Score::plus);
        }
    }

    /** One decision of a marked case, without its sentences. */
    public record Line(Decision decision, Optional<Side> side, Optional<String> code, Standing standing, double weight,
            double credit) {
        Marking.Score score() {
            return new Marking.Score(weight * credit, weight);
        }
    }

    private static final Marking.Score NOTHING = new Marking.Score(0, 0);

    /** With another marked case at the end. */
    public Progress with(Marking marking, LocalDate date) {
        List<Line> lines = marking.marks().stream().map(mark -> new Line(mark.decision(), mark.side(), mark.code(),
                mark.standing(), mark.weight(), mark.credit())).toList();
        List<Entry> longer = new ArrayList<>(entries);
        longer.add(new Entry(date, marking.number(), marking.level(), lines));
        return new Progress(longer);
    }

    /** The last cases only, at most that many. */
    public Progress last(int cases) {
        return new Progress(entries.subList(Math.max(0, entries.size() - cases), entries.size()));
    }

    /** The score by kind of decision, over all entries. */
    public Map<Decision, Marking.Score> byDecision() {
        Map<Decision, Marking.Score> scores = new EnumMap<>(Decision.class);
        lines().filter(line -> line.weight() > 0)
                .forEach(line -> scores.merge(line.decision(), line.score(), Marking.Score::plus));
        return scores;
    }

    /** The score of warning, by code. */
    public Map<String, Marking.Score> byWarning() {
        Map<String, Marking.Score> scores = new TreeMap<>();
        lines().forEach(line -> line.code().ifPresent(
                code -> scores.merge(code, line.score(), Marking.Score::plus)));
        return scores;
    }

    /** Recent kinds of decision from PRA-STRONG up, best first. */
    public List<Decision> strengths(Constants constants) {
        return recent(constants).sorted(scored -> scored.percent() >= constants.value("PRA-STRONG"),
                Comparator.comparingDouble(score -> -score.percent()));
    }

    /** Recent kinds of decision below PRA-WEAK, weakest first. */
    public List<Decision> weakSpots(Constants constants) {
        return recent(constants).sorted(scored -> scored.percent() < constants.value("PRA-WEAK"),
                Comparator.comparingDouble(Marking.Score::percent));
    }

    private List<Decision> sorted(Predicate<Marking.Score> keep, Comparator<Marking.Score> order) {
        Map<Decision, Marking.Score> scores = byDecision();
        return scores.keySet().stream().filter(decision -> keep.test(scores.get(decision)))
                .sorted(Comparator.comparing((Decision decision) -> scores.get(decision), order)
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    Progress recent(Constants constants) {
        return last((int) constants.value("PRA-RECENT-CASES"));
    }

    /** The codes she missed most, by points lost recently; ties by name. */
    public List<String> missedWarnings(Constants constants) {
        Map<String, Marking.Score> scores = recent(constants).byWarning();
        return scores.keySet().stream().filter(code -> lost(scores.get(code)) > 0)
                .sorted(Comparator.comparingDouble((String code) -> -lost(scores.get(code)))
                        .thenComparing(Comparator.naturalOrder())).toList();
    }

    private static double lost(Marking.Score score) {
        return score.outOf() - score.points();
    }

    /** The numbers already worked on at that level. */
    Set<Integer> numbers(int level) {
        return entries.stream().filter(entry -> entry.level() == level).map(Entry::number)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Stream<Line> lines() {
        return entries.stream().flatMap(entry -> entry.lines().stream());
    }
}
